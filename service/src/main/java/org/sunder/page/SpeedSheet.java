package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.NextAdvice;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.charge.HarnessShock;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.planning.FlightCharge;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.quantity.Length;

/**
 * How fast the parts leave each other, and what that asks of the harness.
 *
 * @param answer the speed at the charge that comes next, in words
 * @param rows each charge that matters, the smallest first
 */
record SpeedSheet(String answer, List<Row> rows) {

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
     * Of a joint as it stands; empty where its setup does not state both masses and the shoulder.
     *
     * @param stretch how far the harness lengthens at its limit, or null
     * @throws org.sunder.engine.physics.UnsoundSetupException where no harness stretches so
     */
    static Optional<SpeedSheet> of(NextAdvice next, @Nullable Length stretch, Display display) {
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
        return Optional.of(new SpeedSheet("About " + first.speed() + " at " + first.charge(), rows));
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
