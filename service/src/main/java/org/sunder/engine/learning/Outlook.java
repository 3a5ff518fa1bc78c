package org.sunder.engine.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.hipparchus.special.Erf;
import org.hipparchus.util.FastMath;

/**
 * Looks one firing ahead, for many charges: what each outcome would leave of the target charge.
 *
 * <p>Made for choosing between charges, so it is fast rather than fine: every second node of c where the posterior is
 * wide enough, nodes of (σ, δ) with less than 3e-6 of the mass left out, and the target log ratio by interpolation
 * between log ratios 0.04 apart. Against the full posterior the target log ratio is within 0.015. Answers
 * that are flown come from {@link LeafPosterior} itself. Not safe for use by several threads at once.
 */
public final class Outlook {

    /** Rows with less of the mass are left out. */
    private static final double NEGLIGIBLE = 3e-6;
    /** A posterior of c wider than this many steps of the grid is still carried by every second node. */
    private static final double WIDE = 2.4;
    /** Distance of the log ratios at which chances are tabulated. */
    private static final double STEP = 0.04;

    private final double reliability;
    private final double lapse;
    private final List<Slice> slices = new ArrayList<>();
    private final int size;
    private final double[] weights;
    private final double[] own;
    private final TreeMap<Integer, double[]> separated = new TreeMap<>();

    /**
     * @param posterior what is known now
     * @param reliability target chance of separating, in (0, 1)
     */
    public Outlook(LeafPosterior posterior, double reliability) {
        this.reliability = reliability;
        this.lapse = posterior.lapse();
        List<Slice> fine = posterior.slices();
        Grid grid = fine.get(0).grid();
        int stride = posterior.correctionSd() > WIDE * grid.step() ? 2 : 1;
        int nodes = 0;
        for (Slice slice : fine) {
            if (slice.mass() > NEGLIGIBLE) {
                slices.add(slice.thinned(stride));
                nodes += slices.get(slices.size() - 1).size();
            }
        }
        this.size = nodes;
        this.weights = new double[nodes];
        this.own = new double[nodes];
        double z = -FastMath.sqrt(2) * Erf.erfcInv(2 * reliability);
        int k = 0;
        for (Slice slice : slices) {
            for (int i = 0; i < slice.size(); i++, k++) {
                weights[k] = slice.massAt(i);
                own[k] = slice.grid().node(i)
                        + slice.row().delta()
                        + z * slice.row().sigma();
            }
        }
    }

    /** The log ratio for the target reliability and the joint's own median now, as one certain forecast. */
    public Forecast now() {
        return forecast(Outcome.NONE, weights, 1);
    }

    /** What a firing at log ratio x would leave behind, for each outcome. */
    public List<Forecast> after(double x) {
        double[][] posteriors = new double[3][size];
        double[] chances = new double[3];
        List<Outcome> outcomes = List.of(Outcome.values());
        for (int o = 0; o < 3; o++) {
            chances[o] = update(outcomes.get(o), x, posteriors[o]);
        }
        List<Forecast> forecasts = new ArrayList<>();
        for (int o = 0; o < 3; o++) {
            forecasts.add(
                    forecast(outcomes.get(o), posteriors[o], chances[o] / (chances[0] + chances[1] + chances[2])));
        }
        return forecasts;
    }

    /** Multiplies in the likelihood of an outcome; answers the outcome's chance, the lapse left out. */
    private double update(Outcome outcome, double x, double[] target) {
        double total = 0;
        int k = 0;
        for (Slice slice : slices) {
            double[] chances = new double[slice.size()];
            slice.row().chances(outcome, x, slice.grid(), chances);
            for (double chance : chances) {
                total += weights[k] * chance;
                target[k] = weights[k] * ((1 - lapse) * chance + lapse / 3);
                k++;
            }
        }
        return total;
    }

    private Forecast forecast(Outcome outcome, double[] mass, double probability) {
        double total = 0;
        for (double value : mass) {
            total += value;
        }
        return new Forecast(outcome, probability, target(mass, total), median(mass, total));
    }

    /** Where the chance of separating reaches the target: bisection on the table, then interpolation of ln(1 − P). */
    private double target(double[] mass, double total) {
        int low = -100;
        int high = 150;
        double below = 1;
        double above = 0;
        while (high - low > 1) {
            int middle = (low + high) >> 1;
            double missing = 1 - chance(mass, middle) / total;
            if (missing <= 1 - reliability) {
                high = middle;
                above = missing;
            } else {
                low = middle;
                below = missing;
            }
        }
        double logBelow = FastMath.log(below);
        double logAbove = FastMath.log(Math.max(above, 1e-12));
        double t = (logBelow - FastMath.log(1 - reliability)) / (logBelow - logAbove);
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
        for (Slice slice : slices) {
            double[] chances = new double[slice.size()];
            slice.row().chances(Outcome.SEPARATED, STEP * index, slice.grid(), chances);
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
