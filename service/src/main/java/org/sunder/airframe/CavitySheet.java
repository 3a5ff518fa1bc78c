package org.sunder.airframe;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Length;

/**
 * One segment of a compartment.
 *
 * @param kind cylinder or nose
 * @param innerDiameter of a cylinder
 * @param profile of a nose
 * @param baseDiameter inner diameter at a nose's base
 * @param length inner length; of a nose from the tip of its profile to its base
 * @param tipCutoff how much of a nose's tip is solid or bulkheaded off
 */
@Schema(description = "One segment of the compartment.")
public record CavitySheet(
        @NotNull(message = "cylinder or nose is needed") Kind kind,

        @Schema(description = "Inner diameter; for a cylinder.") @Nullable Length innerDiameter,

        @Schema(description = "Inside profile; for a nose.") @Valid @Nullable ProfileSheet profile,

        @Schema(description = "Inner diameter at the base; for a nose.") @Nullable Length baseDiameter,

        @Schema(description = "Inner length; of a nose from the tip of its profile to its base.")
        @NotNull(message = "the length is needed") Length length,

        @Schema(description = "Length of the tip that is solid or bulkheaded off; for a nose.") @Nullable Length tipCutoff) {

    /** Kinds of segment. */
    public enum Kind {
        CYLINDER("cylinder"),
        NOSE("nose");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }
}
