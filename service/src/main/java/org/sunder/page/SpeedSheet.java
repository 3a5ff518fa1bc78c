package org.sunder.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.LoadWords;
import org.sunder.advice.Loads;
import org.sunder.advice.NextAdvice;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.charge.HarnessShock;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.PartingLoad;
import org.sunder.engine.planning.FlightCharge;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.Report;

/**
 * How fast the parts leave each other, and what that asks of the harness.
 *
 * @param answer the speed at the charge that comes next, in words
 * @param rows each charge that matters, the smallest first
 * @param measured the separations whose speed was measured, newest first
 */
record SpeedSheet(String answer, List<Row> rows, List<Seen> measured) {

    /**
     * One charge.
     *
     * @param what which it is
     * @param speed of the parts against each other
     * @param load peak load of the harness, or null where its stretch is not known
     */
    record Row(
            String what,
            String charge,
            String speed,
            @Nullable String load) {}

    /**
     * A separation whose speed was measured.
     *
     * @param speed as measured, with how good that is where it was given
     * @param predicted by the formula, with the correction as it stood after the test
     * @param energy that the harness took
     * @param load peak load of the harness, or null where its stretch is not known
     * @param pressure that such a speed takes, or more
     * @param strained that it passed what was stated, or null
     */
    record Seen(
            String when,
            String charge,
            String speed,
            String predicted,
            String energy,
            @Nullable String load,
            String pressure,
            @Nullable String strained) {

        private static Seen of(Loads.Parting parting, Mass measure, @Nullable Length stretch, Display display) {
            Report report = parting.test().report();
            PartingLoad load = parting.load();
            BigDecimal percent = report.speedUncertaintyPercent();
            return new Seen(
                    Words.of(report.firedAt()),
                    Words.of(Display.loaded(report.charge(), measure)),
                    Words.brief(display.speed(load.measured()))
                            + (percent == null
                                    ? ""
                                    : " ±\u00a0" + percent.stripTrailingZeros().toPlainString() + "\u00a0%"),
                    Words.brief(display.speed(load.predicted())),
                    Words.digits(load.energy()) + " J",
                    stretch == null
                            ? null
                            : Words.brief(display.force(parting.shock(stretch).peakLoad())),
                    Words.brief(display.pressure(load.leastPressure())),
                    LoadWords.warning(load, display));
        }
    }

    /**
     * Of a joint as it stands; empty where its setup does not state both masses and the shoulder.
     *
     * @param measured its separations whose speed was measured
     * @param stretch how far the harness lengthens at its limit, or null
     * @throws org.sunder.engine.physics.UnsoundSetupException where no harness stretches so
     */
    static Optional<SpeedSheet> of(
            NextAdvice next, List<Loads.Parting> measured, @Nullable Length stretch, Display display) {
        JointPhysics physics = next.physics();
        if (physics.separationSpeed(physics.handbookCharge()).isEmpty()) {
            return Optional.empty();
        }
        List<Row> rows = new ArrayList<>();
        if (next.step() instanceof NextStep.Fire fire) {
            rows.add(row(next, "to fire next", fire.charge(), stretch, display));
        } else if (next.step() instanceof NextStep.Stop stop) {
            FlightCharge flight = stop.flightCharge();
            rows.add(row(next, "to fly", flight.charge(), stretch, display));
            rows.add(row(next, "its backup", flight.backup().charge(), stretch, display));
        }
        double ceiling = physics.ceiling().chargeKg();
        String never = AnswerWords.limit(ceiling, next.measure());
        rows.add(new Row("never above", never, speed(next, ceiling, display), load(next, ceiling, stretch, display)));
        Row first = rows.get(0);
        List<Seen> seen = measured.stream()
                .map(parting -> Seen.of(parting, next.measure(), stretch, display))
                .toList();
        return Optional.of(new SpeedSheet("About " + first.speed() + " at " + first.charge(), rows, seen));
    }

    private static Row row(NextAdvice next, String what, double kilograms, @Nullable Length stretch, Display display) {
        return new Row(
                what,
                AnswerWords.charge(kilograms, next.measure()),
                speed(next, kilograms, display),
                load(next, kilograms, stretch, display));
    }

    private static String speed(NextAdvice next, double kilograms, Display display) {
        return Words.brief(display.speed(metresPerSecond(next, kilograms)));
    }

    private static @Nullable String load(NextAdvice next, double kilograms, @Nullable Length stretch, Display display) {
        var forward = next.physics().setup().forwardMass();
        var aft = next.physics().setup().aftMass();
        if (stretch == null || forward == null || aft == null) {
            return null;
        }
        HarnessShock shock = HarnessShock.of(metresPerSecond(next, kilograms), forward, aft, stretch);
        return Words.brief(display.force(shock.peakLoad()));
    }

    /** By the formula at the charge that does the same without the correction learned. */
    private static double metresPerSecond(NextAdvice next, double kilograms) {
        return next.physics()
                .separationSpeed(kilograms / next.correction().median())
                .orElseThrow();
    }
}
