package org.sunder.engine.physics;

import java.util.ArrayList;
import java.util.List;
import org.sunder.engine.physics.Content.Intrusion;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;

/**
 * Free volume and handbook charge of a joint for a bay pushed in more or less.
 *
 * @param rows in the order of the depths asked for; a depth that leaves no room has none
 * @param refused depths that do not go, m
 */
public record InsertionTable(List<Row> rows, List<Double> refused) {

    /**
     * One depth.
     *
     * @param depth m
     * @param freeVolume m³
     * @param handbookCharge kg
     */
    public record Row(double depth, double freeVolume, double handbookCharge) {}

    /** Copies the lists. */
    public InsertionTable {
        rows = List.copyOf(rows);
        refused = List.copyOf(refused);
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
        Intrusions.get(setup, content);
        JointPhysics.of(setup);
        List<Row> rows = new ArrayList<>();
        List<Double> refused = new ArrayList<>();
        for (Length depth : depths) {
            try {
                JointPhysics joint = JointPhysics.of(at(setup, content, depth));
                rows.add(new Row(depth.metres(), joint.freeVolume(), joint.handbookCharge()));
            } catch (UnsoundSetupException e) {
                refused.add(depth.metres());
            }
        }
        return new InsertionTable(rows, refused);
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
        Intrusion old = Intrusions.get(setup, content);
        List<Content> contents = new ArrayList<>(setup.contents());
        contents.set(content, new Intrusion(old.name(), depth, old.diameter()));
        return setup.withContents(contents);
    }
}
