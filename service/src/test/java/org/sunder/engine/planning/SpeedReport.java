package org.sunder.engine.planning;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.sunder.engine.learning.AirframeLog;
import org.sunder.engine.learning.FleetLog;
import org.sunder.engine.learning.FleetModel;
import org.sunder.engine.learning.JointLog;
import org.sunder.engine.learning.Leaf;
import org.sunder.engine.learning.LeafPosterior;
import org.sunder.engine.learning.Outcome;
import org.sunder.engine.learning.Priors;
import org.sunder.engine.learning.SetupLog;
import org.sunder.engine.learning.Trial;

/** How long an answer takes, warm. Arguments: number of airframes of the large fleet (default 10000). */
public final class SpeedReport {

    private SpeedReport() {}

    /** Prints medians of processor time in milliseconds. */
    public static void main(String[] args) {
        int large = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        Random random = new Random(1);
        FleetModel fifty = FleetModel.of(fleet(random, 50, 5).with(0, airframe(random, 20)), Priors.standard());
        time("posterior of a joint with 20 tests, 50 airframes", 200, () -> fifty.leaf(new Leaf.Logged(0, 0, 0)));
        time("next charge of a joint with 20 tests, 50 airframes", 200, () -> plan(fifty));
        PlanningCase untested = Cases.of();
        time("next charge of an untested joint, posterior given", 200, () -> Planner.nextCharge(untested));
        time("ladder of depth 3 of an untested joint", 20, () -> Planner.ladder(untested, 3));
        AirframeLog changed = airframe(random, 6);
        time("a new test, 50 airframes", 200, () -> fifty.with(7, changed));
        long start = System.nanoTime();
        FleetModel many = FleetModel.of(fleet(random, large, 5), Priors.standard());
        System.out.printf(
                Locale.ROOT, "fleet of %d built in %.1f s by the clock%n", large, (System.nanoTime() - start) / 1e9);
        time("a new test, large fleet", 200, () -> many.with(7, changed));
        time("posterior in the large fleet", 200, () -> many.leaf(new Leaf.Logged(7, 0, 0)));
    }

    private static NextStep plan(FleetModel model) {
        LeafPosterior posterior = model.leaf(new Leaf.Logged(0, 0, 0));
        List<Firing> firings = new ArrayList<>();
        for (Trial trial :
                model.log().airframes().get(0).joints().get(0).setups().get(0).trials()) {
            firings.add(Cases.firing(StrictMath.exp(trial.logRatio()), trial.outcome(), false));
        }
        // A surprise left open keeps the planner from stopping at once.
        return Planner.nextCharge(
                new PlanningCase(posterior, 0.001, 1e5, 0.003, 0.00005, firings, true, false, Goal.standard()));
    }

    /** Processor time of this thread, so that a busy machine does not count. */
    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static void time(String what, int rounds, Runnable work) {
        for (int i = 0; i < rounds; i++) {
            work.run();
        }
        long[] nanos = new long[rounds];
        for (int i = 0; i < rounds; i++) {
            long start = cpu();
            work.run();
            nanos[i] = cpu() - start;
        }
        Arrays.sort(nanos);
        System.out.printf(
                Locale.ROOT,
                "%-55s median %8.2f ms, 90 %% %8.2f ms%n",
                what,
                nanos[rounds / 2] / 1e6,
                nanos[rounds * 9 / 10] / 1e6);
    }

    private static FleetLog fleet(Random random, int airframes, int tests) {
        List<AirframeLog> logs = new ArrayList<>();
        for (int i = 0; i < airframes; i++) {
            logs.add(airframe(random, tests));
        }
        return new FleetLog(logs);
    }

    private static AirframeLog airframe(Random random, int tests) {
        double c = 0.1 + 0.25 * random.nextGaussian();
        List<Trial> trials = new ArrayList<>();
        for (int i = 0; i < tests; i++) {
            double x = c + 0.1 + 0.2 * random.nextGaussian();
            double z = x - c + 0.1 * random.nextGaussian();
            trials.add(new Trial(x, z < 0 ? Outcome.NONE : z < 0.15 ? Outcome.PARTIAL : Outcome.SEPARATED));
        }
        return new AirframeLog(List.of(new JointLog(List.of(new SetupLog(0.05, trials)))));
    }
}
