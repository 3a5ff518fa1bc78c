package org.sunder.engine.physics.cavity;

import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.Solids;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Volume;

/** What takes gas volume inside a compartment. */
public sealed interface Content {

    /** What the flyer calls it. */
    String name();

    /**
     * A bay or coupler pushed in at the joint plane, on the axis. It takes the cavity's own volume over its depth, or its own
     * cylinder's where that is narrower. Several intrusions are all measured from the joint plane and overlap on the axis.
     *
     * @param name what the flyer calls it
     * @param depth how far it reaches in from the joint plane
     * @param diameter its outer diameter
     */
    record Intrusion(String name, Length depth, Length diameter) implements Content {}

    /**
     * A solid thing, at its envelope volume.
     *
     * @param name what the flyer calls it
     * @param volume the volume no gas gets into
     */
    record Solid(String name, Volume volume) implements Content {

        /** A solid that fills a cylinder of that diameter and length. */
        public static Solid ofEnvelope(String name, Length diameter, Length length) {
            boolean sound = SetupBounds.DIAMETER.contains(diameter.metres())
                    && SetupBounds.SEGMENT_LENGTH.contains(length.metres());
            // Sizes out of bounds stand as no volume, which the check of the setup refuses by name.
            double volume = sound ? Solids.cylinder(diameter.metres() / 2, length.metres()) : 0;
            return new Solid(name, Volume.ofCubicMetres(volume));
        }
    }

    /**
     * A parachute, streamer or cord. Gas fills its folds, so it counts at material volume, mass over density.
     *
     * @param name what the flyer calls it
     * @param material what it is made of
     * @param mass weighed mass
     * @param envelopeVolume a volume that takes the place of the material's, or null
     */
    record Fabric(
            String name,
            FabricMaterial material,
            Mass mass,
            @Nullable Volume envelopeVolume) implements Content {}
}
