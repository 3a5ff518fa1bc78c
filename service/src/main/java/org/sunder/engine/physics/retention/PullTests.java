package org.sunder.engine.physics.retention;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.retention.PinStrength.MeasuredBatch;
import org.sunder.engine.quantity.Force;

/** Turns the break forces of single pins of a batch into its strength. */
public final class PullTests {

    /** Equal pulls differ from their mean by no more than this part of it, which is no scatter. */
    private static final double ROUNDING = 1e-12;

    private static final double SELDOM = 0.05; // this often pulls of one and the same batch look like one astray
    private static final int FEWEST_TO_STAND_OUT = 3;

    private PullTests() {}

    /**
     * The pull that lies so far from the mean of all that it hardly belongs to them: a slip of the hand, another pin, a wrong
     * unit. By the two-sided test of F. E. Grubbs (Technometrics 11 (1969) 1) at 5 %; the greatest distance from the mean in
     * standard deviations may be (n − 1)/√n·√(t²/(n − 2 + t²)), where t is the upper 0.05/2n point of Student's t with n − 2
     * degrees of freedom. Two pulls cannot show which of them is astray.
     *
     * @param pulls break force of one pin each
     * @return its place among them, or empty
     */
    public static OptionalInt astray(List<Force> pulls) {
        if (pulls.size() < FEWEST_TO_STAND_OUT) {
            return OptionalInt.empty();
        }
        MeasuredBatch all = batch(pulls);
        double most = mostDeviations(pulls.size()) * all.standardDeviation().newtons();
        return IntStream.range(0, pulls.size())
                .filter(i -> Math.abs(pulls.get(i).newtons() - all.mean().newtons()) > most)
                .filter(i -> most > 0)
                .findFirst();
    }

    static double mostDeviations(int n) {
        double t = new TDistribution(n - 2.0).inverseCumulativeProbability(1 - SELDOM / (2 * n));
        return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }

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
