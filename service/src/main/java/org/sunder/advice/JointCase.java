package org.sunder.advice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Measure;
import org.sunder.airframe.Setup;
import org.sunder.engine.learning.model.Filming;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.posterior.LeafPosterior;
import org.sunder.engine.learning.posterior.Surprise;
import org.sunder.engine.physics.charge.CeilingSource;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.planning.Firing;
import org.sunder.engine.planning.Goal;
import org.sunder.engine.planning.PlanningCase;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.Occasion;
import org.sunder.pool.PoolPrior;

/**
 * All that is known of a joint as it is set up now, or was in an earlier revision.
 *
 * @param fleet the flyer's fleet
 * @param logged the joint with its log
 * @param setup the setup asked about
 * @param posterior what the fleet's log says about this setup
 * @param films how good the speeds are that films of its firings are going to tell, in percent; null where none are counted on
 */
record JointCase(
        FleetSnapshot fleet,
        LoggedJoint logged,
        Setup setup,
        LeafPosterior posterior,
        @Nullable BigDecimal films) {

    /** Setups whose handbook charge and threshold pressure agree this closely are the same for a test. */
    private static final double EQUIVALENT = 0.02;

    /** As the flyer of the fleet tests it: filmed or not. */
    JointCase(FleetSnapshot fleet, LoggedJoint logged, Setup setup, LeafPosterior posterior) {
        this(fleet, logged, setup, posterior, fleet.films().orElse(null));
    }

    /** This case where firings are filmed. */
    JointCase filmed(BigDecimal percent) {
        return new JointCase(fleet, logged, setup, posterior, percent);
    }

    /** The setup in physics. */
    JointPhysics physics() {
        return logged.physics(setup);
    }

    /** Step of charges. */
    Mass measure() {
        return Measure.of(setup.sheet());
    }

    /** Charge in kilograms at a log ratio. */
    double charge(double logRatio) {
        return physics().handbookCharge() * StrictMath.exp(logRatio);
    }

    /** What an answer rests on. */
    Basis basis() {
        return new Basis(
                Basis.MODEL,
                setup.revision(),
                logged.counted(),
                fleet.counted(logged.airframe().example()),
                pool().map(PoolPrior::snapshot).orElse(null),
                films != null && Trials.predictable(physics()) ? films : null);
    }

    /** What other flyers taught, where the answer starts from that; the example learns nothing from it. */
    Optional<PoolPrior> pool() {
        return logged.airframe().example() ? Optional.empty() : fleet.pool();
    }

    /** What films of its firings are going to tell; empty where none are counted on, or where the setup predicts no speed. */
    private Optional<Filming> filming() {
        return films == null ? Optional.empty() : Trials.filming(physics(), films);
    }

    /** The question to the planner. */
    PlanningCase planning(double reliability) {
        return planning(reliability, physics().ceiling().chargeKg());
    }

    /** The question to the planner under a ceiling in kg that the air of the flight lowers. */
    PlanningCase planning(double reliability, double ceiling) {
        JointPhysics now = physics();
        List<Firing> firings = firings();
        List<GroundTest> counted =
                logged.tests().stream().filter(logged::counts).toList();
        Goal standard = Goal.standard();
        return new PlanningCase(
                posterior,
                now.handbookCharge(),
                now.thresholdPressure(),
                ceiling,
                measure().kilograms(),
                firings,
                !counted.isEmpty() && surprising(counted.get(counted.size() - 1)),
                changedSinceSeparated(firings),
                new Goal(reliability, standard.pricePerTest(), standard.excessLimit()),
                now.ceiling().source() != CeilingSource.DEFAULT_THREE_TIMES_THRESHOLD,
                filming().orElse(null));
    }

    /** Whether the model gave a test's outcome less than 2 % before it was seen. */
    static boolean surprising(GroundTest test) {
        return new Surprise(test.forecast().of(test.report().outcome())).surprising();
    }

    private List<Firing> firings() {
        List<Firing> firings = new ArrayList<>();
        for (GroundTest test : logged.sound()) {
            logged.physicsOf(test).ifPresent(fired -> firings.add(firing(test, fired, physics())));
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
                equivalent(fired, now),
                test.occasion() == Occasion.GROUND);
    }

    /** Whether two setups are the same for a test. */
    static boolean equivalent(JointPhysics a, JointPhysics b) {
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
