package org.sunder.engine.learning.posterior;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.hipparchus.special.Erf;
import org.hipparchus.util.FastMath;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.Filming;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.quadrature.Grid;
import org.sunder.engine.learning.quadrature.QuadratureRules;

/**
 * Looks one firing ahead, for many charges: what each outcome would leave of the target charge.
 *
 * <p>Made for choosing between charges, so it is fast rather than fine: every second node of σ (the trapezoidal rule's
 * error at twice the step is still below 1e-5, see {@link QuadratureRules#normal}), every second node of c where the posterior
 * is wide enough, nodes of (σ, δ) with less than 3e-6 of the mass left out, and the target log ratio by interpolation
 * between log ratios 0.04 apart. Against the full posterior the target log ratio is within 0.015. Answers
 * that are flown come from {@link LeafPosterior} itself. Not safe for use by several threads at once.
 */
public final class OneStepLookahead {

    /** Rows with less of the mass are left out. */
    private static final double NEGLIGIBLE = 3e-6;
    /** A posterior of c wider than this many steps of the grid is still carried by every second node. */
    private static final double WIDE = 2.4;
    /** Readings that stand for all that a film may show, where charges are compared. */
    private static final int READINGS = 5;
    /** Distance of the log ratios at which chances are tabulated. */
    private static final double STEP = 0.04;

    private final double reliability;
    private final double lapse;
    private final List<CorrectionMass> masses = new ArrayList<>();
    private final int size;
    private final double[] weights;
    private final double[] own;
    private final TreeMap<Integer, double[]> separated = new TreeMap<>();
    private final @Nullable FilmOutlook film;

    /**
     * @param posterior what is known now
     * @param reliability target chance of separating, in (0, 1)
     */
    public OneStepLookahead(LeafPosterior posterior, double reliability) {
        this(posterior, reliability, null);
    }

    /**
     * @param posterior what is known now
     * @param reliability target chance of separating, in (0, 1)
     * @param filming how firings are filmed; null where they are not
     */
    public OneStepLookahead(LeafPosterior posterior, double reliability, @Nullable Filming filming) {
        this(posterior, reliability, filming, READINGS);
    }

    /**
     * @param posterior what is known now
     * @param reliability target chance of separating, in (0, 1)
     * @param filming how firings are filmed; null where they are not
     * @param readings how many stand for all that a film may show: few to compare charges, more to name a chance
     */
    public OneStepLookahead(LeafPosterior posterior, double reliability, @Nullable Filming filming, int readings) {
        this.reliability = reliability;
        this.lapse = posterior.lapse();
        List<CorrectionMass> fine = posterior.masses();
        Grid grid = fine.get(0).grid();
        int stride = posterior.correctionSd() > WIDE * grid.step() ? 2 : 1;
        List<CorrectionMass> coarse = coarse(fine);
        double total = coarse.stream().mapToDouble(CorrectionMass::mass).sum();
        int nodes = 0;
        for (CorrectionMass mass : coarse) {
            if (mass.mass() > NEGLIGIBLE * total) {
                masses.add(mass.scaled(1 / total).thinned(stride));
                nodes += masses.get(masses.size() - 1).size();
            }
        }
        this.size = nodes;
        this.weights = new double[nodes];
        this.own = new double[nodes];
        this.film = filming == null ? null : new FilmOutlook(filming, readings, posterior, masses, nodes);
        double z = -FastMath.sqrt(2) * Erf.erfcInv(2 * reliability);
        int k = 0;
        for (CorrectionMass mass : masses) {
            for (int i = 0; i < mass.size(); i++, k++) {
                weights[k] = mass.massAt(i);
                own[k] = mass.grid().node(i)
                        + mass.probit().delta()
                        + z * mass.probit().sigma();
            }
        }
    }

    /** The masses at every second node of σ, the most likely one among them. */
    private static List<CorrectionMass> coarse(List<CorrectionMass> fine) {
        int likely = fine.stream()
                .max(Comparator.comparingDouble(CorrectionMass::mass))
                .orElseThrow()
                .probit()
                .scatterNode();
        return fine.stream()
                .filter(mass -> (mass.probit().scatterNode() - likely) % 2 == 0)
                .toList();
    }

    /** The log ratio for the target reliability and the joint's own median now, as one certain forecast. */
    public Forecast now() {
        return forecast(Outcome.NONE, weights, 1);
    }

    /** The log ratio at which the chance of separating is as given, within 0.015; for where exactness is not called for. */
    public double logRatioFor(double chance) {
        return ratioFor(weights, 1, chance);
    }

    /**
     * What a firing at log ratio x would leave behind, for each outcome; where it is filmed, for each of a few speeds that a
     * separation may show.
     */
    public List<Forecast> after(double x) {
        double[] none = new double[size];
        double[] partial = new double[size];
        double[] separated = new double[size];
        double[] parting = new double[size];
        double[] chances = update(x, none, partial, separated, parting);
        double all = chances[0] + chances[1] + chances[2];
        List<Forecast> forecasts = new ArrayList<>();
        forecasts.add(forecast(Outcome.NONE, none, chances[0] / all));
        forecasts.add(forecast(Outcome.PARTIAL, partial, chances[1] / all));
        if (film == null || !(chances[2] > 0)) {
            forecasts.add(forecast(Outcome.SEPARATED, separated, chances[2] / all));
        } else {
            for (FilmOutlook.Shown shown : film.readings(x, weights, parting, lapse)) {
                forecasts.add(forecast(Outcome.SEPARATED, shown.mass(), chances[2] / all * shown.share()));
            }
        }
        return List.copyOf(forecasts);
    }

    /** ln of the speeds, in m/s, by which {@link #after} tells separations apart; none where nothing is filmed. */
    List<Double> speedsShown(double x) {
        double[] parting = new double[size];
        update(x, new double[size], new double[size], new double[size], parting);
        return film == null
                ? List.of()
                : film.readings(x, weights, parting, lapse).stream()
                        .map(FilmOutlook.Shown::logSpeed)
                        .toList();
    }

    /**
     * Multiplies in the likelihood of each outcome; answers the outcomes' chances, the lapse left out, and writes that of
     * separating at each node into {@code parting}.
     */
    private double[] update(double x, double[] none, double[] partial, double[] separated, double[] parting) {
        double[] totals = new double[3];
        int k = 0;
        for (CorrectionMass mass : masses) {
            double[] low = new double[mass.size()];
            double[] high = new double[mass.size()];
            mass.probit().ends(x, mass.grid(), low, high);
            for (int i = 0; i < low.length; i++, k++) {
                double middle = Math.max(0, 1 - low[i] - high[i]);
                totals[0] += weights[k] * low[i];
                totals[1] += weights[k] * middle;
                totals[2] += weights[k] * high[i];
                none[k] = weights[k] * ((1 - lapse) * low[i] + lapse / 3);
                partial[k] = weights[k] * ((1 - lapse) * middle + lapse / 3);
                separated[k] = weights[k] * ((1 - lapse) * high[i] + lapse / 3);
                parting[k] = high[i];
            }
        }
        return totals;
    }

    private Forecast forecast(Outcome outcome, double[] mass, double probability) {
        double total = 0;
        for (double value : mass) {
            total += value;
        }
        return new Forecast(outcome, probability, ratioFor(mass, total, reliability), median(mass, total));
    }

    /** Where the chance of separating reaches the one wanted: bisection on the table, then interpolation of ln(1 − P). */
    private double ratioFor(double[] mass, double total, double wanted) {
        int low = -100;
        int high = 150;
        double below = 1;
        double above = 0;
        while (high - low > 1) {
            int middle = (low + high) >> 1;
            double missing = 1 - chance(mass, middle) / total;
            if (missing <= 1 - wanted) {
                high = middle;
                above = missing;
            } else {
                low = middle;
                below = missing;
            }
        }
        double logBelow = FastMath.log(below);
        double logAbove = FastMath.log(Math.max(above, 1e-12));
        double t = (logBelow - FastMath.log(1 - wanted)) / (logBelow - logAbove);
        return STEP * (low + t);
    }

    private double chance(double[] mass, int index) {
        double[] table = separated.computeIfAbsent(index, this::tabulate);
        double sum = 0;
        for (int k = 0; k < size; k++) {
            sum += mass[k] * table[k];
        }
        return sum;
    }

    private double[] tabulate(int index) {
        double[] table = new double[size];
        int k = 0;
        for (CorrectionMass mass : masses) {
            double[] chances = new double[mass.size()];
            mass.probit().chances(Outcome.SEPARATED, STEP * index, mass.grid(), chances);
            System.arraycopy(chances, 0, table, k, chances.length);
            k += chances.length;
        }
        return table;
    }

    /** Median of the joint's own log ratio, from a histogram whose bins are interpolated. */
    private double median(double[] mass, double total) {
        double low = -4;
        double bin = STEP;
        double[] histogram = new double[250];
        for (int k = 0; k < size; k++) {
            double position = Math.min(Math.max((own[k] - low) / bin, 0), histogram.length - 1.001);
            histogram[(int) position] += mass[k];
        }
        double sum = 0;
        int b = 0;
        while (sum + histogram[b] < 0.5 * total) {
            sum += histogram[b++];
        }
        return low + bin * (b + (0.5 * total - sum) / histogram[b]);
    }
}
