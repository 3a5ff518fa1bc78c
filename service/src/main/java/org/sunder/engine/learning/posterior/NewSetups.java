package org.sunder.engine.learning.posterior;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What is known of a joint before one of its setups is: from here any setup new to it is one step down, whatever the
 * uncertainty of its inputs. Immutable.
 */
public final class NewSetups {

    private static final int KILOBYTE = 1024;

    private final Hierarchy levels;
    private final List<ProbitNode> probits;
    private final double[][][] joints;
    private final double best;
    private final int combinations;

    /**
     * @param probits nodes of (σ, δ) and of the bias of speeds
     * @param joints mass of the joint's correction [probits][nodes of τₛ][nodes of c] in units of exp(best); no nodes of τₛ
     *     where a probit does not count
     */
    NewSetups(Hierarchy levels, List<ProbitNode> probits, double[][][] joints, double best, int combinations) {
        this.levels = levels;
        this.probits = probits;
        this.joints = joints;
        this.best = best;
        this.combinations = combinations;
    }

    /** The posterior of a setup whose handbook charge has this relative standard deviation. */
    public LeafPosterior with(double inputSd) {
        double[][] mass = new double[joints.length][];
        IntStream.range(0, mass.length).parallel().forEach(r -> mass[r] = setup(levels, joints[r], inputSd));
        return LeafPosterior.of(levels, probits, mass, best, combinations);
    }

    /** Mass of the setup's correction before its own trials, τₛ summed out. */
    static double[] setup(Hierarchy levels, double[][] joints, double inputSd) {
        double[] sum = new double[levels.nodes()];
        for (int s = 0; s < joints.length; s++) {
            DownwardPass.addTo(sum, joints[s], levels.setup(s, inputSd));
        }
        return sum;
    }

    /** Memory that it holds, in kilobytes, about. */
    public int kilobytes() {
        long nodes = 0;
        for (double[][] probit : joints) {
            nodes += (long) probit.length * levels.nodes();
        }
        return Math.toIntExact(nodes * Double.BYTES / KILOBYTE);
    }
}
