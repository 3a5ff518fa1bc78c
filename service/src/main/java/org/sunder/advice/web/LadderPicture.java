package org.sunder.advice.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.ReasonWords;
import org.sunder.airframe.Display;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.quantity.Mass;
import org.sunder.picture.OutcomeMark;
import org.sunder.picture.Svg;
import org.sunder.picture.Svg.Anchor;
import org.sunder.picture.Svg.Paint;
import org.sunder.picture.Svg.Weight;

/**
 * The ladder as a tree that reads from left to right: what to fire stands in a box to be ticked, a line leads over the mark of each
 * outcome to what follows it, and what is to be flown has a heavy edge. Two firings have boxes; what follows a third outcome stands
 * beside them in a line each, and what comes later is not drawn.
 */
final class LadderPicture {

    /** Across a sheet of A4 or Letter. */
    static final double WIDTH = 704;

    private static final int BOXED = 2; // firings whose outcomes lead to boxes
    private static final double BOX = 124;
    private static final double BOX_HEIGHT = 36;
    private static final double COLUMN = 224;
    private static final double ROW = 41;
    private static final double MARGIN = 4;
    private static final double TICK = 14;
    private static final double MARK = 26;
    private static final double SMALL_MARK = 18;
    private static final double LINE = 13; // between lines beside a box
    private static final int PER_CENT = 100;

    private final LadderView ladder;
    private int rows;

    private LadderPicture(LadderView ladder) {
        this.ladder = ladder;
    }

    /** The picture of a ladder. */
    static String of(LadderView ladder) {
        return new LadderPicture(ladder).draw();
    }

    /** A step with its place; a step without children may still have outcomes, which stand beside it. */
    private record Node(LadderView.StepView step, int depth, double row, List<Node> children) {

        double x() {
            return MARGIN + depth * COLUMN;
        }

        double y() {
            return MARGIN + (row + 0.5) * ROW;
        }
    }

    private String draw() {
        Node root = place(ladder.first(), 0);
        Svg svg = Svg.sized(
                WIDTH,
                ROW * rows + 2 * MARGIN,
                "ladder",
                "What to fire, and what after each outcome",
                words(ladder.first()),
                false);
        paint(svg, root);
        return svg.end();
    }

    private Node place(LadderView.StepView step, int depth) {
        if (step.then().isEmpty() || depth == BOXED) {
            return new Node(step, depth, rows++, List.of());
        }
        List<Node> children = new ArrayList<>();
        for (LadderView.BranchView branch : step.then()) {
            children.add(place(branch.step(), depth + 1));
        }
        double row = (children.get(0).row() + children.get(children.size() - 1).row()) / 2;
        return new Node(step, depth, row, children);
    }

    private void paint(Svg svg, Node node) {
        box(svg, node);
        List<LadderView.BranchView> then = node.step().then();
        for (int i = 0; i < node.children().size(); i++) {
            branch(svg, node, node.children().get(i), then.get(i).outcome());
            paint(svg, node.children().get(i));
        }
        if (node.children().isEmpty() && !then.isEmpty()) {
            beside(svg, node);
        }
    }

    private void box(Svg svg, Node node) {
        LadderView.StepView step = node.step();
        double top = node.y() - BOX_HEIGHT / 2;
        boolean flown = step.flightCharge() != null;
        svg.box("box", flown ? Paint.STRONG : Paint.LINE, node.x(), top, BOX, BOX_HEIGHT, 3);
        if (flown) {
            svg.box("box", Paint.LINE, node.x() + 3, top + 3, BOX - 6, BOX_HEIGHT - 6, 2);
        }
        svg.words("charge", false, node.x() + 8, top + 18, 16, Weight.BOLD, Anchor.START, label(step));
        svg.words("why", false, node.x() + 8, top + 31, 10, Weight.REGULAR, Anchor.START, why(step));
        svg.box("tick", Paint.LINE, node.x() + BOX - TICK - 6, top + 6, TICK, TICK, 1);
    }

    private static String why(LadderView.StepView step) {
        return step.backup() == null
                ? ReasonWords.inShort(step.reason().code())
                : "backup " + Display.words(step.backup());
    }

    private void branch(Svg svg, Node from, Node to, Outcome outcome) {
        double start = from.x() + BOX;
        double bend = start + 10;
        svg.shape(
                "branch",
                Paint.LINE,
                String.format(Locale.ROOT, "M%.1f %.1fH%.1fV%.1fH%.1f", start, from.y(), bend, to.y(), start + 15));
        mark(outcome).draw(svg, start + 17 + MARK / 2, to.y() + MARK / 4, MARK, outcome.toString());
        double words = start + 20 + MARK;
        svg.words("outcome", false, words, to.y() - 1, 9, Weight.BOLD, Anchor.START, outcome.toString());
        svg.words("chance", false, words, to.y() + 10, 9, Weight.REGULAR, Anchor.START, chance(from.step(), outcome));
    }

    /** What follows the outcomes of a box, a line each. */
    private void beside(Svg svg, Node node) {
        List<LadderView.BranchView> then = node.step().then();
        double x = node.x() + BOX;
        double first = node.y() - LINE * (then.size() - 1) / 2;
        for (int i = 0; i < then.size(); i++) {
            double y = first + i * LINE;
            LadderView.StepView next = then.get(i).step();
            svg.shape(
                    "branch",
                    Paint.LINE,
                    String.format(Locale.ROOT, "M%.1f %.1fH%.1fV%.1fH%.1f", x, node.y(), x + 7, y, x + 11));
            mark(then.get(i).outcome())
                    .draw(
                            svg,
                            x + 14 + SMALL_MARK / 2,
                            y + SMALL_MARK / 4,
                            SMALL_MARK,
                            then.get(i).outcome().toString());
            svg.words(
                    "charge",
                    false,
                    x + 20 + SMALL_MARK,
                    y + 4,
                    12,
                    next.flightCharge() == null ? Weight.REGULAR : Weight.BOLD,
                    Anchor.START,
                    label(next));
        }
    }

    private static OutcomeMark mark(Outcome outcome) {
        return new OutcomeMark(outcome, false, false, false);
    }

    private static String chance(LadderView.StepView step, Outcome outcome) {
        var chances = step.probability();
        if (chances == null) {
            return "";
        }
        double chance = switch (outcome) {
            case NONE -> chances.none().doubleValue();
            case PARTIAL -> chances.partial().doubleValue();
            case SEPARATED -> chances.separated().doubleValue();
        };
        return Math.round(chance * PER_CENT) + " in 100";
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
        return mass == null ? "" : Display.words(mass);
    }
}
