package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.model.Filming;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.learning.quadrature.Node;
import org.sunder.engine.learning.quadrature.QuadratureRules;

/**
 * What the film of a firing that separates is going to tell: a few readings that stand for all that it may show.
 *
 * <p>They are the nodes of a Gauss–Hermite rule for the normal density with the mean and variance of what may be read, each
 * weighted by the density that it really has over that one's.
 */
final class FilmOutlook {

    private static final double SQRT_2PI = 2.5066282746310002;

    private final Filming filming;
    private final List<Node> nodes;
    private final double[] correction;
    private final double[] bias;
    private final double[] variance;

    /**
     * Over the nodes of c of rows of (σ, δ), those of one after another.
     *
     * @param readings how many stand for all
     */
    FilmOutlook(Filming filming, int readings, LeafPosterior posterior, List<CorrectionMass> rows, int size) {
        this.filming = filming;
        this.nodes = QuadratureRules.normalGauss(readings);
        this.correction = new double[size];
        this.bias = new double[size];
        this.variance = new double[size];
        Map<ProbitNode, BiasMoments> moments = posterior.biases();
        int k = 0;
        for (CorrectionMass row : rows) {
            BiasMoments known = moments.get(row.probit());
            for (int i = 0; i < row.size(); i++, k++) {
                double c = row.grid().node(i);
                correction[k] = c;
                bias[k] = known == null ? 0 : known.mean(c);
                variance[k] = filming.sd() * filming.sd() + (known == null ? 0 : known.variance(c));
            }
        }
    }

    /** One reading: the share of the separated firings that it stands for, and what it leaves of the posterior. */
    static final class Shown {

        private final double share;
        private final double logSpeed;
        private final double[] mass;

        private Shown(double share, double logSpeed, double[] mass) {
            this.share = share;
            this.logSpeed = logSpeed;
            this.mass = mass;
        }

        double share() {
            return share;
        }

        /** ln of its speed in m/s. */
        double logSpeed() {
            return logSpeed;
        }

        /** Unnormalised, node by node. */
        double[] mass() {
            return mass;
        }
    }

    /**
     * What may be read of a firing at log ratio x that separates.
     *
     * @param weights posterior mass of each node before the firing
     * @param separated chance of separating at each node
     * @param lapse chance that a trial says nothing
     */
    List<Shown> readings(double x, double[] weights, double[] separated, double lapse) {
        int size = weights.length;
        double[] predicted = new double[size];
        double[] likely = new double[size];
        double total = 0;
        double mean = 0;
        double square = 0;
        for (int k = 0; k < size; k++) {
            likely[k] = weights[k] * separated[k];
            predicted[k] = filming.predicted().logSpeed(x - correction[k]) + bias[k];
            total += likely[k];
            mean += likely[k] * predicted[k];
            square += likely[k] * (variance[k] + predicted[k] * predicted[k]);
        }
        mean /= total;
        double sd = FastMath.sqrt(Math.max(square / total - mean * mean, filming.sd() * filming.sd()));
        List<Shown> shown = new ArrayList<>();
        double all = 0;
        for (Node node : nodes) {
            double logSpeed = mean + sd * node.value();
            double[] mass = new double[size];
            double density = 0;
            for (int k = 0; k < size; k++) {
                double off = logSpeed - predicted[k];
                double at = FastMath.exp(-0.5 * off * off / variance[k]) / (SQRT_2PI * FastMath.sqrt(variance[k]));
                density += likely[k] * at;
                mass[k] = weights[k] * ((1 - lapse) * separated[k] * at + lapse / 3 * SpeedReading.LAPSED);
            }
            double assumed = FastMath.exp(-0.5 * node.value() * node.value()) / (SQRT_2PI * sd);
            double share = node.weight() * density / (total * assumed);
            all += share;
            shown.add(new Shown(share, logSpeed, mass));
        }
        double sum = all;
        return shown.stream()
                .map(each -> new Shown(each.share / sum, each.logSpeed, each.mass))
                .toList();
    }
}
