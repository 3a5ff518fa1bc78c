package org.sunder.engine.physics.cavity;

import java.util.Optional;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.cavity.Content.Intrusion;

/** How far a bay or coupler goes into a cavity: only as far as that is as wide as it, and a nose narrows. */
public final class Passage {

    // What is measured on a bay and read off a profile differs by about a hundredth; own choice.
    private static final double PLAY = 0.01;

    private static final double STEPS_A_METRE = 1000;

    private final Cavity cavity;
    private final Intrusion bay;
    private final double depth;
    private final double narrowest;

    /** Of a bay that is no wider than the cavity's open end. */
    public Passage(Cavity cavity, Intrusion bay) {
        this.cavity = cavity;
        this.bay = bay;
        this.depth = Math.min(bay.depth().metres(), cavity.depth());
        this.narrowest = across(depth);
    }

    /** What keeps the bay from going in, by the fault at its path. */
    Optional<SetupFault> fault(String path) {
        if (goesTo(depth)) {
            return Optional.empty();
        }
        return Optional.of(new SetupFault(
                path + ".depth",
                Faults.show(bay.depth()),
                widths("only") + ": it cannot be pushed in that far",
                "at most " + Math.round(1000 * farthest()) + " mm deep, or at most "
                        + SetupBounds.briefDown(1000 * narrowest * (1 + PLAY)) + " mm wide"));
    }

    /** What to say of a bay that is wider by no more than what is measured may be wrong. */
    public Optional<Warning> warning() {
        boolean tight = bay.diameter().metres() > narrowest * (1 + ContentCheck.SLACK);
        return tight && goesTo(depth)
                ? Optional.of(new Warning(
                        "wider-than-cavity",
                        widths("no more than") + ". That is less than a hundredth, so the bay is taken to go in:"
                                + " try it."))
                : Optional.empty();
    }

    /** Depth in metres to which the bay goes in, in steps that can be measured. */
    public double farthest() {
        if (goesTo(cavity.depth())) {
            return cavity.depth();
        }
        int goes = 0;
        int stuck = (int) Math.ceil(cavity.depth() * STEPS_A_METRE);
        while (stuck - goes > 1) {
            int middle = (goes + stuck) / 2;
            if (goesTo(middle / STEPS_A_METRE)) {
                goes = middle;
            } else {
                stuck = middle;
            }
        }
        return goes / STEPS_A_METRE;
    }

    private boolean goesTo(double to) {
        return bay.diameter().metres() <= across(to) * (1 + PLAY);
    }

    private double across(double to) {
        return 2 * cavity.narrowest(0, to);
    }

    private String widths(String only) {
        return bay.name() + " is " + SetupBounds.brief(1000 * bay.diameter().metres()) + " mm wide, but the cavity "
                + only + " " + SetupBounds.brief(1000 * narrowest) + " mm at "
                + Math.round(1000 * depth) + " mm deep";
    }
}
