package org.sunder.airframe;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Volume;

/**
 * One thing in a compartment.
 *
 * @param name what it is
 * @param kind an intrusion (bay or coupler pushed in at the joint), a solid, or fabric
 * @param depth how far an intrusion comes in
 * @param diameter of an intrusion, or of a solid's envelope cylinder
 * @param length of a solid's envelope cylinder
 * @param volume of a solid, instead of diameter and length
 * @param material of fabric
 * @param mass of fabric
 * @param envelopeVolume of fabric, where the flyer would rather count its packed volume
 */
@Schema(description = "One thing in the compartment.")
public record ContentSheet(
        @NotBlank(message = "a name is needed") @Size(max = 80, message = "at most 80 characters") String name,

        @NotNull(message = "intrusion, solid or fabric is needed") Kind kind,

        @Schema(description = "How far an intrusion comes in from the joint.") @Nullable Length depth,

        @Schema(description = "Diameter of an intrusion, or of a solid's envelope cylinder.") @Nullable Length diameter,

        @Schema(description = "Length of a solid's envelope cylinder.") @Nullable Length length,

        @Schema(description = "Volume of a solid, instead of diameter and length.") @Nullable Volume volume,

        @Schema(description = "What fabric or cord is made of.") @Nullable Material material,

        @Schema(description = "Mass of fabric or cord.") @Nullable Mass mass,

        @Schema(description = "Packed volume of fabric, to be counted instead of mass / density.") @Nullable Volume envelopeVolume) {

    /** Kinds of content. */
    public enum Kind {
        INTRUSION("intrusion"),
        SOLID("solid"),
        FABRIC("fabric");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /** Materials of fabric and cord. */
    public enum Material {
        NYLON("nylon"),
        ARAMID("aramid"),
        POLYESTER("polyester");

        private final String word;

        Material(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }
}
