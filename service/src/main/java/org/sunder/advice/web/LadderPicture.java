package org.sunder.advice.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.quantity.Mass;

/**
 * The ladder as a tree that reads from left to right, in SVG. An outcome is two bars for the two sections: touching, a
 * narrow gap with the bars slightly turned, or a wide gap; the word stands beside it.
 */
final class LadderPicture {

    private static final int COLUMN = 250;
    private static final int ROW = 34;
    private static final int MARGIN = 16;
    private static final int TEXT_HEIGHT = 5;

    private final StringBuilder svg = new StringBuilder();
    private int rows;

    private LadderPicture() {}

    /** The picture of a ladder. */
    static String of(LadderView ladder) {
        return new LadderPicture().draw(ladder);
    }

    /** A step with its place. */
    private record Node(LadderView.StepView step, int depth, double row, List<Node> children) {}

    private String draw(LadderView ladder) {
        Node root = place(ladder.first(), 0);
        int width = COLUMN * (depth(root) + 1) + 2 * MARGIN;
        int height = ROW * Math.max(rows, 2) + 2 * MARGIN;
        svg.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\" font-family=\"system-ui,"
                        + " sans-serif\" fill=\"currentColor\" stroke=\"none\">",
                width,
                height));
        svg.append("<title>Ladder of ground tests</title><desc>")
                .append(words(ladder.first()))
                .append("</desc>");
        paint(root);
        return svg.append("</svg>").toString();
    }

    private Node place(LadderView.StepView step, int depth) {
        if (step.then().isEmpty()) {
            return new Node(step, depth, rows++, List.of());
        }
        List<Node> children = new ArrayList<>();
        for (LadderView.BranchView branch : step.then()) {
            children.add(place(branch.step(), depth + 1));
        }
        double row = (children.get(0).row() + children.get(children.size() - 1).row()) / 2;
        return new Node(step, depth, row, children);
    }

    private static int depth(Node node) {
        return node.children().stream().mapToInt(LadderPicture::depth).max().orElse(node.depth());
    }

    private void paint(Node node) {
        double x = MARGIN + node.depth() * COLUMN;
        double y = y(node);
        text(x, y + TEXT_HEIGHT, 17, "700", label(node.step()));
        for (int i = 0; i < node.children().size(); i++) {
            Node child = node.children().get(i);
            Outcome outcome = node.step().then().get(i).outcome();
            branch(x, y, y(child), outcome);
            paint(child);
        }
    }

    private void branch(double x, double from, double to, Outcome outcome) {
        double start = x + 84;
        double bend = x + 104;
        svg.append(String.format(
                Locale.ROOT,
                "<path d=\"M%.1f %.1fL%.1f %.1fL%.1f %.1f\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"1\"/>",
                start,
                from,
                bend,
                to,
                bend + 8,
                to));
        mark(bend + 14, to, outcome);
        text(bend + 50, to + TEXT_HEIGHT, 13, "400", outcome.toString());
    }

    /** The mark of an outcome, 30 wide and 10 high, its left end at x. */
    private void mark(double x, double y, Outcome outcome) {
        double gap = switch (outcome) {
            case NONE -> 0;
            case PARTIAL -> 3;
            case SEPARATED -> 10;
        };
        double turn = outcome == Outcome.PARTIAL ? 7 : 0;
        double length = 10;
        bar(x + 5 - gap / 2, y, length, -turn);
        bar(x + 15 + gap / 2, y, length, turn);
    }

    private void bar(double x, double y, double length, double turn) {
        svg.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"7\" stroke=\"currentColor\""
                        + " stroke-width=\"1.5\" transform=\"rotate(%.0f %.1f %.1f)\"/>",
                x,
                y - 3.5,
                length,
                turn,
                x + length / 2,
                y));
    }

    private void text(double x, double y, int size, String weight, String words) {
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%d\" font-weight=\"%s\">%s</text>",
                x,
                y,
                size,
                weight,
                words));
    }

    private static double y(Node node) {
        return MARGIN + (node.row() + 0.5) * ROW;
    }

    private static String label(LadderView.StepView step) {
        return switch (step.decision()) {
            case FIRE -> mass(step.charge());
            case STOP -> "fly " + mass(step.flightCharge());
            case STATE_LIMIT -> "state a limit";
            case CHANGE_SETUP -> "change setup";
        };
    }

    private static String words(LadderView.StepView step) {
        if (step.then().isEmpty()) {
            return label(step) + ".";
        }
        StringBuilder all = new StringBuilder("Fire " + label(step) + ".");
        for (LadderView.BranchView branch : step.then()) {
            all.append(" If ")
                    .append(branch.outcome())
                    .append(": ")
                    .append(label(branch.step()))
                    .append('.');
        }
        return all.toString();
    }

    private static String mass(@Nullable Mass mass) {
        return mass == null ? "" : mass.value().toPlainString() + " " + mass.unit();
    }
}
