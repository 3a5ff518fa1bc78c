package org.sunder.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.airframe.Joint;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.charge.InsertionTable;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.Mass;

/**
 * What a bay between two compartments leaves of each, depth by depth: as much as it comes out of one it goes into the other.
 *
 * @param rows one a depth
 * @param stuck what is in the way where the bay cannot go on, once a compartment
 * @param at one of the depths looked at closely
 * @param volumes picture of the free volumes, drawn for some widths; empty where the bay can be nowhere
 * @param charges picture of the handbook charges, the same way
 */
record DepthTable(
        List<Row> rows, List<String> stuck, DepthAt at, Map<Integer, String> volumes, Map<Integer, String> charges) {

    private static final double NOTHING = 1e-9; // m
    private static final int DIGITS = 9;

    /**
     * One side of the bay.
     *
     * @param joint its joint
     * @param setup of its compartment
     * @param bay position of the bay in the contents
     * @param measure step of its charges
     */
    record Side(Joint joint, JointSetup setup, int bay, Mass measure) {

        String name() {
            return joint.name();
        }

        /** How far something is pushed in at the joint at most, with the bay at a depth. */
        Length deepest(Length depth) {
            return Stream.concat(
                            Stream.of(depth),
                            IntStream.range(0, setup.contents().size())
                                    .filter(i -> i != bay)
                                    .mapToObj(i -> setup.contents().get(i))
                                    .filter(Content.Intrusion.class::isInstance)
                                    .map(other -> ((Content.Intrusion) other).depth()))
                    .max(Comparator.comparingDouble(Length::metres))
                    .orElse(depth);
        }

        /** How deep the bay is in it now, m. */
        double depth() {
            return ((Content.Intrusion) setup.contents().get(bay)).depth().metres();
        }
    }

    /** A compartment at a depth; where the bay cannot be there, it says so and there is no charge. */
    record Cell(String depth, String volume, String charge) {}

    /**
     * A depth.
     *
     * @param there the compartment on the other side, or null where none is looked at
     * @param now whether the bay is there now
     */
    record Row(Cell here, @Nullable Cell there, boolean now) {}

    /**
     * The table.
     *
     * @param at the depth to look at closely
     * @param gear what is packed in a compartment, with what is pushed in there reaching to a depth
     */
    static DepthTable of(
            List<Length> depths,
            Length at,
            Side here,
            @Nullable Side there,
            BiFunction<Side, Length, List<DepthAt.Gear>> gear,
            Display display) {
        List<InsertionTable.Row> ours =
                InsertionTable.of(here.setup(), here.bay(), depths).rows();
        List<InsertionTable.Row> theirs = there == null
                ? List.of()
                : InsertionTable.of(there.setup(), there.bay(), beyond(depths, here, there))
                        .rows();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < depths.size(); i++) {
            rows.add(new Row(
                    cell(ours.get(i), here, display),
                    there == null ? null : cell(theirs.get(i), there, display),
                    Math.abs(ours.get(i).depth() - here.depth()) < 1e-6));
        }
        String unit = display.volume(1).unit().toString().replaceFirst("3$", "³");
        return new DepthTable(
                rows,
                Stream.concat(stuck(ours, here), stuck(theirs, there)).toList(),
                at(at, here, there, gear, display),
                picture(
                        "Free volume against depth",
                        unit,
                        ours,
                        theirs,
                        here,
                        at,
                        display,
                        fits -> display.volume(fits.freeVolume()).value().doubleValue()),
                picture(
                        "Handbook charge against depth",
                        here.measure().unit().toString(),
                        ours,
                        theirs,
                        here,
                        at,
                        display,
                        fits -> Mass.ofKilograms(fits.handbookCharge())
                                .valueIn(here.measure().unit())
                                .doubleValue()));
    }

    private static DepthAt at(
            Length at,
            Side here,
            @Nullable Side there,
            BiFunction<Side, Length, List<DepthAt.Gear>> gear,
            Display display) {
        List<DepthAt.Side> sides = new ArrayList<>();
        sides.add(side(here, at, gear, display));
        if (there != null) {
            sides.add(side(there, beyond(List.of(at), here, there).get(0), gear, display));
        }
        return new DepthAt(display.depth(at.metres()), Math.abs(at.metres() - here.depth()) < 1e-6, sides);
    }

    private static DepthAt.Side side(
            Side side, Length depth, BiFunction<Side, Length, List<DepthAt.Gear>> gear, Display display) {
        InsertionTable.Row row = InsertionTable.of(side.setup(), side.bay(), List.of(depth))
                .rows()
                .get(0);
        Cell cell = cell(row, side, display);
        if (!(row instanceof InsertionTable.Fits)) {
            String why = row instanceof InsertionTable.FitsNot not && row.depth() >= 0
                    ? not.why() + "."
                    : "The bay would be out of it.";
            return new DepthAt.Side(
                    side.name(),
                    cell.depth(),
                    null,
                    null,
                    List.of(new DepthAt.Gear(false, "The bay", "Cannot be there: " + why)));
        }
        return new DepthAt.Side(
                side.name(), cell.depth(), cell.volume(), cell.charge(), gear.apply(side, side.deepest(depth)));
    }

    /** How deep the bay then is on the other side. */
    private static List<Length> beyond(List<Length> depths, Side here, Side there) {
        double both = here.depth() + there.depth();
        return depths.stream()
                .map(depth -> {
                    double left = both - depth.metres();
                    return Length.ofMetres(Math.abs(left) < NOTHING ? 0 : left).in(LengthUnit.MILLIMETRE, DIGITS);
                })
                .toList();
    }

    private static Cell cell(InsertionTable.Row row, Side side, Display display) {
        if (row.depth() < 0) {
            return new Cell("out of it", "cannot be", "none");
        }
        String depth = display.depth(row.depth());
        return row instanceof InsertionTable.Fits fits
                ? new Cell(
                        depth,
                        Words.brief(display.volume(fits.freeVolume())),
                        AnswerWords.near(fits.handbookCharge(), side.measure()))
                : new Cell(depth, "cannot be", "none");
    }

    /** What is in the way at the least depth where something is. */
    private static Stream<String> stuck(List<InsertionTable.Row> rows, @Nullable Side side) {
        return rows.stream()
                .filter(row -> row.depth() >= 0 && row instanceof InsertionTable.FitsNot)
                .min(Comparator.comparingDouble(InsertionTable.Row::depth))
                .map(row -> (side == null ? "" : side.name() + ": ") + ((InsertionTable.FitsNot) row).why() + ".")
                .stream();
    }

    private static Map<Integer, String> picture(
            String title,
            String unit,
            List<InsertionTable.Row> ours,
            List<InsertionTable.Row> theirs,
            Side here,
            Length at,
            Display display,
            ToDoubleFunction<InsertionTable.Fits> value) {
        List<DepthPicture.Point> points = new ArrayList<>();
        for (int i = 0; i < ours.size(); i++) {
            points.add(new DepthPicture.Point(
                    ours.get(i).depth(),
                    value(ours.get(i), value),
                    theirs.isEmpty() ? null : value(theirs.get(i), value)));
        }
        boolean drawn = points.stream().anyMatch(point -> Objects.nonNull(point.here()));
        return drawn
                ? Drawn.inAColumn(width ->
                        new DepthPicture(title, unit, points, here.depth(), at.metres(), display, width).draw())
                : Map.of();
    }

    private static @Nullable Double value(InsertionTable.Row row, ToDoubleFunction<InsertionTable.Fits> value) {
        return row instanceof InsertionTable.Fits fits ? value.applyAsDouble(fits) : null;
    }
}
