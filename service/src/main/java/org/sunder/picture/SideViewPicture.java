package org.sunder.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.sunder.engine.planning.Evidence;
import org.sunder.picture.Flags.Placed;
import org.sunder.picture.Flags.Side;
import org.sunder.picture.SideView.Cut;
import org.sunder.picture.SideView.Element;
import org.sunder.picture.SideView.Inside;
import org.sunder.picture.SideView.Kind;
import org.sunder.picture.SideView.Part;
import org.sunder.picture.SideView.Station;
import org.sunder.picture.Svg.Anchor;
import org.sunder.picture.Svg.Paint;
import org.sunder.picture.Svg.Weight;

/** An airframe in side view, to scale, nose at the left: where it parts, and in what state that is. Nothing else. */
public final class SideViewPicture {

    private static final double MARGIN = 6;
    private static final double NARROW = 480; // px; below this letters are a little smaller
    private static final double LABEL = 30;
    private static final double LANE_GAP = 5;
    private static final double BADGE = 19;
    private static final double STATE = 15;
    private static final double SPACE = 6; // inside a label
    private static final double TALLEST = 0.16; // of the width, for the body
    private static final double FIN = 1.5; // height of a fin in radii
    private static final double UNDER = 12; // a cut runs on below the body
    private static final double GAP_WITHOUT_INSIDE = 1.2; // radii
    private static final double GAP_OF_INSIDE = 1.3; // of what is pushed in
    private static final double SLIT = 3; // px, of a closed joint
    private static final double LIT = 0.3; // of the radius: below it a part lies in its own shade

    private final SideView view;
    private final double width;
    private final double text;
    private final double scale;
    private final double left;
    private final double axis;
    private final double bodyHalf;
    private final List<Label> labels;
    private final int lanes;

    /** A cut with its label. */
    private record Label(Cut cut, String letter, String name, double x, Placed at) {}

    private SideViewPicture(SideView view, double width) {
        this.view = view;
        this.width = width;
        this.text = width < NARROW ? 13 : 14;
        double length = view.elements().stream().mapToDouble(this::length).sum();
        double radius = radius();
        this.scale = Math.min((width - 2 * MARGIN) / length, TALLEST * width / (2 * radius));
        this.left = (width - length * scale) / 2;
        this.bodyHalf = radius * scale;
        this.labels = labels();
        this.lanes = labels.stream().mapToInt(label -> label.at().lane()).max().orElse(-1) + 1;
        boolean fins = view.parts().stream().anyMatch(part -> part.kind() == Kind.TAIL);
        double room = Math.max(bodyHalf * (fins ? 1 + FIN : 1), bodyHalf + UNDER);
        this.axis = 1 + lanes * (LABEL + LANE_GAP) + room + 2;
    }

    /**
     * The picture.
     *
     * @param width in px
     */
    public static String of(SideView view, double width) {
        return new SideViewPicture(view, width).draw();
    }

    private double radius() {
        return view.parts().stream()
                .flatMap(part -> part.outline().stream())
                .mapToDouble(Station::radius)
                .max()
                .orElse(1);
    }

    private double length(Element element) {
        if (element instanceof Part part) {
            return part.length();
        }
        Cut cut = (Cut) element;
        Inside inside = cut.inside();
        if (!cut.open()) {
            return 0;
        }
        return inside == null ? GAP_WITHOUT_INSIDE * radius() : GAP_OF_INSIDE * inside.length();
    }

    private List<Label> labels() {
        Flags flags = new Flags(0, width);
        List<Label> placed = new ArrayList<>();
        double x = left;
        int count = view.cuts().size();
        for (Element element : view.elements()) {
            if (element instanceof Cut cut) {
                String letter = String.valueOf((char) ('A' + placed.size() % 26));
                double fixed = SPACE * 4.5
                        + BADGE
                        + STATE
                        + Lettering.width(cut.evidence().toString(), text, Weight.REGULAR);
                String name = Lettering.cut(cut.name(), text, Weight.BOLD, width - fixed - 2);
                double wide = fixed + Lettering.width(name, text, Weight.BOLD);
                double at = x + length(cut) * scale / 2;
                boolean first = placed.isEmpty() && count > 1;
                Placed place = first
                        ? flags.place(at, wide, Side.LEFT, Side.RIGHT, Side.ACROSS)
                        : flags.place(at, wide, Side.RIGHT, Side.LEFT, Side.ACROSS);
                placed.add(new Label(cut, letter, name, at, place));
            }
            x += length(element) * scale;
        }
        return placed;
    }

    private String draw() {
        double bottom = 2 * axis - (1 + lanes * (LABEL + LANE_GAP));
        String note = note();
        double height = bottom + (note.isEmpty() ? 2 : text + 8);
        boolean linked = view.cuts().stream().anyMatch(cut -> cut.address() != null);
        Svg svg = Svg.sized(width, height, "side-view", view.name() + " in side view", description(), linked);
        double x = left;
        for (Element element : view.elements()) {
            if (element instanceof Part part) {
                part(svg, part, x);
            } else {
                inside(svg, (Cut) element, x);
            }
            x += length(element) * scale;
        }
        labels.stream()
                .sorted(Comparator.comparing((Label label) -> label.at().lane()).reversed())
                .forEach(label -> cut(svg, label));
        labels.forEach(label -> label(svg, label));
        if (!note.isEmpty()) {
            svg.words("note", false, MARGIN, height - 5, text, Weight.REGULAR, Anchor.START, note);
        }
        return svg.end();
    }

    private void part(Svg svg, Part part, double x) {
        String css = part.described() ? part.kind().name().toLowerCase(java.util.Locale.ROOT) : "plain";
        Paint paint = part.described() ? Paint.OUTLINE : Paint.STRUCK;
        if (part.kind() == Kind.TAIL) {
            fins(svg, css, paint, part, x);
        }
        svg.shape("part " + css, paint, outline(part, x, -1));
        if (part.described()) {
            svg.shape("shade", Paint.LIGHT, outline(part, x, LIT));
        }
    }

    /** The outside of a part from a share of its radius above the axis (negative) or below it, down to its lower edge. */
    private String outline(Part part, double x, double from) {
        Trace trace = new Trace();
        List<Station> stations = part.outline();
        for (Station station : stations) {
            trace.to(x + station.x() * scale, axis + from * station.radius() * scale);
        }
        for (int i = stations.size() - 1; i >= 0; i--) {
            Station station = stations.get(i);
            trace.to(x + station.x() * scale, axis + station.radius() * scale);
        }
        return trace + "Z";
    }

    private void fins(Svg svg, String css, Paint paint, Part part, double x) {
        double radius = part.outline().get(0).radius() * scale;
        double end = x + part.length() * scale;
        double root = Math.min(part.length() * scale, radius * 4);
        for (int side : new int[] {-1, 1}) {
            Trace fin = new Trace()
                    .to(end - root, axis + side * radius)
                    .to(end - root * 0.5, axis + side * radius * (1 + FIN))
                    .to(end - root * 0.12, axis + side * radius * (1 + FIN))
                    .to(end, axis + side * radius);
            svg.shape("part " + css, paint, fin + "Z");
        }
    }

    private void inside(Svg svg, Cut cut, double x) {
        Inside inside = cut.inside();
        if (cut.open() && inside != null) {
            double gap = length(cut) * scale;
            double wide = inside.length() * scale;
            double from = inside.ofForePart() ? x : x + gap - wide;
            double half = Math.min(inside.radius() * scale, bodyHalf) - 1;
            svg.box("part inside", Paint.OUTLINE, from, axis - half, wide, 2 * half, 0);
        }
    }

    private double labelTop(Label label) {
        return 1 + (lanes - 1 - label.at().lane()) * (LABEL + LANE_GAP);
    }

    private void cut(Svg svg, Label label) {
        double top = labelTop(label) + LABEL;
        double bottom = axis + bodyHalf + UNDER;
        if (!label.cut().open()) {
            svg.box("slit", Paint.CANVAS, label.x() - SLIT / 2, axis - bodyHalf - 1, SLIT, 2 * bodyHalf + 2, 0);
        }
        svg.stroke(
                label.cut().open() ? "cut open" : "cut",
                label.cut().open() ? Paint.STRONG : Paint.DASHES,
                label.x(),
                top,
                label.x(),
                bottom);
    }

    private void label(Svg svg, Label label) {
        Cut cut = label.cut();
        String address = cut.address();
        String css = "joint " + cut.evidence() + (cut.open() ? " open" : "");
        if (address == null) {
            svg.open(css, words(label));
        } else {
            svg.openLink(css, address, words(label));
        }
        double top = labelTop(label);
        double middle = top + LABEL / 2;
        double base = middle + text * 0.36;
        double x = label.at().from() + SPACE;
        svg.box(
                "plate",
                Paint.OUTLINE,
                label.at().from() + 1,
                top + 1,
                label.at().to() - label.at().from() - 2,
                LABEL - 2,
                6);
        svg.box("letter", Paint.INK, x, middle - BADGE / 2, BADGE, BADGE, 4);
        svg.words("on-letter", true, x + BADGE / 2, base, text, Weight.BOLD, Anchor.MIDDLE, label.letter());
        x += BADGE + SPACE;
        svg.words("name", false, x, base, text, Weight.BOLD, Anchor.START, label.name());
        double right = label.at().to() - SPACE - 2;
        double word = Lettering.width(cut.evidence().toString(), text, Weight.REGULAR);
        svg.words(
                "state",
                false,
                right,
                base,
                text,
                Weight.REGULAR,
                Anchor.END,
                cut.evidence().toString());
        EvidenceMark.draw(svg, cut.evidence(), right - word - STATE - 3, middle - STATE / 2, STATE);
        if (address == null) {
            svg.close();
        } else {
            svg.closeLink();
        }
    }

    private static String words(Label label) {
        return "Joint " + label.letter() + ", " + label.cut().name() + ": "
                + stateWords(label.cut().evidence());
    }

    private static String stateWords(Evidence evidence) {
        return "evidence " + evidence;
    }

    private String note() {
        return view.parts().stream().allMatch(Part::described) ? "" : "Dashed: not described yet";
    }

    private String description() {
        StringBuilder words = new StringBuilder("Drawn to scale from its setups, nose at the left. ");
        if (labels.isEmpty()) {
            words.append("No joint is described yet. ");
        }
        labels.forEach(label -> words.append(words(label))
                .append(label.cut().open() ? ", drawn opened" : "")
                .append(". "));
        String plain = view.parts().stream()
                .filter(part -> !part.described())
                .map(part -> part.kind().toString())
                .distinct()
                .collect(Collectors.joining(", "));
        if (!plain.isEmpty()) {
            words.append("Not described and so drawn plain, at a length that is only a guess: ")
                    .append(plain)
                    .append(". ");
        }
        return words.toString().strip();
    }
}
