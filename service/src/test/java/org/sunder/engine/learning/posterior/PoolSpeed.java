package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.Trial;

/**
 * How long a snapshot of the pool takes: flyers of two airframes with two joints of three tests each. Arguments: numbers of flyers
 * (25 100 1000).
 */
public final class PoolSpeed {

    private static final Priors BASE = Priors.standard();
    private static final double MEBIBYTE = 1024 * 1024;

    private PoolSpeed() {}

    /** Prints the table of service/docs/engine-speed.md. */
    public static void main(String[] args) {
        System.out.println("| flyers | their evidence | the pool, and each one's others | in all | kept meanwhile |");
        System.out.println("|---|---|---|---|---|");
        for (String each : args.length > 0 ? args : new String[] {"25", "100", "1000"}) {
            int flyers = Integer.parseInt(each);
            Random random = new Random(7);
            List<FleetLog> logs = new ArrayList<>();
            for (int f = 0; f < flyers; f++) {
                logs.add(log(random));
            }
            long start = System.nanoTime();
            List<FlyerEvidence> evidence =
                    logs.stream().map(log -> FlyerEvidence.of(log, BASE)).toList();
            long found = System.nanoTime();
            double kept = kept();
            long pooling = System.nanoTime();
            int parts = Pool.of(evidence, BASE).learned().size();
            long end = System.nanoTime();
            System.out.printf(
                    Locale.ROOT,
                    "| %d | %.1f s | %.1f s (%d normals) | %.1f s | %.0f MiB |%n",
                    flyers,
                    (found - start) / 1e9,
                    (end - pooling) / 1e9,
                    parts,
                    (found - start + end - pooling) / 1e9,
                    kept);
        }
    }

    private static double kept() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / MEBIBYTE;
    }

    private static FleetLog log(Random random) {
        double mean = 0.15 * random.nextGaussian();
        double sigma = 0.1 * StrictMath.exp(0.3 * random.nextGaussian());
        double delta = 0.15 * StrictMath.exp(0.3 * random.nextGaussian());
        List<AirframeLog> airframes = new ArrayList<>();
        for (int a = 0; a < 2; a++) {
            List<JointLog> joints = new ArrayList<>();
            for (int j = 0; j < 2; j++) {
                double c = mean + 0.2 * random.nextGaussian();
                List<Trial> trials = new ArrayList<>();
                for (int t = 0; t < 3; t++) {
                    double x = c + 0.1 + 0.2 * random.nextGaussian();
                    double z = x - c + sigma * random.nextGaussian();
                    trials.add(new Trial(x, z < 0 ? Outcome.NONE : z < delta ? Outcome.PARTIAL : Outcome.SEPARATED));
                }
                joints.add(new JointLog(List.of(new SetupLog(0.05, trials))));
            }
            airframes.add(new AirframeLog(joints));
        }
        return new FleetLog(airframes);
    }
}
