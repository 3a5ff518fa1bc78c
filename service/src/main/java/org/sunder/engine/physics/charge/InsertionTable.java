package org.sunder.engine.physics.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.cavity.Content.Intrusion;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;

/**
 * Free volume and handbook charge of a joint for a bay pushed in more or less.
 *
 * @param rows in the order of the depths asked for
 */
public record InsertionTable(List<Row> rows) {

    /** One depth. */
    public sealed interface Row {

        /** How far the bay is pushed in, m. */
        double depth();
    }

    /**
     * A depth that can be.
     *
     * @param depth m
     * @param freeVolume m³
     * @param handbookCharge kg
     */
    public record Fits(double depth, double freeVolume, double handbookCharge) implements Row {}

    /**
     * A depth that cannot be, so that there is no charge for it.
     *
     * @param depth m
     * @param why what is in the way, for people
     */
    public record FitsNot(double depth, String why) implements Row {}

    /** Copies the list. */
    public InsertionTable {
        rows = List.copyOf(rows);
    }

    /**
     * The table.
     *
     * @param setup the joint
     * @param content index of the intrusion in its contents
     * @param depths depths to try
     * @throws UnsoundSetupException if that content is no intrusion, or the setup is unsound as it stands
     */
    public static InsertionTable of(JointSetup setup, int content, List<Length> depths) {
        setup.intrusion(content);
        JointPhysics.of(setup);
        return new InsertionTable(
                depths.stream().map(depth -> row(setup, content, depth)).toList());
    }

    private static Row row(JointSetup setup, int content, Length depth) {
        try {
            JointPhysics joint = JointPhysics.of(at(setup, content, depth));
            return new Fits(depth.metres(), joint.freeVolume(), joint.handbookCharge());
        } catch (UnsoundSetupException e) {
            String why = e.faults().stream().map(SetupFault::detail).collect(Collectors.joining("; "));
            return new FitsNot(depth.metres(), why);
        }
    }

    /** Depths from one to another in equal steps, both ends included. */
    public static List<Length> steps(Length from, Length to, int count) {
        double step = (to.metres() - from.metres()) / Math.max(1, count - 1);
        List<Length> depths = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            depths.add(Length.ofMetres(from.metres() + i * step).in(LengthUnit.MILLIMETRE, 6));
        }
        return depths;
    }

    /** The same setup with that intrusion at another depth. */
    static JointSetup at(JointSetup setup, int content, Length depth) {
        Intrusion old = setup.intrusion(content);
        List<Content> contents = new ArrayList<>(setup.contents());
        contents.set(content, new Intrusion(old.name(), depth, old.diameter()));
        return setup.withContents(contents);
    }
}
