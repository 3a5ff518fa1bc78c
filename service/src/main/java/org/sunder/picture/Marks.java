package org.sunder.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.sunder.picture.ChargeRuler.Firing;
import org.sunder.picture.Svg.Anchor;
import org.sunder.picture.Svg.Paint;
import org.sunder.picture.Svg.Weight;

/** The marks of all firings of a ruler above its strip: marks that would touch rise to the next lane, many that are alike are counted. */
final class Marks {

    private static final double GAP = 3; // between marks, both ways

    private final ChargeRuler ruler;
    private final double mark;
    private final double text;
    private final double width;
    private final ToDoubleFunction<Firing> at;
    private final List<Placed> placed;

    /**
     * A mark with its place; {@code count} firings that were all alike.
     *
     * @param reach where it ends, its count included
     */
    private record Placed(Firing firing, int count, double x, double reach, int lane) {}

    /**
     * Places the marks.
     *
     * @param mark width of one
     * @param text size of the counts
     * @param mostLanes lanes beyond which those alike are counted
     * @param width of the picture, which no mark leaves
     * @param at coordinate of the charge of a firing
     */
    Marks(ChargeRuler ruler, double mark, double text, int mostLanes, double width, ToDoubleFunction<Firing> at) {
        this.ruler = ruler;
        this.mark = mark;
        this.text = text;
        this.width = width;
        this.at = at;
        List<Placed> each = placed(
                ruler.firings().stream().map(firing -> Map.entry(firing, 1)).toList());
        this.placed = lanes(each) <= mostLanes
                ? each
                : placed(List.copyOf(alike(ruler).entrySet()));
    }

    /** Firings that were all alike, counted. */
    static Map<Firing, Integer> alike(ChargeRuler ruler) {
        return ruler.firings().stream()
                .collect(Collectors.toMap(firing -> firing, firing -> 1, Integer::sum, LinkedHashMap::new));
    }

    private List<Placed> placed(List<Map.Entry<Firing, Integer>> firings) {
        Lanes lanes = new Lanes(GAP);
        List<Placed> all = new ArrayList<>();
        for (Map.Entry<Firing, Integer> each : firings) {
            double half = mark / 2;
            double right =
                    each.getValue() == 1 ? half : half + 3 + Lettering.width("×" + each.getValue(), text, Weight.BOLD);
            double x = Math.max(half + 1, Math.min(at.applyAsDouble(each.getKey()), width - right - 1));
            all.add(new Placed(each.getKey(), each.getValue(), x, x + right, lanes.take(x - half, x + right)));
        }
        return all;
    }

    private static int lanes(List<Placed> marks) {
        return marks.stream().mapToInt(Placed::lane).max().orElse(0) + 1;
    }

    /** How high they stand; that of one lane where there is none. */
    double height() {
        return lanes(placed) * step();
    }

    /** The highest point that is free of marks above a coordinate. */
    double free(double x, double stripTop) {
        return placed.stream()
                .filter(each -> each.x() - mark / 2 - 7 < x && x < each.reach() + 7)
                .mapToDouble(each -> base(each, stripTop) - mark / OutcomeMark.ASPECT - 2)
                .min()
                .orElse(stripTop - 1);
    }

    /** Draws them on a strip, each that was raised with a line down to its charge. */
    void draw(Svg svg, double stripTop) {
        for (Placed each : placed) {
            boolean stacked = placed.stream()
                    .anyMatch(other -> other.lane() == each.lane() - 1 && Math.abs(other.x() - each.x()) < 0.5);
            if (each.lane() > 0 && !stacked) {
                svg.stroke("drop", Paint.LINE, each.x(), base(each, stripTop), each.x(), stripTop);
            }
        }
        placed.forEach(each -> draw(svg, each, base(each, stripTop)));
    }

    private void draw(Svg svg, Placed each, double base) {
        each.firing().mark().draw(svg, each.x(), base, mark, ruler.told(each.firing(), each.count()));
        if (each.count() > 1) {
            svg.words(
                    "count",
                    false,
                    each.x() + mark / 2 + 3,
                    base - 2,
                    text,
                    Weight.BOLD,
                    Anchor.START,
                    "×" + each.count());
        }
    }

    private double base(Placed each, double stripTop) {
        return stripTop - 2 - each.lane() * step();
    }

    private double step() {
        return mark / OutcomeMark.ASPECT + GAP;
    }
}
