package org.sunder.engine.physics.cavity;

import java.util.List;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.Range;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.cavity.CavitySegment.Cylinder;
import org.sunder.engine.physics.cavity.CavitySegment.NoseCavity;

/** Checks the segments of a cavity; paths begin with {@code cavity}. */
public final class SegmentCheck {

    private final Faults faults;

    public SegmentCheck(Faults faults) {
        this.faults = faults;
    }

    /** Whether every segment is sound, so that geometry may be computed. */
    public boolean check(List<CavitySegment> cavity) {
        if (cavity.isEmpty()) {
            faults.add("cavity", "[]", "no segment", "at least one segment");
        }
        boolean sound = faults.range("cavity", cavity.size(), SetupBounds.LIST_LENGTH) && !cavity.isEmpty();
        for (int i = 0; i < cavity.size(); i++) {
            sound &= segment("cavity[" + i + "]", cavity.get(i), i == 0);
        }
        return sound;
    }

    private boolean segment(String path, CavitySegment segment, boolean farthest) {
        if (segment instanceof Cylinder tube) {
            boolean diameter = faults.range(path + ".innerDiameter", tube.innerDiameter(), SetupBounds.INNER_DIAMETER);
            return faults.range(path + ".length", tube.length(), SetupBounds.SEGMENT_LENGTH) && diameter;
        }
        NoseCavity nose = (NoseCavity) segment;
        if (!farthest) {
            faults.add(path, "nose", "a nose closes the far end and comes first", "only as cavity[0]");
        }
        boolean base = faults.range(path + ".baseDiameter", nose.baseDiameter(), SetupBounds.INNER_DIAMETER);
        boolean length = faults.range(path + ".length", nose.length(), SetupBounds.SEGMENT_LENGTH);
        return base && length && cutoff(path + ".tipCutoff", nose) && profile(path + ".profile", nose);
    }

    private boolean cutoff(String path, NoseCavity nose) {
        double cutoff = nose.tipCutoff() == null ? 0 : nose.tipCutoff().metres();
        return faults.range(
                path, cutoff, new Range(0, 0.999 * nose.length().metres(), "0 to less than the nose's length"));
    }

    private boolean profile(String path, NoseCavity nose) {
        var flaw = nose.profile()
                .findFlaw(nose.baseDiameter().metres() / 2, nose.length().metres());
        flaw.ifPresent(text -> faults.add(path, nose.profile(), text, "a profile that can be drawn"));
        return flaw.isEmpty();
    }
}
