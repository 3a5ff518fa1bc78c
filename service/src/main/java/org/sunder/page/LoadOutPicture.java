package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.sunder.airframe.Display;
import org.sunder.airframe.JointFit;
import org.sunder.airframe.LoadOutSheet.CompartmentSheet;
import org.sunder.airframe.PackedItemSheet;
import org.sunder.engine.physics.cavity.Cavity;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.packing.ItemFit;
import org.sunder.picture.Svg;
import org.sunder.picture.Svg.Anchor;
import org.sunder.picture.Svg.Paint;
import org.sunder.picture.Svg.Weight;
import org.sunder.picture.Trace;

/**
 * A compartment in section with a load-out in it: the joint at the left, the closed end at the right, every item where it comes to
 * lie and numbered as it is listed. What finds no room is drawn where it would have to be.
 */
final class LoadOutPicture {

    private static final double EDGE = 10;
    private static final double TOP = 26;
    private static final double TALLEST = 150;
    private static final double TEXT = 13;
    private static final double LEAST_NUMBER = 18; // px of an item that has room for its number
    private static final int POINTS = 120;

    private final List<Item> items;
    private final Cavity cavity;
    private final List<Content.Intrusion> pushedIn;
    private final double width;
    private final double scale;
    private final double left;
    private final double axis;

    /**
     * The scale that some compartments share.
     *
     * @param longest m that have to be drawn
     * @param widest radius that has to be drawn, m
     */
    record Extent(double longest, double widest) {

        /** Of one compartment with what is packed in it. */
        static Extent of(JointFit.Packed packed, CompartmentSheet sheet) {
            List<Item> items = items(packed, sheet);
            Cavity cavity = packed.now().setup().emptyCavity();
            double widest = items.stream()
                    .filter(Item::hard)
                    .mapToDouble(Item::radius)
                    .max()
                    .orElse(0);
            for (int i = 0; i <= POINTS; i++) {
                widest = Math.max(widest, cavity.radiusAt(cavity.depth() * i / POINTS));
            }
            return new Extent(farthest(items, cavity) - nearest(items), widest);
        }

        /** What holds both. */
        Extent and(Extent other) {
            return new Extent(Math.max(longest, other.longest), Math.max(widest, other.widest));
        }

        /** Pixels a metre in a picture of some width. */
        double scale(double width) {
            return Math.min((width - 2 * EDGE) / longest, TALLEST / (2 * widest));
        }
    }

    /** Something in it; stations are depths from the joint, m. */
    private record Item(double from, double to, double radius, boolean hard, boolean fits) {}

    private LoadOutPicture(JointFit.Packed packed, CompartmentSheet sheet, Extent extent, double width) {
        this.items = items(packed, sheet);
        this.cavity = packed.now().setup().emptyCavity();
        this.pushedIn = packed.now().setup().contents().stream()
                .filter(Content.Intrusion.class::isInstance)
                .map(Content.Intrusion.class::cast)
                .toList();
        this.width = width;
        this.scale = extent.scale(width);
        this.left = EDGE - scale * nearest(items);
        this.axis = TOP + extent.widest() * scale;
    }

    /** The picture, drawn for some widths. */
    static Map<Integer, String> of(
            String title, JointFit.Packed packed, CompartmentSheet sheet, Extent extent, Display display) {
        return Drawn.inAColumn(
                width -> new LoadOutPicture(packed, sheet, extent, width).draw(title, words(packed, display)));
    }

    private static List<Item> items(JointFit.Packed packed, CompartmentSheet sheet) {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < sheet.items().size(); i++) {
            PackedItemSheet described = sheet.items().get(i);
            ItemFit fit = packed.fit().items().get(i);
            items.add(new Item(
                    fit.from(),
                    fit.to(),
                    described.diameter().metres() / 2,
                    described.kind() == PackedItemSheet.Kind.HARD,
                    fit.fits()));
        }
        return items;
    }

    private static double nearest(List<Item> items) {
        return items.stream().mapToDouble(Item::from).reduce(0, Math::min);
    }

    private static double farthest(List<Item> items, Cavity cavity) {
        return items.stream().mapToDouble(Item::to).reduce(cavity.depth(), Math::max);
    }

    private String draw(String title, String words) {
        double bottom = 2 * axis - TOP;
        Svg svg = Svg.sized(width, bottom + 12, "packing", title, words, false);
        svg.words("number", false, x(0), TOP - 10, TEXT, Weight.REGULAR, Anchor.START, "joint");
        if (x(cavity.depth()) - x(0) > 130) {
            svg.words("number", false, x(cavity.depth()), TOP - 10, TEXT, Weight.REGULAR, Anchor.END, "closed end");
        }
        svg.shape("hollow", Paint.CANVAS, inside(0, cavity.depth(), Double.POSITIVE_INFINITY) + "Z");
        for (Content.Intrusion bay : pushedIn) {
            svg.shape(
                    "bay",
                    Paint.LIGHT,
                    inside(
                                    0,
                                    Math.min(bay.depth().metres(), cavity.depth()),
                                    bay.diameter().metres() / 2) + "Z");
        }
        items.stream().filter(item -> !item.fits()).forEach(item -> shape(svg, item));
        items.stream().filter(Item::fits).forEach(item -> shape(svg, item));
        svg.shape(
                "wall",
                Paint.STRONG,
                inside(0, cavity.depth(), Double.POSITIVE_INFINITY).toString());
        svg.stroke("joint", Paint.DASHES, x(0), TOP - 4, x(0), bottom + 4);
        for (int i = 0; i < items.size(); i++) {
            number(svg, items.get(i), i + 1);
        }
        return svg.end();
    }

    private void shape(Svg svg, Item item) {
        String css = (item.hard() ? "hard" : "soft") + (item.fits() ? "" : " misfit");
        double top = axis - scale * item.radius();
        double tall = 2 * scale * item.radius();
        double wide = scale * (item.to() - item.from());
        if (!item.hard() && item.fits()) {
            svg.shape(css, Paint.LIGHT, inside(item.from(), item.to(), item.radius()) + "Z");
        } else {
            svg.box(css, Paint.OUTLINE, x(item.from()), top, wide, tall, item.hard() ? 0 : 8);
        }
        if (item.hard()) {
            svg.shape(
                    "cross",
                    Paint.LINE,
                    String.format(
                            Locale.ROOT,
                            "M%.1f %.1fL%.1f %.1fM%.1f %.1fL%.1f %.1f",
                            x(item.from()),
                            top,
                            x(item.to()),
                            top + tall,
                            x(item.from()),
                            top + tall,
                            x(item.to()),
                            top));
        }
    }

    private void number(Svg svg, Item item, int number) {
        if (scale * (item.to() - item.from()) >= LEAST_NUMBER) {
            double middle = x((item.from() + item.to()) / 2);
            svg.box("plate", Paint.CANVAS, middle - 9, axis - 9, 18, 18, 9);
            svg.words(
                    "number",
                    false,
                    middle,
                    axis + TEXT * 0.36,
                    TEXT,
                    Weight.BOLD,
                    Anchor.MIDDLE,
                    String.valueOf(number));
        }
    }

    private Trace inside(double from, double to, double radius) {
        Trace trace = new Trace();
        for (int i = 0; i <= POINTS; i++) {
            double depth = from + (to - from) * i / POINTS;
            trace.to(x(depth), axis - scale * Math.min(radius, cavity.radiusAt(depth)));
        }
        for (int i = POINTS; i >= 0; i--) {
            double depth = from + (to - from) * i / POINTS;
            trace.to(x(depth), axis + scale * Math.min(radius, cavity.radiusAt(depth)));
        }
        return trace;
    }

    private double x(double depth) {
        return left + depth * scale;
    }

    private static String words(JointFit.Packed packed, Display display) {
        StringBuilder words = new StringBuilder("Drawn to scale, the joint at the left. ");
        packed.fit()
                .items()
                .forEach(item -> words.append(item.name())
                        .append(": ")
                        .append(LoadOutStory.where(item, display))
                        .append(". "));
        return words.toString().strip();
    }
}
