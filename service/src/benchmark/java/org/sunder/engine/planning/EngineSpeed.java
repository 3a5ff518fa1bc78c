package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.posterior.LeafPosterior;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.Trial;

/** How long the engine's answers take, warm; times by the clock. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class EngineSpeed {

    /** Airframes of the fleet and joints of each; five tests an airframe. */
    @Param({"50 x 1", "10000 x 1", "50 x 2"})
    String fleet;

    private FleetModel model;
    private AirframeLog changed;
    private PlanningCase untested;

    /** Builds the fleet; its first joint has 20 tests. */
    @Setup
    public void build() {
        Random random = new Random(1);
        int airframes = Integer.parseInt(fleet.split(" x ")[0]);
        int joints = Integer.parseInt(fleet.split(" x ")[1]);
        List<AirframeLog> logs = new ArrayList<>();
        logs.add(airframe(random, List.of(20)));
        List<Integer> tests = joints == 1 ? List.of(5) : List.of(3, 2);
        for (int i = 1; i < airframes; i++) {
            logs.add(airframe(random, tests));
        }
        System.gc();
        long before = used();
        long start = System.nanoTime();
        model = FleetModel.of(new FleetLog(logs), Priors.standard());
        System.out.printf("built in %.1f s; ", (System.nanoTime() - start) / 1e9);
        System.gc();
        System.out.printf("the model holds %.1f MB%n", (used() - before) / 1e6);
        changed = airframe(random, joints == 1 ? List.of(6) : List.of(3, 3));
        untested = planned(FleetModel.of(FleetLog.empty(), Priors.standard()).leaf(new Leaf.NewAirframe(0.05)), List.of());
    }

    private static long used() {
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    /** A test of one airframe after one of another; five tests become six. */
    @Benchmark
    public FleetModel newTest() {
        return model.with(7, changed);
    }

    /** What is known of a joint with 20 tests. */
    @Benchmark
    public LeafPosterior posterior() {
        return model.leaf(new Leaf.Logged(0, 0, 0));
    }

    /** The next charge of a joint with 20 tests, from the model on; the surprise left open keeps it from stopping. */
    @Benchmark
    public NextStep nextCharge() {
        List<Firing> firings = new ArrayList<>();
        for (Trial trial :
                model.log().airframes().get(0).joints().get(0).setups().get(0).trials()) {
            double ratio = StrictMath.exp(trial.logRatio());
            firings.add(new Firing(0.001 * ratio, trial.logRatio(), 1e5 * ratio, trial.outcome(), false, true, true));
        }
        return Planner.nextCharge(planned(model.leaf(new Leaf.Logged(0, 0, 0)), firings));
    }

    /** The first charge of an untested joint of a first airframe, with what would follow each outcome. */
    @Benchmark
    public NextStep firstCharge() {
        return Planner.nextCharge(untested);
    }

    private static PlanningCase planned(LeafPosterior posterior, List<Firing> firings) {
        return new PlanningCase(
                posterior, 0.001, 1e5, 0.003, 0.00005, firings, !firings.isEmpty(), false, Goal.standard());
    }

    /** An airframe with one joint for each number of tests. */
    private static AirframeLog airframe(Random random, List<Integer> tests) {
        double c = 0.1 + 0.25 * random.nextGaussian();
        List<JointLog> joints = new ArrayList<>();
        for (int count : tests) {
            List<Trial> trials = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                double x = c + 0.1 + 0.2 * random.nextGaussian();
                double z = x - c + 0.1 * random.nextGaussian();
                trials.add(new Trial(x, z < 0 ? Outcome.NONE : z < 0.15 ? Outcome.PARTIAL : Outcome.SEPARATED));
            }
            joints.add(new JointLog(List.of(new SetupLog(0.05, trials))));
        }
        return new AirframeLog(joints);
    }
}
