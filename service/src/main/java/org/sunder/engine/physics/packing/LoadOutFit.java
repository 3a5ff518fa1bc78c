package org.sunder.engine.physics.packing;

import java.util.List;

/**
 * Whether a load-out fits.
 *
 * @param loadOut its name
 * @param items each item, in the order listed
 * @param lengthLeft length no item takes, m; negative where they overlap
 * @param volumeLeft cavity volume beyond the start less all envelopes, m³
 * @param fits whether everything fits
 */
public record LoadOutFit(String loadOut, List<ItemFit> items, double lengthLeft, double volumeLeft, boolean fits) {

    /** Copies the list. */
    public LoadOutFit {
        items = List.copyOf(items);
    }
}
