package org.sunder.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.picture.Svg.Weight;

/**
 * The scale of a charge ruler: even from nothing to where it breaks or ends, with the wall of the ceiling behind the break or
 * at its charge.
 *
 * @param axis from nothing to the end of the even part
 * @param broken whether it breaks there because the ceiling lies far above
 * @param wall coordinate of the ceiling
 * @param end coordinate at which the ruler ends, the wall included
 */
record RulerScale(Axis axis, boolean broken, double wall, double end) {

    /** How thick the wall is drawn. */
    static final double WALL = 14;
    /** Room for the break. */
    static final double BREAK = 34;

    private static final double ROOM = 1.06; // above the largest charge of interest
    private static final double FAR = 1.6; // a ceiling this many times above is far
    private static final int[] FACTORS = {1, 2, 5};
    private static final double LEAST_TICK = 4.5; // px between ticks
    private static final double LEAST_GAP = 16; // px between labels

    /**
     * The scale for a width.
     *
     * @param ruler what it is to show
     * @param shown up to where it is even, in the unit of the measure, as {@link #shared} found it; 0 for as far as this ruler
     *     needs
     * @param left coordinate of nothing
     * @param right coordinate at which the ruler ends
     */
    static RulerScale of(ChargeRuler ruler, double shown, double left, double right) {
        double ceiling = ruler.inUnit(ruler.ceiling());
        double reach = ruler.reach();
        double step = ruler.inUnit(ruler.measure());
        if (shown > 0) {
            Axis axis = new Axis(0, shown, left, right - WALL - BREAK);
            if (ceiling > shown) {
                return new RulerScale(axis, true, right - WALL, right);
            }
            double wall = axis.at(ceiling);
            return new RulerScale(axis, false, wall, Math.max(axis.end(), wall + WALL));
        }
        double top = Math.ceil(Math.max(reach * ROOM, step) / step - 1e-9) * step;
        if (ceiling > FAR * top) {
            Axis axis = new Axis(0, top, left, right - WALL - BREAK);
            return new RulerScale(axis, true, right - WALL, right);
        }
        boolean beyond = reach > ceiling;
        double last = beyond ? reach * ROOM : ceiling;
        Axis axis = new Axis(0, last, left, beyond ? right : right - WALL);
        return new RulerScale(axis, false, axis.at(ceiling), right);
    }

    /**
     * Up to where several rulers are even, so that a charge stands at the same place on each: as far as the largest charge of
     * interest and each ceiling that is near it.
     *
     * @param rulers at least one
     * @param unit of the answer
     */
    static double shared(List<ChargeRuler> rulers, MassUnit unit) {
        double reach = rulers.stream()
                .mapToDouble(ruler -> new Mass(
                                BigDecimal.valueOf(ruler.reach()),
                                ruler.measure().unit())
                        .valueIn(unit)
                        .doubleValue())
                .max()
                .orElseThrow();
        return rulers.stream()
                .mapToDouble(ruler -> ruler.ceiling().valueIn(unit).doubleValue())
                .filter(ceiling -> ceiling <= FAR * reach)
                .reduce(reach * ROOM, Math::max);
    }

    /** Coordinate of a charge, kept on the even part. */
    double at(double charge) {
        return axis.within(charge);
    }

    /** Whether the even part goes on above the ceiling. */
    boolean goesOnAboveTheWall() {
        return !broken && wall < axis.end() - 1;
    }

    /**
     * A tick.
     *
     * @param x its coordinate
     * @param rank 0 for the smallest, 1 for one between, 2 for one with a label
     * @param label what stands at it, empty for the smaller ones
     */
    record Tick(double x, int rank, String label) {}

    /**
     * Ticks in steps of the measure, thinned until they can be told apart; labels, until none touches another.
     *
     * @param measure the step
     * @param size of the labels
     */
    List<Tick> ticks(BigDecimal measure, double size) {
        double perStep = axis.at(measure.doubleValue()) - axis.at(0);
        int label = factor(1, f -> f * perStep >= LEAST_GAP + widest(measure, f, size));
        int small = divisor(label, f -> f * perStep >= LEAST_TICK);
        int middle = middle(label, small);
        List<Tick> ticks = new ArrayList<>();
        for (int i = 0; i * perStep <= axis.end() - axis.start() + 0.01; i += small) {
            boolean labelled = i % label == 0;
            String words = labelled ? words(measure, i, label) : "";
            ticks.add(new Tick(axis.start() + i * perStep, labelled ? 2 : i % middle == 0 ? 1 : 0, words));
        }
        return ticks;
    }

    private double widest(BigDecimal measure, int factor, double size) {
        int steps = (int) Math.floor(axis.high() / measure.doubleValue());
        return Lettering.width(words(measure, steps - steps % factor, factor), size, Weight.REGULAR);
    }

    /** The value at a tick, with as many decimals as the step between labels needs. */
    private static String words(BigDecimal measure, int steps, int factor) {
        if (steps == 0) {
            return "0";
        }
        int decimals = Math.max(
                0,
                measure.multiply(BigDecimal.valueOf(factor))
                        .stripTrailingZeros()
                        .scale());
        return measure.multiply(BigDecimal.valueOf(steps))
                .setScale(decimals, java.math.RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    private static int factor(int from, java.util.function.IntPredicate enough) {
        for (int power = from; ; power *= 10) {
            for (int digit : FACTORS) {
                if (enough.test(digit * power)) {
                    return digit * power;
                }
            }
        }
    }

    /** The smallest of the steps that divides another and is enough. */
    private static int divisor(int of, java.util.function.IntPredicate enough) {
        return factor(1, f -> f >= of || (of % f == 0 && enough.test(f)));
    }

    /** A step between two, or the larger where there is none. */
    private static int middle(int large, int small) {
        for (int part : new int[] {2, 5}) {
            if (large % part == 0 && large / part > small && large / part % small == 0) {
                return large / part;
            }
        }
        return large;
    }
}
