package org.sunder.engine.physics;

import java.util.List;
import org.sunder.engine.physics.PinStrength.MeasuredBatch;
import org.sunder.engine.quantity.Force;

/** Turns the break forces of single pins of a batch into its strength. */
public final class PullTests {

    /** Equal pulls differ from their mean by no more than this part of it, which is no scatter. */
    private static final double ROUNDING = 1e-12;

    private PullTests() {}

    /**
     * Sample mean and sample standard deviation (n − 1).
     *
     * @param pulls break force of one pin each, at least two
     * @throws UnsoundSetupException with every fault; paths {@code pulls[i]}
     */
    public static MeasuredBatch batch(List<Force> pulls) {
        Faults faults = new Faults();
        faults.range("pulls", pulls.size(), SetupBounds.PULL_TESTS);
        for (int i = 0; i < pulls.size(); i++) {
            faults.range("pulls[" + i + "]", pulls.get(i), SetupBounds.PIN_FORCE);
        }
        faults.throwIfAny();
        double mean = pulls.stream().mapToDouble(Force::newtons).sum() / pulls.size();
        double squares = pulls.stream()
                .mapToDouble(f -> (f.newtons() - mean) * (f.newtons() - mean))
                .sum();
        double deviation = Math.sqrt(squares / (pulls.size() - 1));
        double sd = deviation < ROUNDING * mean ? 0 : deviation;
        return new MeasuredBatch(Force.ofNewtons(mean), Force.ofNewtons(sd), pulls.size());
    }
}
