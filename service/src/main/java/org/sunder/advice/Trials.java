package org.sunder.advice;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.Filming;
import org.sunder.engine.learning.model.SpeedCurve;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.quantity.Speed;
import org.sunder.groundtest.Report;

/** From a report to the engine's trial. */
final class Trials {

    private static final double LOW = -1;
    private static final double STEP = 0.05;
    private static final int POINTS = 61;
    private static final double STANDSTILL = 0.1; // m/s; slower is not measured

    private Trials() {}

    static Trial of(Report report, JointPhysics physics) {
        double ratio = report.charge().kilograms() / physics.handbookCharge();
        return new Trial(StrictMath.log(ratio), report.outcome(), reading(report, physics));
    }

    /** A speed says something only where the physics can predict one: masses and shoulder are known. */
    private static @Nullable SpeedReading reading(Report report, JointPhysics physics) {
        Speed speed = report.speed();
        return speed == null || !predictable(physics)
                ? null
                : new SpeedReading(
                        StrictMath.log(speed.metresPerSecond()), sd(report.speedUncertaintyPercent()), curve(physics));
    }

    /** What films of so many percent would tell at a setup; empty where the physics predicts no speed. */
    static Optional<Filming> filming(JointPhysics physics, BigDecimal percent) {
        return predictable(physics) ? Optional.of(new Filming(sd(percent), curve(physics))) : Optional.empty();
    }

    /** Whether a speed tells something at a setup. */
    static boolean predictable(JointPhysics physics) {
        return physics.separationSpeed(physics.handbookCharge()).isPresent();
    }

    /** For small ones the standard deviation of ln v is the relative one of v. */
    private static double sd(@Nullable BigDecimal percent) {
        return percent == null
                ? SpeedReading.USUAL_SD
                : percent.movePointLeft(2).doubleValue();
    }

    /** What the physics of a setup predicts, a factor e on either side of the threshold and one more above. */
    private static SpeedCurve curve(JointPhysics physics) {
        List<Double> logSpeeds = IntStream.range(0, POINTS)
                .mapToObj(i -> physics.handbookCharge() * StrictMath.exp(LOW + i * STEP))
                .map(charge -> physics.separationSpeed(charge).orElse(0.0))
                .map(speed -> StrictMath.log(Math.max(speed, STANDSTILL)))
                .toList();
        return new SpeedCurve(LOW, STEP, logSpeeds);
    }
}
