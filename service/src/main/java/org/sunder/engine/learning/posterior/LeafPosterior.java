package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.hipparchus.special.Erf;
import org.hipparchus.util.FastMath;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.quadrature.FastNormal;

/**
 * What is known of one setup: the joint posterior of its log correction c, scatter σ and band δ on a deterministic
 * grid, all else summed out.
 *
 * <p>Chances are those of the charge's effect; the lapse belongs to the likelihood of a test only. (A flight charge
 * could otherwise never be held to reach more than 98 %, however many tests speak for it.) All log ratios are x =
 * ln(charge / handbook charge). Immutable.
 */
public final class LeafPosterior {

    /** Nodes at either end of the grid whose mass is reported as the edge's. */
    private static final int EDGE_NODES = 3;
    /** Rows with less mass are left out. */
    private static final double NEGLIGIBLE = 1e-9;

    /** Normal score beyond which a chance is 0 or 1 to the last bit. */
    private static final double SURE = 8.5;

    private final Priors priors;
    private final List<CorrectionMass> masses;
    private final double logMarginalLikelihood;
    private final int combinations;

    private LeafPosterior(Priors priors, List<CorrectionMass> masses, double logMarginalLikelihood, int combinations) {
        this.priors = priors;
        this.masses = masses;
        this.logMarginalLikelihood = logMarginalLikelihood;
        this.combinations = combinations;
    }

    /** From unnormalised mass [probits][nodes] in units of exp(offset). */
    static LeafPosterior of(
            Hierarchy levels, List<ProbitNode> probits, double[][] mass, double offset, int combinations) {
        List<CorrectionMass> masses = new ArrayList<>();
        for (int r = 0; r < mass.length; r++) {
            masses.add(new CorrectionMass(probits.get(r), levels.design().corrections(), mass[r]));
        }
        return of(levels.priors(), masses, offset, combinations);
    }

    private static LeafPosterior of(Priors priors, List<CorrectionMass> masses, double offset, int combinations) {
        double total = 0;
        for (CorrectionMass mass : masses) {
            total += mass.mass();
        }
        if (!(total > 0) || Double.isInfinite(total)) {
            throw new IllegalStateException("the posterior has no mass on the grid: " + total);
        }
        List<CorrectionMass> kept = new ArrayList<>();
        for (CorrectionMass mass : masses) {
            if (mass.mass() > NEGLIGIBLE * total) {
                kept.add(mass.scaled(1 / total));
            }
        }
        return new LeafPosterior(priors, List.copyOf(kept), offset + FastMath.log(total), combinations);
    }

    /** Chances of the outcomes of a firing at log ratio x. */
    public OutcomeProbabilities outcomes(double x) {
        double none = pNone(x);
        double separated = pSeparated(x);
        return new OutcomeProbabilities(none, Math.max(0, 1 - none - separated), separated);
    }

    /** Chance that a firing at log ratio x does not part the joint. */
    public double pNone(double x) {
        return chance(Outcome.NONE, x);
    }

    /** Chance that a firing at log ratio x parts the joint only partially. */
    public double pPartial(double x) {
        return chance(Outcome.PARTIAL, x);
    }

    /** Chance that a firing at log ratio x separates the joint. */
    public double pSeparated(double x) {
        return chance(Outcome.SEPARATED, x);
    }

    private double chance(Outcome outcome, double x) {
        double sum = 0;
        for (CorrectionMass mass : masses) {
            sum += mass.chance(outcome, x);
        }
        return Math.min(1, Math.max(0, sum)); // rounding may leave a certainty a last bit beyond its bound
    }

    /** Quantile of the log correction c; p in (0, 1). */
    public double correctionQuantile(double p) {
        return RisingRoot.ofRising(c -> correctionChance(c) - requireChance(p));
    }

    /** Chance that the log correction is at most c. */
    public double correctionChance(double c) {
        return below(mass -> c);
    }

    /** The factor κ = e^c: median and 90 % interval. */
    public CorrectionFactor correctionFactor() {
        return new CorrectionFactor(
                FastMath.exp(correctionQuantile(0.5)),
                FastMath.exp(correctionQuantile(0.05)),
                FastMath.exp(correctionQuantile(0.95)));
    }

    /** Mean of the log correction c. */
    public double correctionMean() {
        return mean(CorrectionMass::firstMoment);
    }

    /** Standard deviation of the log correction c. */
    public double correctionSd() {
        double mean = correctionMean();
        return FastMath.sqrt(mean(mass -> mass.secondMoment(mean)));
    }

    /** Mean of the scatter σ. */
    public double scatterMean() {
        return mean(mass -> mass.mass() * mass.probit().sigma());
    }

    /** Mean of the band δ. */
    public double bandMean() {
        return mean(mass -> mass.mass() * mass.probit().delta());
    }

    private double mean(ToDoubleFunction<CorrectionMass> term) {
        double sum = 0;
        for (CorrectionMass mass : masses) {
            sum += term.applyAsDouble(mass);
        }
        return sum;
    }

    /** The smallest log ratio at which the predictive chance of separating is the given reliability, in (0, 1). */
    public double logRatioFor(double reliability) {
        requireChance(reliability);
        double z = -FastMath.sqrt(2) * Erf.erfcInv(2 * reliability);
        double guess = correctionMean() + bandMean() + z * FastMath.hypot(correctionSd(), scatterMean());
        return logRatioFor(reliability, guess);
    }

    /** As {@link #logRatioFor(double)}, quicker the nearer it is to a guess. */
    public double logRatioFor(double reliability, double guess) {
        double missing = FastMath.log(1 - requireChance(reliability));
        // ln of the chance that it does not separate is nearly a parabola, where the chance itself is a step
        return RisingRoot.ofRisingNear(
                guess, x -> missing - FastMath.log(Math.max(1 - pSeparated(x), Double.MIN_NORMAL)));
    }

    /**
     * Quantile of the joint's own x_R = c + δ + z_R σ, the log ratio at which this joint, whatever its parameters,
     * separates with chance R; z_R is the normal quantile of R.
     *
     * @param p which quantile, in (0, 1)
     * @param reliability R, in (0, 1)
     */
    public double ownLogRatioQuantile(double p, double reliability) {
        return RisingRoot.ofRising(x -> ownLogRatioChance(x, reliability) - requireChance(p));
    }

    /** Chance that the joint's own x_R, see {@link #ownLogRatioQuantile}, is at most x. */
    public double ownLogRatioChance(double x, double reliability) {
        double z = -FastMath.sqrt(2) * Erf.erfcInv(2 * requireChance(reliability));
        return ownAtMost(x, z);
    }

    /**
     * Quantile of this joint's own chance of separating at log ratio x, the band about {@link #pSeparated}: P(own
     * chance ≤ y) is the chance that the joint's own log ratio for y is x or more.
     *
     * @param x log ratio
     * @param p which quantile, in (0, 1)
     */
    public double separationQuantile(double x, double p) {
        requireChance(p);
        if (1 - ownAtMost(x, -SURE) >= p) {
            return 0;
        }
        if (1 - ownAtMost(x, SURE) <= p) {
            return 1;
        }
        return FastNormal.cdf(RisingRoot.between(-SURE, SURE, score -> 1 - ownAtMost(x, score) - p));
    }

    private double ownAtMost(double x, double z) {
        return below(mass -> x - mass.probit().delta() - z * mass.probit().sigma());
    }

    private double below(ToDoubleFunction<CorrectionMass> limit) {
        return mean(mass -> mass.below(limit.applyAsDouble(mass)));
    }

    /** Density of the log correction at c, per unit of log ratio. */
    public double density(double c) {
        return mean(mass -> mass.density(c));
    }

    /** This posterior with one more trial of this setup, exact. */
    public LeafPosterior after(Trial trial) {
        List<CorrectionMass> updated = new ArrayList<>();
        for (CorrectionMass mass : masses) {
            updated.add(mass.after(trial, priors.lapse()));
        }
        return of(priors, updated, logMarginalLikelihood, combinations);
    }

    /** What this posterior was before a trial that it has seen. */
    public LeafPosterior without(Trial had) {
        List<CorrectionMass> updated = new ArrayList<>();
        for (CorrectionMass mass : masses) {
            updated.add(mass.without(had, priors.lapse()));
        }
        return of(priors, updated, logMarginalLikelihood, combinations);
    }

    /** Log probability of all outcomes that this posterior has seen, lapses included. */
    public double logMarginalLikelihood() {
        return logMarginalLikelihood;
    }

    /** What is needed to trust this posterior. */
    public Diagnostics diagnostics() {
        return new Diagnostics(combinations, mean(mass -> mass.edge(EDGE_NODES)));
    }

    /** One mass per node of (σ, δ), the bias of speeds summed out. */
    List<CorrectionMass> masses() {
        List<CorrectionMass> merged = new ArrayList<>();
        for (CorrectionMass mass : masses) {
            int last = merged.size() - 1;
            if (last >= 0 && merged.get(last).sameStrength(mass)) {
                merged.set(last, merged.get(last).plus(mass));
            } else {
                merged.add(mass);
            }
        }
        return merged;
    }

    /** What is known of the bias of speeds, by the probit of each of {@link #masses}. */
    Map<ProbitNode, BiasMoments> biases() {
        return BiasMoments.of(masses);
    }

    double lapse() {
        return priors.lapse();
    }

    private static double requireChance(double p) {
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("a chance here is strictly between 0 and 1, not " + p);
        }
        return p;
    }
}
