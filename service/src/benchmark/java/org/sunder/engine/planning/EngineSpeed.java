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

    /** Airframes of the fleet, each with two joints of three tests; every fifth has a second setup at one of them. */
    @Param({"1", "15", "100", "1000"})
    int airframes;

    private FleetModel model;
    private AirframeLog changed;
    private PlanningCase untested;

    /** Builds the fleet. */
    @Setup
    public void build() {
        Random random = new Random(1);
        List<AirframeLog> logs = new ArrayList<>();
        for (int i = 0; i < airframes; i++) {
            logs.add(airframe(random, i % 5 == 4, 3));
        }
        System.gc();
        long before = used();
        long start = System.nanoTime();
        model = FleetModel.of(new FleetLog(logs), Priors.standard());
        System.out.printf("built in %.1f s; ", (System.nanoTime() - start) / 1e9);
        System.gc();
        System.out.printf("the model holds %.1f MB%n", (used() - before) / 1e6);
        changed = airframe(random, false, 4);
        untested = planned(FleetModel.of(FleetLog.empty(), Priors.standard()).leaf(new Leaf.NewAirframe(0.05)), List.of());
    }

    private static long used() {
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    /** A test of one airframe, its fourth at one joint. */
    @Benchmark
    public FleetModel newTest() {
        return model.with(0, changed);
    }

    /** What is known of a joint. */
    @Benchmark
    public LeafPosterior posterior() {
        return model.leaf(new Leaf.Logged(0, 0, 0));
    }

    /** The next charge of a joint, from the model on; the surprise left open keeps it from stopping. */
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

    /** An airframe with two joints: the first with so many tests, the last of them in a setup of its own if asked for. */
    private static AirframeLog airframe(Random random, boolean changed, int tests) {
        double c = 0.1 + 0.25 * random.nextGaussian();
        List<Trial> first = trials(random, c, tests);
        List<SetupLog> setups = changed
                ? List.of(new SetupLog(0.05, first.subList(0, tests - 1)), new SetupLog(0.05, first.subList(tests - 1, tests)))
                : List.of(new SetupLog(0.05, first));
        return new AirframeLog(
                List.of(new JointLog(setups), new JointLog(List.of(new SetupLog(0.05, trials(random, c, 3))))));
    }

    private static List<Trial> trials(Random random, double c, int count) {
        List<Trial> trials = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double x = c + 0.1 + 0.2 * random.nextGaussian();
            double z = x - c + 0.1 * random.nextGaussian();
            trials.add(new Trial(x, z < 0 ? Outcome.NONE : z < 0.15 ? Outcome.PARTIAL : Outcome.SEPARATED));
        }
        return trials;
    }
}
