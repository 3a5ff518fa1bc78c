package org.sunder.engine.learning.quadrature;

/**
 * Equally spaced nodes.
 *
 * @param low first node
 * @param step distance of two nodes, positive
 * @param size number of nodes, 2 or more
 */
public record Grid(double low, double step, int size) {

    public Grid {
        if (!(step > 0) || size < 2) {
            throw new IllegalArgumentException("a grid needs a positive step and two nodes or more");
        }
    }

    /** A grid symmetric about 0 with {@code half} steps on either side. */
    public static Grid symmetric(double step, int half) {
        return new Grid(-half * step, step, 2 * half + 1);
    }

    public double node(int i) {
        return low + i * step;
    }

    public double high() {
        return node(size - 1);
    }

    /** The first node above a value; the number of nodes where all are below. */
    public int nodeAbove(double value) {
        return (int) Math.min(Math.max(Math.ceil((value - low) / step), 0), size);
    }
}
