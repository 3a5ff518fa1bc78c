package org.sunder.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
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
 * @param volumes picture of the free volumes
 * @param charges picture of the handbook charges
 */
record DepthTable(List<Row> rows, List<String> stuck, String volumes, String charges) {

    private static final double NOTHING = 1e-9; // m
    private static final int DIGITS = 9;

    /**
     * One side of the bay.
     *
     * @param name of its joint
     * @param setup of its compartment
     * @param bay position of the bay in the contents
     * @param measure step of its charges
     */
    record Side(String name, JointSetup setup, int bay, Mass measure) {

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

    static DepthTable of(List<Length> depths, Side here, @Nullable Side there, Display display) {
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
                picture(
                        "Free volume against depth",
                        unit,
                        ours,
                        theirs,
                        here,
                        display,
                        fits -> display.volume(fits.freeVolume()).value().doubleValue()),
                picture(
                        "Handbook charge against depth",
                        here.measure().unit().toString(),
                        ours,
                        theirs,
                        here,
                        display,
                        fits -> Mass.ofKilograms(fits.handbookCharge())
                                .valueIn(here.measure().unit())
                                .doubleValue()));
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

    private static String picture(
            String title,
            String unit,
            List<InsertionTable.Row> ours,
            List<InsertionTable.Row> theirs,
            Side here,
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
        return drawn ? new DepthPicture(title, unit, points, here.depth(), display).draw() : "";
    }

    private static @Nullable Double value(InsertionTable.Row row, ToDoubleFunction<InsertionTable.Fits> value) {
        return row instanceof InsertionTable.Fits fits ? value.applyAsDouble(fits) : null;
    }
}
