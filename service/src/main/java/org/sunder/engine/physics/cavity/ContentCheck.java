package org.sunder.engine.physics.cavity;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.cavity.Content.Fabric;
import org.sunder.engine.physics.cavity.Content.Intrusion;
import org.sunder.engine.physics.cavity.Content.Solid;

/** Checks what is packed in a compartment: sizes, whether intrusions go in, and which item no longer fits. */
public final class ContentCheck {

    // Two stated diameters that should be equal may differ in the last digits of their units.
    static final double SLACK = 1e-6;

    private final Faults faults;
    private final @Nullable Cavity cavity;

    public ContentCheck(Faults faults, @Nullable Cavity cavity) {
        this.faults = faults;
        this.cavity = cavity;
    }

    public void check(List<Content> contents) {
        boolean sound = faults.range("contents", contents.size(), SetupBounds.LIST_LENGTH);
        for (int i = 0; i < contents.size(); i++) {
            sound &= item("contents[" + i + "]", contents.get(i));
        }
        if (sound && cavity != null) {
            overfill(contents, cavity);
        }
    }

    private boolean item(String path, Content content) {
        if (content instanceof Intrusion intrusion) {
            boolean depth = faults.range(path + ".depth", intrusion.depth(), SetupBounds.DEPTH);
            boolean diameter = faults.range(path + ".diameter", intrusion.diameter(), SetupBounds.DIAMETER);
            return depth && diameter && goesIn(path, intrusion);
        }
        if (content instanceof Solid solid) {
            return faults.range(path + ".volume", solid.volume(), SetupBounds.SOLID_VOLUME);
        }
        Fabric fabric = (Fabric) content;
        boolean mass = faults.range(path + ".mass", fabric.mass(), SetupBounds.FABRIC_MASS);
        boolean envelope = faults.range(path + ".envelopeVolume", fabric.envelopeVolume(), SetupBounds.SOLID_VOLUME);
        return mass && envelope;
    }

    private boolean goesIn(String path, Intrusion intrusion) {
        if (cavity == null) {
            return false;
        }
        boolean narrow = intrusion.diameter().metres() <= 2 * cavity.openingRadius() * (1 + SLACK);
        if (!narrow) {
            faults.add(
                    path + ".diameter",
                    Faults.show(intrusion.diameter()),
                    intrusion.name() + " is wider than the cavity at the joint",
                    "at most " + SetupBounds.brief(2000 * cavity.openingRadius()) + " mm");
        }
        boolean shallow = intrusion.depth().metres() <= cavity.depth() * (1 + SLACK);
        if (!shallow) {
            faults.add(
                    path + ".depth",
                    Faults.show(intrusion.depth()),
                    intrusion.name() + " reaches deeper than the cavity",
                    "at most " + SetupBounds.brief(1000 * cavity.depth()) + " mm");
        }
        return narrow && shallow && passes(path, cavity, intrusion);
    }

    private boolean passes(String path, Cavity cavity, Intrusion intrusion) {
        var fault = new Passage(cavity, intrusion).fault(path);
        fault.ifPresent(faults::add);
        return fault.isEmpty();
    }

    private void overfill(List<Content> contents, Cavity cavity) {
        FreeVolume volumes = FreeVolume.of(cavity, contents);
        double left = volumes.cavity();
        for (int i = 0; i < contents.size(); i++) {
            double takes = volumes.contents().get(i).volume();
            if (takes >= left) {
                faults.add(
                        "contents[" + i + "]",
                        SetupBounds.brief(takes * 1000) + " L",
                        contents.get(i).name() + " does not fit: no gas volume is left beside it",
                        "less than " + SetupBounds.brief(left * 1000) + " L");
                return;
            }
            left -= takes;
        }
    }
}
