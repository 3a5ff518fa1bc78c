package org.sunder.airframe;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.cavity.FabricMaterial;
import org.sunder.engine.physics.packing.PackedItem;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Volume;

/**
 * Something that has to find room in a compartment, at its envelope as packed.
 *
 * @param name what it is
 * @param kind hard, or soft so that it takes the shape of the space
 * @param length envelope length
 * @param diameter envelope diameter
 * @param volume envelope volume; the cylinder's where not given
 * @param place the end it is stacked from; the joint where not given
 * @param material of something soft
 * @param mass of something soft; with the material it says what gas volume it takes
 */
@Schema(
        name = "PackedItem",
        description = "Something that has to find room in a compartment, at its envelope as packed.")
public record PackedItemSheet(
        @Schema(example = "motor case end")
        @NotBlank(message = "a name is needed") @Size(max = 80, message = "at most 80 characters") String name,

        @Schema(description = "hard; or soft, which takes the shape of the space, so that its volume counts.")
        @NotNull(message = "soft or hard is needed") Kind kind,

        @Schema(description = "Envelope length as packed.") @NotNull(message = "the length is needed") Length length,

        @Schema(description = "Envelope diameter as packed.") @NotNull(message = "the diameter is needed") Length diameter,

        @Schema(description = "Envelope volume; the cylinder's where not given.") @Nullable Volume volume,

        @Schema(description = "The end it is stacked from; the joint where not given. A motor case is at the far end.")
        @Nullable Place place,

        @Schema(description = "What something soft is made of.")
        ContentSheet.@Nullable Material material,

        @Schema(
                description = "Mass of something soft. With the material it says what gas volume it takes; without, the"
                        + " whole envelope counts as taken, which asks for less charge.")
        @Nullable Mass mass) {

    /** Whether it keeps its shape. */
    @Schema(name = "PackedKind")
    public enum Kind {
        SOFT("soft"),
        HARD("hard");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /** The end of the compartment that it rests against. */
    @Schema(name = "PackedPlace")
    public enum Place {
        JOINT("joint"),
        FAR_END("far-end");

        private final String word;

        Place(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /** As the engine places it. */
    public PackedItem item() {
        return new PackedItem(
                name,
                length,
                diameter,
                volume,
                kind == Kind.SOFT,
                place == Place.FAR_END ? PackedItem.Place.FAR_END : PackedItem.Place.JOINT);
    }

    /** As what takes gas volume. */
    Content content() {
        if (kind == Kind.SOFT && material != null && mass != null) {
            return new Content.Fabric(name, FabricMaterial.valueOf(material.name()), mass, null);
        }
        return volume == null ? Content.Solid.ofEnvelope(name, diameter, length) : new Content.Solid(name, volume);
    }
}
