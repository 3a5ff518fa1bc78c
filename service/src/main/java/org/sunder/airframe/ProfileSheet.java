package org.sunder.airframe;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Length;

/**
 * The inside profile of a nose cone.
 *
 * @param shape its family
 * @param radius ogive radius, for a secant ogive
 * @param parameter power of a power series (0 to 1), C of a Haack series (0 to 1), K of a parabolic series (0 to 1)
 */
@Schema(description = "The inside profile of a nose cone.")
public record ProfileSheet(
        @NotNull(message = "a shape is needed") Shape shape,

        @Schema(description = "Ogive radius; for a secant ogive.") @Nullable Length radius,

        @Schema(description = "Power of a power series, C of a Haack series, K of a parabolic series.", example = "0.5")
        @DecimalMin(value = "0", message = "0 to 1") @DecimalMax(value = "1", message = "0 to 1") @Nullable BigDecimal parameter) {

    /** Families of profile. */
    public enum Shape {
        CONE("cone"),
        TANGENT_OGIVE("tangent-ogive"),
        SECANT_OGIVE("secant-ogive"),
        ELLIPSOID("ellipsoid"),
        PARABOLOID("paraboloid"),
        PARABOLIC_SERIES("parabolic-series"),
        POWER_SERIES("power-series"),
        HAACK_SERIES("haack-series");

        private final String word;

        Shape(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }
}
