package org.sunder.engine.physics.packing;

import java.util.Comparator;
import java.util.List;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.Range;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.Cavity;
import org.sunder.engine.physics.cavity.CavitySegment;
import org.sunder.engine.physics.cavity.SegmentCheck;
import org.sunder.engine.quantity.Length;

/** Whether everything in a compartment finds room, for every load-out; lengths and volumes at the envelopes. */
public final class FitCheck {

    private static final Range ITEM_LENGTH = new Range(0.001, 5, "1 mm to 5 m");
    private static final Range ITEM_DIAMETER = new Range(0.001, 1, "1 mm to 1 m");

    private FitCheck() {}

    /**
     * Places each load-out.
     *
     * @param segments the empty cavity, far end first, as in a setup
     * @param pushedIn how far a bay or coupler reaches in at the joint; items start behind it
     * @param loadOuts the alternatives
     * @return one answer each, worst first: what does not fit, then the least length left
     * @throws UnsoundSetupException with every fault
     */
    public static List<LoadOutFit> of(List<CavitySegment> segments, Length pushedIn, List<LoadOut> loadOuts) {
        Faults faults = new Faults();
        boolean sound = new SegmentCheck(faults).check(segments);
        faults.range("pushedIn", pushedIn, SetupBounds.DEPTH);
        faults.range("loadOuts", loadOuts.size(), SetupBounds.LIST_LENGTH);
        for (int i = 0; i < loadOuts.size(); i++) {
            items(faults, "loadOuts[" + i + "].items", loadOuts.get(i).items());
        }
        Cavity cavity = new Cavity(segments);
        if (sound && pushedIn.metres() > cavity.depth()) {
            faults.add("pushedIn", Faults.show(pushedIn), "deeper than the cavity", SetupBounds.DEPTH.text());
        }
        faults.throwIfAny();
        return loadOuts.stream()
                .map(loadOut -> Placement.of(cavity, pushedIn.metres(), loadOut))
                .sorted(Comparator.comparing(LoadOutFit::fits).thenComparingDouble(LoadOutFit::lengthLeft))
                .toList();
    }

    private static void items(Faults faults, String path, List<PackedItem> items) {
        faults.range(path, items.size(), SetupBounds.LIST_LENGTH);
        for (int i = 0; i < items.size(); i++) {
            PackedItem item = items.get(i);
            faults.range(path + "[" + i + "].length", item.length(), ITEM_LENGTH);
            faults.range(path + "[" + i + "].diameter", item.diameter(), ITEM_DIAMETER);
            faults.range(path + "[" + i + "].volume", item.volume(), SetupBounds.SOLID_VOLUME);
        }
    }
}
