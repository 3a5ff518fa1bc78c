package org.sunder.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.cavity.Cavity;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.cavity.FreeVolume;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.picture.Svg;
import org.sunder.picture.Svg.Anchor;
import org.sunder.picture.Svg.Line;
import org.sunder.picture.Svg.Paint;
import org.sunder.picture.Trace;

/**
 * A compartment in section, to scale: the joint at the left, the closed end at the right. What is pushed in stands where it
 * is; everything else is drawn behind it, filling the bore over as much length as its volume takes.
 */
public final class SectionPicture {

    private static final double WIDTH = 440;
    private static final double LEFT = 12;
    private static final double RIGHT = WIDTH - 12;
    private static final double TALLEST = 180;
    private static final double TOP = 30;
    private static final double ROW = 24;
    private static final double SIZE = 15;
    private static final double CHARACTER = 8; // width of an average one at that size
    private static final double APART = 7; // px between lines of a hatch
    private static final int POINTS = 160;
    private static final int LONGEST = 32; // characters of a name that is shown
    private static final double SLIVER = 1e-12; // m³
    private static final int EVALUATIONS = 200;

    private final JointPhysics physics;
    private final Display display;
    private final Cavity cavity;
    private final double scale;
    private final double axis;

    private SectionPicture(JointPhysics physics, Display display) {
        this.physics = physics;
        this.display = display;
        this.cavity = physics.setup().emptyCavity();
        double widest = 0;
        for (int i = 0; i <= POINTS; i++) {
            widest = Math.max(widest, cavity.radiusAt(cavity.depth() * i / POINTS));
        }
        this.scale = Math.min((RIGHT - LEFT) / cavity.depth(), TALLEST / (2 * widest));
        this.axis = TOP + widest * scale;
    }

    /** The picture of a sound setup. */
    public static String of(JointPhysics physics, Display display) {
        return new SectionPicture(physics, display).draw();
    }

    /** What tells one content from the next, in grey too. */
    private enum Hatch {
        PLAIN("bay", false, false),
        RISING("soft", true, false),
        FALLING("soft", false, true),
        CROSSED("hard", true, true),
        NONE("free", false, false);

        private final String css;
        private final boolean rising;
        private final boolean falling;

        Hatch(String css, boolean rising, boolean falling) {
            this.css = css;
            this.rising = rising;
            this.falling = falling;
        }
    }

    /** Something in the cavity: from and to are depths from the joint in metres, the radius bounds it. */
    private record Part(String label, double from, double to, double radius, Hatch hatch) {

        double middle() {
            return (from + to) / 2;
        }
    }

    private String draw() {
        List<Part> parts = parts();
        double bottom = 2 * axis - TOP;
        double height = bottom + 22 + parts.size() * ROW + 30;
        Svg svg = Svg.sized(
                WIDTH, height, "packing section", "The compartment in section, to scale", words(parts), false);
        svg.shape("hollow", Paint.CANVAS, body(0, cavity.depth(), Double.POSITIVE_INFINITY) + "Z");
        svg.text(LEFT, TOP - 10, SIZE, Anchor.START, "joint")
                .text(x(cavity.depth()), TOP - 10, SIZE, Anchor.END, "closed end");
        for (Part part : parts) {
            if (part.hatch() != Hatch.NONE) {
                svg.shape(part.hatch().css, Paint.LIGHT, body(part.from(), part.to(), part.radius()) + "Z");
                svg.shape("edge", Paint.LINE, body(part.from(), part.to(), part.radius()) + "Z");
                hatch(svg, part);
            }
        }
        svg.shape(
                "wall",
                Paint.STRONG,
                body(0, cavity.depth(), Double.POSITIVE_INFINITY).toString());
        svg.line(LEFT, TOP - 4, LEFT, bottom + 4, Line.DASHED);
        label(svg, parts, bottom);
        ruler(svg, height - 14);
        return svg.end();
    }

    private void hatch(Svg svg, Part part) {
        Trace lines = new Trace();
        double tall = axis - TOP;
        for (double start = x(part.from()) - 2 * tall; start < x(part.to()); start += APART) {
            if (part.hatch().rising) {
                strokes(lines, part, start, -1);
            }
            if (part.hatch().falling) {
                strokes(lines, part, start, 1);
            }
        }
        if (!lines.isEmpty()) {
            svg.shape("hatch", Paint.LINE, lines.toString());
        }
    }

    /** A line at 45° across the bore, as far as it runs inside of the part. */
    private void strokes(Trace lines, Part part, double start, int down) {
        double tall = axis - TOP;
        boolean drawing = false;
        double lastX = 0;
        double lastY = 0;
        for (double along = 0; along <= 2 * tall; along += 1) {
            double x = start + along;
            double y = axis - down * tall + down * along;
            double depth = (x - LEFT) / scale;
            boolean inside = depth >= part.from()
                    && depth <= part.to()
                    && Math.abs(y - axis) <= scale * Math.min(part.radius(), cavity.radiusAt(depth));
            if (inside && !drawing) {
                lines.from(x, y);
            } else if (!inside && drawing) {
                lines.to(lastX, lastY);
            }
            drawing = inside;
            lastX = x;
            lastY = y;
        }
        if (drawing) {
            lines.to(lastX, lastY);
        }
    }

    private void label(Svg svg, List<Part> parts, double bottom) {
        double y = bottom + 26;
        List<Part> fromRight = parts.stream()
                .sorted(Comparator.comparingDouble(Part::middle).reversed())
                .toList();
        for (Part part : fromRight) {
            double x = x(part.middle());
            double start = Math.min(x + 6, WIDTH - CHARACTER * part.label().length());
            svg.line(x, axis, x, y - 5, Line.THIN).line(x, y - 5, Math.max(x, start - 3), y - 5, Line.THIN);
            svg.text(Math.max(0, start), y, SIZE, Anchor.START, part.label());
            y += ROW;
        }
    }

    /** A length to compare with: the largest of 1, 2 or 5 times a power of ten that fits a quarter of the picture. */
    private void ruler(Svg svg, double y) {
        boolean inches = display.length(1).unit().toString().equals("in");
        double unit = inches ? 0.0254 : 0.001;
        double room = cavity.depth() / 3 / unit;
        double power = Math.pow(10, Math.floor(Math.log10(room)));
        double size = room >= 5 * power ? 5 * power : room >= 2 * power ? 2 * power : power;
        double end = LEFT + size * unit * scale;
        svg.line(LEFT, y, end, y, Line.BOLD)
                .line(LEFT, y - 5, LEFT, y + 5, Line.THIN)
                .line(end, y - 5, end, y + 5, Line.THIN);
        svg.text(
                end + 8,
                y + 5,
                SIZE,
                Anchor.START,
                (size >= 1 ? String.valueOf(Math.round(size)) : String.valueOf(size)) + (inches ? " in" : " mm"));
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        double deepest = 0;
        List<Content> contents = physics.setup().contents();
        List<FreeVolume.Share> shares = physics.volume().contents();
        for (int i = 0; i < contents.size(); i++) {
            if (contents.get(i) instanceof Content.Intrusion bay) {
                deepest = Math.max(deepest, bay.depth().metres());
                parts.add(new Part(
                        label(shares.get(i)),
                        0,
                        bay.depth().metres(),
                        bay.diameter().metres() / 2,
                        Hatch.PLAIN));
            }
        }
        double from = Math.min(deepest, cavity.depth());
        Hatch cloth = Hatch.RISING;
        for (int i = 0; i < contents.size(); i++) {
            if (!(contents.get(i) instanceof Content.Intrusion)) {
                double to = end(from, shares.get(i).volume());
                boolean solid = contents.get(i) instanceof Content.Solid;
                parts.add(new Part(
                        label(shares.get(i)), from, to, Double.POSITIVE_INFINITY, solid ? Hatch.CROSSED : cloth));
                cloth = solid ? cloth : cloth == Hatch.RISING ? Hatch.FALLING : Hatch.RISING;
                from = to;
            }
        }
        String free = "free for gas " + Display.brief(display.volume(physics.freeVolume()));
        parts.add(new Part(free, from, cavity.depth(), Double.POSITIVE_INFINITY, Hatch.NONE));
        return parts;
    }

    private String label(FreeVolume.Share share) {
        String name = share.name().length() > LONGEST ? share.name().substring(0, LONGEST - 1) + "…" : share.name();
        return name + " " + Display.brief(display.volume(share.volume()));
    }

    /** The depth up to which a volume reaches from another depth. */
    private double end(double from, double volume) {
        double left = cavity.volumeBetween(from, cavity.depth()) - volume;
        if (left <= SLIVER || volume <= SLIVER) {
            return left <= SLIVER ? cavity.depth() : from;
        }
        return new BracketingNthOrderBrentSolver(1e-9, 1e-9, 5)
                .solve(EVALUATIONS, to -> cavity.volumeBetween(from, to) - volume, from, cavity.depth());
    }

    private Trace body(double from, double to, double radius) {
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
        return LEFT + depth * scale;
    }

    private String words(List<Part> parts) {
        StringBuilder words = new StringBuilder("From the joint " + display.depth(cavity.depth()) + " deep. In it: ");
        parts.forEach(part -> words.append(part.label()).append("; "));
        return words + "each drawn at the volume it takes from the gas.";
    }
}
