package org.sunder.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.engine.quantity.Mass;
import org.sunder.picture.Flags.Placed;
import org.sunder.picture.Flags.Side;
import org.sunder.picture.Svg.Anchor;
import org.sunder.picture.Svg.Paint;
import org.sunder.picture.Svg.Weight;

/**
 * The charge ruler: one scale with every firing above its charge, where the joint is likely to part, what to fire next or to
 * fly, the handbook charge and the wall at the ceiling.
 */
public final class ChargeRulerPicture {

    private static final double MARGIN = 10;
    private static final double LANE_GAP = 3; // between labels above each other
    private static final double TIP = 11; // of the pointer
    private static final double PADDING = 9; // inside a label
    private static final double BESIDE = 12; // between labels on one line
    private static final double TAIL = 8; // cut into a flag

    private final ChargeRuler ruler;
    private final Size size;
    private final double width;
    private final RulerScale scale;
    private final Marks marks;
    private final List<Label> labels;
    private final double stripTop;
    private final double marksTop;

    /** How large it is drawn, whatever its width. */
    public enum Size {
        /** For the row of a list. */
        SMALL("small", 13, 32, 26, 5, 28),
        /** For a joint's page, a phone, a card. */
        LARGE("large", 15, 44, 36, 8, 54);

        private final String word;
        private final double text;
        private final double mark;
        private final double strip;
        private final int mostLanes;
        private final double least; // height of the room for marks

        Size(String word, double text, double mark, double strip, int mostLanes, double least) {
            this.word = word;
            this.text = text;
            this.mark = mark;
            this.strip = strip;
            this.mostLanes = mostLanes;
            this.least = least;
        }

        private double label() {
            return text + 13;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /** A label above the ruler. */
    private record Label(String css, String words, Placed at) {}

    private ChargeRulerPicture(ChargeRuler ruler, double width, Size size, double shown) {
        this.ruler = ruler;
        this.size = size;
        this.width = width;
        this.scale = RulerScale.of(ruler, shown, MARGIN, width - MARGIN);
        this.marks = new Marks(
                ruler, size.mark, size.text, size.mostLanes, width, firing -> scale.at(ruler.inUnit(firing.charge())));
        this.labels = labels();
        int flags = labels.stream().mapToInt(label -> label.at().lane()).max().orElse(-1) + 1;
        this.marksTop = 1 + flags * (size.label() + LANE_GAP) + (flags > 0 ? TIP + 3 : 2);
        this.stripTop = marksTop + Math.max(size.least, marks.height());
    }

    /**
     * The picture.
     *
     * @param width in px
     * @param size of what is drawn
     */
    public static String of(ChargeRuler ruler, double width, Size size) {
        return new ChargeRulerPicture(ruler, width, size, 0).draw();
    }

    /**
     * The pictures of several on one scale, where a charge stands at the same place on each.
     *
     * @param width in px
     * @param size of what is drawn
     */
    public static List<String> onOneScale(List<ChargeRuler> rulers, double width, Size size) {
        return rulers.stream()
                .map(ruler -> new ChargeRulerPicture(
                                ruler,
                                width,
                                size,
                                RulerScale.shared(rulers, ruler.measure().unit()))
                        .draw())
                .toList();
    }

    private List<Label> labels() {
        Flags flags = new Flags(0, width);
        List<Label> placed = new ArrayList<>();
        place(placed, flags, "fly", ruler.flight(), PADDING + TAIL, Side.LEFT, Side.RIGHT);
        place(placed, flags, "backup", ruler.backup(), PADDING + TAIL, Side.RIGHT, Side.LEFT);
        place(placed, flags, "fire next", ruler.next(), PADDING, Side.ACROSS);
        return placed;
    }

    private void place(
            List<Label> placed, Flags flags, String what, @Nullable Mass charge, double more, Side... sides) {
        if (charge != null) {
            String words = what + " " + words(charge);
            double room = Lettering.width(words, size.text, Weight.BOLD) + PADDING + more;
            placed.add(new Label(
                    what.replace("fire ", ""), words, flags.place(scale.at(ruler.inUnit(charge)), room, sides)));
        }
    }

    private String draw() {
        Lanes below = new Lanes(BESIDE - 1);
        String ceiling = "never above " + words(limit());
        String handbook = "handbook " + bare(ruler.handbook());
        double ceilingWidth = Lettering.width(ceiling, size.text, Weight.BOLD);
        double handbookWidth = Lettering.width(handbook, size.text, Weight.REGULAR);
        double ceilingLeft = within(scale.wall() + RulerScale.WALL - ceilingWidth, ceilingWidth);
        double handbookX = scale.at(ruler.inUnit(ruler.handbook()));
        below.take(0, ceilingLeft, ceilingLeft + ceilingWidth);
        double handbookLeft = beside(handbookX, handbookWidth, ceilingLeft);
        int handbookRow = below.take(handbookLeft, handbookLeft + handbookWidth);
        double stripBottom = stripTop + size.strip;
        double height = stripBottom + 9 + below.count() * (size.text + 4) + 3;

        Svg svg = Svg.sized(
                width, height, "ruler " + size.word, "Charge ruler, " + ruler.subject(), description(), false);
        band(svg, stripBottom);
        strip(svg, stripBottom);
        poles(svg);
        marks.draw(svg, stripTop);
        labels.forEach(label -> label(svg, label));
        wall(svg, stripBottom);
        svg.stroke("handbook", Paint.DOTS, handbookX, stripBottom - 5, handbookX, stripBottom + 8);
        below(svg, "handbook", handbook, Weight.REGULAR, handbookLeft, handbookWidth, handbookRow, stripBottom);
        below(svg, "ceiling", ceiling, Weight.BOLD, ceilingLeft, ceilingWidth, 0, stripBottom);
        return svg.end();
    }

    private void below(
            Svg svg, String css, String words, Weight weight, double left, double wide, int row, double stripBottom) {
        double y = stripBottom + 8 + (row + 1) * (size.text + 4) - 4;
        svg.words(css, false, left + wide / 2, y, size.text, weight, Anchor.MIDDLE, words);
    }

    /** Under its tick, or moved away from the ceiling's label as long as the tick still stands over it. */
    private double beside(double tick, double wide, double ceilingLeft) {
        double centred = within(tick - wide / 2, wide);
        double moved = ceilingLeft - BESIDE - wide;
        return centred > moved && moved >= 1 && moved + wide > tick - 2 ? moved : centred;
    }

    private double within(double left, double wide) {
        return Math.max(1, Math.min(left, width - wide - 1));
    }

    private void band(Svg svg, double stripBottom) {
        ChargeRuler.Band likely = ruler.likely();
        if (likely == null || ruler.inUnit(likely.low()) >= scale.axis().high()) {
            return;
        }
        double from = scale.at(ruler.inUnit(likely.low()));
        double to = scale.at(ruler.inUnit(likely.high()));
        double middle = scale.at(ruler.inUnit(likely.middle()));
        boolean closed = ruler.inUnit(likely.high()) <= scale.axis().high();
        double top = marksTop - 2;
        svg.box("band", Paint.LIGHT, from, top, to - from, stripBottom - top, 0);
        Trace bracket = new Trace().to(from, stripTop).to(from, top).to(to, top);
        svg.shape("bracket", Paint.LINE, (closed ? bracket.to(to, stripTop) : bracket).toString());
        svg.stroke("middle", Paint.DASHES, middle, top, middle, stripTop);
    }

    private void strip(Svg svg, double stripBottom) {
        double even = scale.broken() ? scale.axis().end() + RulerScale.BREAK : scale.wall();
        svg.box(
                "strip",
                Paint.LINE,
                scale.axis().start(),
                stripTop,
                even - scale.axis().start(),
                size.strip,
                0);
        if (scale.goesOnAboveTheWall()) {
            svg.box("strip off", Paint.DASHES, even, stripTop, scale.end() - even, size.strip, 0);
        }
        svg.stroke("lip", Paint.STRONG, scale.axis().start() - 1, stripTop, even, stripTop);
        double clear = scale.axis().start() - MARGIN;
        Trace marked = new Trace();
        for (RulerScale.Tick tick : scale.ticks(ruler.measure().value(), size.text)) {
            double length = tick.rank() == 2 ? 10 : tick.rank() == 1 ? 7 : 4.5;
            marked.from(tick.x(), stripTop).down(length);
            double half = Lettering.width(tick.label(), size.text, Weight.REGULAR) / 2;
            boolean free = tick.x() - half >= clear
                    && tick.x() + half <= scale.axis().end() + (scale.broken() ? 6 : 0)
                    && (tick.x() + half < scale.wall() - 2 || tick.x() - half > scale.wall() + RulerScale.WALL + 2);
            if (!tick.label().isEmpty() && (free || tick.x() == scale.axis().start())) {
                svg.words(
                        "number",
                        false,
                        tick.x() == scale.axis().start() ? tick.x() + 4 + half : tick.x(),
                        stripBottom - 5,
                        size.text,
                        Weight.REGULAR,
                        Anchor.MIDDLE,
                        tick.label());
            }
        }
        svg.shape("tick", Paint.LINE, marked.toString());
        if (scale.broken()) {
            tear(svg, scale.axis().end() + RulerScale.BREAK * 0.6, stripBottom);
        }
    }

    /** Two jagged edges with nothing between them. */
    private void tear(Svg svg, double x, double stripBottom) {
        double from = stripTop - 5;
        double step = (stripBottom + 5 - from) / 4;
        Trace edge = new Trace();
        Trace other = new Trace();
        Trace gap = new Trace();
        for (int i = 0; i <= 4; i++) {
            double shift = i % 2 == 0 ? -3 : 3;
            edge.to(x - 4 + shift, from + i * step);
            other.to(x + 4 + shift, from + i * step);
            gap.to(x - 4 + shift, from + i * step);
        }
        for (int i = 4; i >= 0; i--) {
            gap.to(x + 4 + (i % 2 == 0 ? -3 : 3), from + i * step);
        }
        svg.shape("gap", Paint.CANVAS, gap + "Z");
        svg.shape("tear", Paint.LINE, edge.toString()).shape("tear", Paint.LINE, other.toString());
    }

    private void wall(Svg svg, double stripBottom) {
        double top = stripTop - 16;
        svg.box("wall", Paint.OUTLINE, scale.wall() + 1, top, RulerScale.WALL - 2, stripBottom - top, 0);
        Trace hatch = new Trace();
        double across = RulerScale.WALL - 2;
        for (double y = top + across; y <= stripBottom; y += 7) {
            hatch.from(scale.wall() + 1, y).to(scale.wall() + 1 + across, y - across);
        }
        svg.shape("hatch", Paint.LINE, hatch.toString());
    }

    /** What holds the labels up; behind the marks. */
    private void poles(Svg svg) {
        for (Label label : labels) {
            double from = labelTop(label) + (label.css().equals("next") ? size.label() : 0);
            double x = label.at().pole();
            double to = label.css().equals("next") ? marks.free(x, stripTop) - TIP + 2 : stripTop;
            svg.stroke("pole " + label.css(), Paint.STRONG, x, from, x, to);
        }
    }

    private double labelTop(Label label) {
        int lanes = labels.stream().mapToInt(each -> each.at().lane()).max().orElse(0) + 1;
        return 1 + (lanes - 1 - label.at().lane()) * (size.label() + LANE_GAP);
    }

    private void label(Svg svg, Label label) {
        double top = labelTop(label);
        Placed at = label.at();
        boolean outlined = label.css().equals("backup");
        svg.open("label " + label.css());
        if (at.side() == Side.ACROSS) {
            svg.box("plate", Paint.INK, at.from(), top, at.to() - at.from(), size.label(), 5);
            if (label.css().equals("next")) {
                double tip = marks.free(at.pole(), stripTop);
                svg.shape(
                        "tip",
                        Paint.INK,
                        new Trace()
                                        .to(at.pole(), tip)
                                        .to(at.pole() - 7, tip - TIP)
                                        .to(at.pole() + 7, tip - TIP)
                                + "Z");
            }
        } else {
            svg.shape("plate", outlined ? Paint.OUTLINE : Paint.INK, flag(at, top));
        }
        double middle = at.side() == Side.ACROSS
                ? (at.from() + at.to()) / 2
                : (at.from() + at.to()) / 2 + (at.side() == Side.LEFT ? TAIL : -TAIL) / 2;
        svg.words(
                "words",
                !outlined,
                middle,
                top + size.label() / 2 + size.text * 0.36,
                size.text,
                Weight.BOLD,
                Anchor.MIDDLE,
                label.words());
        svg.close();
    }

    private String flag(Placed at, double top) {
        double free = at.side() == Side.LEFT ? at.from() + 1 : at.to() - 1;
        double inwards = at.side() == Side.LEFT ? free + TAIL : free - TAIL;
        return new Trace()
                        .to(at.pole(), top)
                        .to(free, top)
                        .to(inwards, top + size.label() / 2)
                        .to(free, top + size.label())
                        .to(at.pole(), top + size.label())
                + "Z";
    }

    private String description() {
        StringBuilder words = new StringBuilder();
        words.append(
                scale.broken()
                        ? "A scale from 0 to " + words(limit()) + ", shortened below the ceiling. "
                        : "A scale from 0. ");
        words.append(ruler.firings().isEmpty() ? "Nothing fired yet. " : "Fired: " + fired() + ". ");
        ChargeRuler.Band likely = ruler.likely();
        if (likely != null) {
            words.append("Likely to part between ")
                    .append(bare(likely.low()))
                    .append(" and ")
                    .append(words(rounded(likely.high())))
                    .append(" (5 to 95 %), as likely as not at ")
                    .append(words(rounded(likely.middle())))
                    .append(". ");
        }
        said(words, "Fire next ", ruler.next());
        said(words, "Flight charge ", ruler.flight());
        said(words, "Backup ", ruler.backup());
        said(words, "Handbook charge ", rounded(ruler.handbook()));
        return words + "Never above " + words(limit()) + ".";
    }

    private static void said(StringBuilder words, String what, @Nullable Mass charge) {
        if (charge != null) {
            words.append(what).append(words(charge)).append(". ");
        }
    }

    private String fired() {
        return Marks.alike(ruler).entrySet().stream()
                .map(each -> ruler.told(each.getKey(), each.getValue()))
                .collect(Collectors.joining("; "));
    }

    /** The ceiling, never rounded up. */
    private Mass limit() {
        return Display.never(ruler.ceiling(), ruler.measure());
    }

    /** A charge between the marks, with the digits that the measure gives. */
    private Mass rounded(Mass charge) {
        return Display.near(charge, ruler.measure());
    }

    private String bare(Mass charge) {
        return rounded(charge).value().toPlainString();
    }

    private static String words(Mass charge) {
        return Display.words(charge);
    }
}
