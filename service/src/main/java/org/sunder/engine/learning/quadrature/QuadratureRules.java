package org.sunder.engine.learning.quadrature;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.util.FastMath;

/** Quadrature rules for the hyperparameters, in units of their prior: deterministic nodes with weights that add to 1. */
public final class QuadratureRules {

    private static final List<Node> KNOWN = List.of(new Node(0, 1));

    private QuadratureRules() {}

    /** The one node of a quantity that is known. */
    public static List<Node> known() {
        return KNOWN;
    }

    /**
     * Trapezoidal rule for a standard normal score, {@code half} steps on either side of 0. Its error falls as
     * exp(−2π²/step²), so that a step of 0.8 is already exact to 1e-13 but for the tails cut off.
     */
    public static List<Node> normal(double step, int half) {
        return normalised(IntStream.rangeClosed(-half, half)
                .mapToObj(i -> new Node(i * step, FastMath.exp(-0.5 * i * step * i * step)))
                .toList());
    }

    /**
     * Gauss–Hermite rule for a standard normal variable, right for its first 2n − 1 moments (M. Abramowitz, I. A. Stegun,
     * Handbook of Mathematical Functions, 25.4.46, scaled).
     */
    public static List<Node> normalGauss(int n) {
        GaussIntegrator hermite = new GaussIntegratorFactory().hermite(n);
        return normalised(IntStream.range(0, n)
                .mapToObj(i -> new Node(FastMath.sqrt(2) * hermite.getPoint(i), hermite.getWeight(i)))
                .toList());
    }

    /** Gauss–Legendre rule of n nodes for a standard half-normal variable cut off at {@code reach}. */
    public static List<Node> halfNormal(int n, double reach) {
        GaussIntegrator legendre = new GaussIntegratorFactory().legendre(n, 0, reach);
        return normalised(IntStream.range(0, n)
                .mapToObj(i -> {
                    double t = legendre.getPoint(i);
                    return new Node(t, legendre.getWeight(i) * FastMath.exp(-0.5 * t * t));
                })
                .toList());
    }

    /**
     * Gauss rule of 2 nodes for a standard half-normal variable: right for its first three moments, 2/√(2π), 1 and
     * 4/√(2π). (Half-range Gauss–Hermite rule, N. M. Steen, G. D. Byrne, E. M. Gelbard, Math. Comp. 23 (1969) 661.)
     */
    public static List<Node> halfNormalGauss2() {
        return List.of(new Node(0.424538328648333, 0.722759782272631), new Node(1.771190828112432, 0.277240217727369));
    }

    /** Gauss rule of 3 nodes for a standard half-normal variable, as {@link #halfNormalGauss2()}. */
    public static List<Node> halfNormalGauss3() {
        return List.of(
                new Node(0.2694842630110775, 0.5032907008989703),
                new Node(1.199609295389847, 0.4473665328953831),
                new Node(2.545268446436966, 0.04934276620564661));
    }

    /** Gauss rule of 4 nodes for a standard half-normal variable, as {@link #halfNormalGauss2()}. */
    public static List<Node> halfNormalGauss4() {
        return List.of(
                new Node(0.18918846566792433, 0.36706512791938406),
                new Node(0.8829284441871048, 0.4751684808458351),
                new Node(1.8986352010260337, 0.1505737374085605),
                new Node(3.19989079048788, 0.007192653826220349));
    }

    private static List<Node> normalised(List<Node> nodes) {
        double sum = nodes.stream().mapToDouble(Node::weight).sum();
        List<Node> result = new ArrayList<>();
        nodes.forEach(node -> result.add(new Node(node.value(), node.weight() / sum)));
        return List.copyOf(result);
    }
}
