package org.sunder.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.sunder.airframe.Measure;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.engine.learning.Outcome;
import org.sunder.engine.learning.Surprise;
import org.sunder.engine.physics.JointPhysics;
import org.sunder.engine.planning.Firing;
import org.sunder.engine.planning.Goal;
import org.sunder.engine.planning.PlanningCase;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.Occasion;

/** From the case of a joint to the question the planner answers. */
@Component
class PlanningCases {

    /** Setups whose handbook charge and threshold pressure agree this closely are the same for a test. */
    private static final double EQUIVALENT = 0.02;

    private final SetupPhysics physics;

    PlanningCases(SetupPhysics physics) {
        this.physics = physics;
    }

    PlanningCase of(JointCase joint, double reliability) {
        return of(joint, reliability, joint.physics().ceiling().chargeKg());
    }

    /** Under a ceiling in kg that the air of the flight lowers. */
    PlanningCase of(JointCase joint, double reliability, double ceiling) {
        JointPhysics now = joint.physics();
        List<GroundTest> tests = joint.picture().testsOf(joint.joint().id());
        List<Firing> firings = firings(joint, tests);
        List<GroundTest> counted = tests.stream().filter(GroundTest::counted).toList();
        Goal standard = Goal.standard();
        return new PlanningCase(
                joint.posterior(),
                now.handbookCharge(),
                now.thresholdPressure(),
                ceiling,
                Measure.of(joint.setup().sheet()).kilograms(),
                firings,
                !counted.isEmpty() && surprising(counted.get(counted.size() - 1)),
                changedSinceSeparated(firings),
                new Goal(reliability, standard.pricePerTest(), standard.excessLimit()));
    }

    /** Whether the model gave this outcome less than 2 % before it was seen. */
    static boolean surprising(GroundTest test) {
        return new Surprise(test.forecast().of(test.report().outcome())).surprising();
    }

    private List<Firing> firings(JointCase joint, List<GroundTest> tests) {
        var setups = Objects.requireNonNull(
                        joint.picture().setups().get(joint.joint().id()))
                .stream()
                .collect(Collectors.toMap(Setup::id, Function.identity()));
        List<Firing> firings = new ArrayList<>();
        for (GroundTest test : tests) {
            UUID setup = test.setupId();
            firings.add(firing(test, physics.of(Objects.requireNonNull(setups.get(setup))), joint.physics()));
        }
        return firings;
    }

    private static Firing firing(GroundTest test, JointPhysics fired, JointPhysics now) {
        double charge = test.report().charge().kilograms();
        return new Firing(
                charge,
                StrictMath.log(charge / fired.handbookCharge()),
                fired.gaugePressure(charge),
                test.report().outcome(),
                test.report().damaged(),
                test.counted(),
                // A flight teaches and bounds, but a charge to fly must have parted this setup on the ground.
                test.occasion() == Occasion.GROUND && equivalent(fired, now));
    }

    private static boolean equivalent(JointPhysics a, JointPhysics b) {
        return near(a.handbookCharge(), b.handbookCharge()) && near(a.thresholdPressure(), b.thresholdPressure());
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= EQUIVALENT * Math.max(a, b);
    }

    private static boolean changedSinceSeparated(List<Firing> firings) {
        boolean changed = false;
        for (Firing firing : firings) {
            if (firing.counted() && firing.outcome() == Outcome.SEPARATED) {
                changed = !firing.currentSetup();
            }
        }
        return changed;
    }
}
