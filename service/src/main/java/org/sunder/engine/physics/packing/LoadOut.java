package org.sunder.engine.physics.packing;

import java.util.List;

/**
 * What is installed in a compartment for a flight.
 *
 * @param name what the flyer calls it
 * @param items stacked end to end from their places, in the order listed
 */
public record LoadOut(String name, List<PackedItem> items) {

    /** Copies the list. */
    public LoadOut {
        items = List.copyOf(items);
    }
}
