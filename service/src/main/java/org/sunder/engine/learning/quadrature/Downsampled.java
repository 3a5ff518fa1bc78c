package org.sunder.engine.learning.quadrature;

import java.util.ArrayList;
import java.util.List;

/**
 * A likelihood on the grid of c and, made when first asked for, on every second, fourth, ... node, so that many
 * smoothings of it halve it once. Not safe for use by several threads at once.
 */
public final class Downsampled {

    /** Halvings of the grid of c until a step of it is wider than any spread. */
    private static final int DEPTH = 6;

    private final List<double[]> levels = new ArrayList<>(DEPTH);

    public Downsampled(double[] values) {
        levels.add(values);
    }

    /** The likelihood on every {@code stride}-th node, averaged by the weights ¼, ½, ¼ at each halving. */
    public double[] level(int stride) {
        int depth = Integer.numberOfTrailingZeros(stride);
        while (levels.size() <= depth) {
            levels.add(GaussianKernel.halve(levels.get(levels.size() - 1), true));
        }
        return levels.get(depth);
    }
}
