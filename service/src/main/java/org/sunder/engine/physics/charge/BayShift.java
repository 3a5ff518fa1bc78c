package org.sunder.engine.physics.charge;

import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.cavity.Passage;
import org.sunder.engine.physics.packing.LoadOutFit;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;

/**
 * A bay between two compartments, moved out of one (the nose) into the other (the booster) by the same length.
 *
 * @param farthest how far it can move: what it reaches into the first, or the room in the second, or to where that narrows, m
 * @param first joint of the first compartment after the move
 * @param second joint of the second compartment after the move
 */
public record BayShift(double farthest, JointPhysics first, JointPhysics second) {

    /**
     * Moves the bay as far as it goes.
     *
     * @param first setup whose intrusion comes out, and its index there
     * @param second setup whose intrusion goes in, and its index there
     * @param room length left beside everything packed in the second, e.g. the least of its {@link LoadOutFit}s
     * @throws UnsoundSetupException if a content is no intrusion, a setup is unsound, or nothing is left of the gas volume
     */
    public static BayShift farthest(JointSetup first, int firstBay, JointSetup second, int secondBay, Length room) {
        double out = first.intrusion(firstBay).depth().metres();
        Content.Intrusion in = second.intrusion(secondBay);
        double passable =
                new Passage(second.emptyCavity(), in).farthest() - in.depth().metres();
        double shift = Math.max(0, Math.min(out, Math.min(room.metres(), passable)));
        return of(first, firstBay, second, secondBay, shift);
    }

    private static BayShift of(JointSetup first, int firstBay, JointSetup second, int secondBay, double shift) {
        double in = second.intrusion(secondBay).depth().metres();
        double out = first.intrusion(firstBay).depth().metres();
        return new BayShift(
                shift,
                JointPhysics.of(InsertionTable.at(first, firstBay, length(out - shift))),
                JointPhysics.of(InsertionTable.at(second, secondBay, length(in + shift))));
    }

    private static Length length(double metres) {
        return Length.ofMetres(metres).in(LengthUnit.MILLIMETRE, 9);
    }
}
