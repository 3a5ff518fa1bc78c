package org.sunder.engine.physics.packing;

import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.Solids;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Volume;

/**
 * Something that has to find room in a compartment, at its envelope.
 *
 * @param name what the flyer calls it
 * @param length envelope length as packed
 * @param diameter envelope diameter as packed
 * @param volume envelope volume, or null for the cylinder's
 * @param soft whether it takes the shape of the space (parachute, cord), so that only its volume counts
 * @param place the end it is stacked from
 */
public record PackedItem(
        String name,
        Length length,
        Length diameter,
        @Nullable Volume volume,
        boolean soft,
        Place place) {

    /** The end of the compartment that an item rests against. */
    public enum Place {
        /** Next to the joint plane, or to what is pushed in there. */
        JOINT,
        /** Against the closed far end, as a motor case is. */
        FAR_END
    }

    /** Envelope volume in cubic metres. */
    public double envelope() {
        return volume == null ? Solids.cylinder(diameter.metres() / 2, length.metres()) : volume.cubicMetres();
    }
}
