package org.sunder.advice;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.DoubleUnaryOperator;
import org.springframework.stereotype.Service;
import org.sunder.airframe.Measure;
import org.sunder.airframe.Setup;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.learning.posterior.Hyperparameters;
import org.sunder.engine.planning.Ladder;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.quantity.Mass;
import org.sunder.pool.PoolUse;

/** What the pool says, and what it does for a joint: the same answer with it and without. */
@Service
public class PoolEffects {

    private final FleetSnapshots fleets;
    private final Findings findings;
    private final PoolUse pool;

    PoolEffects(FleetSnapshots fleets, Findings findings, PoolUse pool) {
        this.fleets = fleets;
        this.findings = findings;
        this.pool = pool;
    }

    /**
     * What is believed of a flyer before any test: medians and 90 % intervals.
     *
     * @param correction of a first joint, its inputs taken as known
     * @param scatter from shot to shot, in log charge ratio
     * @param band of partial separation, in log charge ratio
     */
    public record Belief(CorrectionFactor correction, CorrectionFactor scatter, CorrectionFactor band) {

        private static Belief of(Priors priors) {
            FleetModel nobody = FleetModel.of(FleetLog.empty(), priors);
            Hyperparameters shared = nobody.hyperparameters();
            return new Belief(
                    nobody.leaf(new Leaf.NewAirframe(0)).correctionFactor(),
                    interval(shared::scatter),
                    interval(shared::band));
        }

        private static CorrectionFactor interval(DoubleUnaryOperator quantile) {
            return new CorrectionFactor(
                    quantile.applyAsDouble(0.5), quantile.applyAsDouble(0.05), quantile.applyAsDouble(0.95));
        }
    }

    /** With the pool and without. */
    public record Taught(Belief with, Belief without) {}

    /**
     * One way to go on with a joint.
     *
     * @param step what to do next
     * @param likely the least number of further tests that are enough in half of the cases; empty where the ladder ends before
     * @param doneAfter chance of being done after at most 0, 1, 2, … further tests
     */
    public record Way(NextStep step, Optional<Integer> likely, List<Double> doneAfter) {

        public Way {
            doneAfter = List.copyOf(doneAfter);
        }

        private static Way of(Ladder ladder) {
            List<Double> done = ladder.doneAfter();
            Optional<Integer> likely = Optional.empty();
            for (int tests = done.size() - 1; tests >= 0 && done.get(tests) >= 0.5; tests--) {
                likely = Optional.of(tests);
            }
            return new Way(ladder.root(), likely, done);
        }
    }

    /**
     * What the pool does for a joint.
     *
     * @param with the pool
     * @param without it
     * @param measure step of charges
     */
    public record Effect(Way with, Way without, Mass measure) {}

    private enum Asked {
        TAUGHT
    }

    private record EffectAt(UUID joint) {}

    /** What the pool says; empty where there is none to use. */
    public Optional<Taught> taught() {
        FleetSnapshot fleet = fleets.current();
        return pool.offered(fleet.flyer())
                .map(offered -> findings.answer(
                        fleet,
                        new OfSnapshot(Asked.TAUGHT, offered.snapshot()),
                        () -> new Taught(Belief.of(offered.priors()), Belief.of(Priors.standard()))));
    }

    private record OfSnapshot(Object asked, int snapshot) {}

    /**
     * What the pool does for a joint in the setup in force; empty where there is no pool to use, or the joint is of the example,
     * which learns from nothing real.
     *
     * @throws org.sunder.problem.ProblemException 404 where there is no such joint, 422 where its setup cannot be read
     */
    public Optional<Effect> at(UUID jointId) {
        FleetSnapshot fleet = fleets.current();
        LoggedJoint logged = fleet.joint(jointId);
        Setup setup = logged.setup();
        logged.physics(setup);
        if (logged.airframe().example()) {
            return Optional.empty();
        }
        return pool.offered(fleet.flyer())
                .map(offered -> findings.answer(
                        fleet,
                        new OfSnapshot(new EffectAt(jointId), offered.snapshot()),
                        () -> new Effect(
                                way(fleet, logged, offered.priors()),
                                way(fleet, logged, Priors.standard()),
                                Measure.of(setup.sheet()))));
    }

    private static Way way(FleetSnapshot fleet, LoggedJoint logged, Priors priors) {
        Setup setup = logged.setup();
        FleetModel model = FleetModel.of(fleet.log(), priors);
        JointCase joint = new JointCase(fleet, logged, setup, model.leaf(fleet.leaf(setup)));
        return Way.of(Ladder.of(joint.planning(Estimates.TARGET), Ladder.DEEPEST));
    }
}
