package org.sunder.page;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one depth of a bay between two compartments leaves of each.
 *
 * @param depth how far it is pushed in
 * @param now whether it is there now
 * @param sides the compartment that the depth is measured in, and the one on the other side where one is looked at
 */
record DepthAt(String depth, boolean now, List<Side> sides) {

    /**
     * A compartment at that depth.
     *
     * @param joint its name
     * @param pushedIn how far the bay is pushed in there
     * @param volume free volume, or null where the bay cannot be there
     * @param charge handbook charge, or null where the bay cannot be there
     * @param gear whether each load-out that packs it fits, worst first; of a compartment that none packs, what its setup has in it
     */
    record Side(
            String joint,
            String pushedIn,
            @Nullable String volume,
            @Nullable String charge,
            List<Gear> gear) {}

    /**
     * Something packed there.
     *
     * @param fits whether it does
     * @param words whether it does, and by how much
     */
    record Gear(boolean fits, String name, String words) {}
}
