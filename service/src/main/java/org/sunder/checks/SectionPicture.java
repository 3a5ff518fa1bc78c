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

    /** Something in the cavity: from and to are depths from the joint in metres, the radius bounds it. */
    private record Part(String label, double from, double to, double radius, boolean hatched) {

        double middle() {
            return (from + to) / 2;
        }
    }

    private String draw() {
        List<Part> parts = parts();
        double bottom = 2 * axis - TOP;
        double height = bottom + 22 + parts.size() * ROW + 30;
        Svg svg = new Svg(WIDTH, height, "The compartment in section, to scale", words(parts));
        svg.text(LEFT, TOP - 10, SIZE, Anchor.START, "joint")
                .text(x(cavity.depth()), TOP - 10, SIZE, Anchor.END, "closed end");
        for (Part part : parts) {
            if (part.hatched()) {
                svg.area(body(part.from(), part.to(), part.radius()))
                        .path(body(part.from(), part.to(), part.radius()).to(x(part.from()), axis), Line.THIN);
            }
        }
        svg.path(body(0, cavity.depth(), Double.POSITIVE_INFINITY), Line.BOLD);
        svg.line(LEFT, TOP - 4, LEFT, bottom + 4, Line.DASHED);
        label(svg, parts, bottom);
        ruler(svg, height - 14);
        return svg.end();
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
                        true));
            }
        }
        double from = Math.min(deepest, cavity.depth());
        for (int i = 0; i < contents.size(); i++) {
            if (!(contents.get(i) instanceof Content.Intrusion)) {
                double to = end(from, shares.get(i).volume());
                parts.add(new Part(label(shares.get(i)), from, to, Double.POSITIVE_INFINITY, true));
                from = to;
            }
        }
        String free = "free for gas " + Display.brief(display.volume(physics.freeVolume()));
        parts.add(new Part(free, from, cavity.depth(), Double.POSITIVE_INFINITY, false));
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
