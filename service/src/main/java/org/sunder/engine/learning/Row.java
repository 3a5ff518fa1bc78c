package org.sunder.engine.learning;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;

/**
 * One node of (σ, δ).
 *
 * @param sigma shot-to-shot scatter σ of the log threshold
 * @param delta width δ of the band of partial separation, in log ratio
 * @param weight prior weight of the node
 */
record Row(double sigma, double delta, double weight) {

    static List<Row> of(Design design, Priors priors) {
        List<Row> rows = new ArrayList<>();
        for (Node scatter : design.scatter()) {
            for (Node band : design.band()) {
                rows.add(new Row(
                        priors.scatterMedian() * FastMath.exp(priors.scatterLogSd() * scatter.value()),
                        priors.bandMedian() * FastMath.exp(priors.bandLogSd() * band.value()),
                        scatter.weight() * band.weight()));
            }
        }
        return List.copyOf(rows);
    }

    /**
     * Chance of an outcome of a firing at log ratio x at a joint of log correction c: with latent strength z = x − c +
     * σε, none for z &lt; 0, partial for 0 ≤ z &lt; δ, separated for z ≥ δ (ordered probit).
     */
    double chance(Outcome outcome, double x, double c) {
        double upper = (x - c) / sigma;
        return switch (outcome) {
            case NONE -> NormalTable.cdf(-upper);
            case SEPARATED -> NormalTable.cdf(upper - delta / sigma);
            case PARTIAL -> NormalTable.between(upper - delta / sigma, upper);
        };
    }

    /** Writes the chances of an outcome of a firing at log ratio x for every node of c into {@code target}. */
    void chances(Outcome outcome, double x, Grid grid, double[] target) {
        double z = (x - grid.low()) / sigma;
        double step = grid.step() / sigma;
        double band = delta / sigma;
        switch (outcome) {
            case NONE -> {
                for (int i = 0; i < target.length; i++) {
                    target[i] = NormalTable.cdf(i * step - z);
                }
            }
            case SEPARATED -> {
                for (int i = 0; i < target.length; i++) {
                    target[i] = NormalTable.cdf(z - band - i * step);
                }
            }
            case PARTIAL -> {
                for (int i = 0; i < target.length; i++) {
                    target[i] = NormalTable.between(z - band - i * step, z - i * step);
                }
            }
        }
    }
}
