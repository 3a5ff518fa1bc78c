package org.sunder.stock;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.SpecificEnergy;

/** What a flyer says about a powder. */
@Schema(description = "What a flyer says about a powder.")
public record PowderRequest(
        @Schema(description = "What setups name it by; unique among the powders in use.", example = "fine black, tin 3")
        @NotBlank(message = "a name is needed") @Size(max = 80, message = "1 to 80 characters") String name,

        @Schema(description = "The maker's lot.", example = "L24-117")
        @Size(max = 80, message = "at most 80 characters") @Nullable String lot,

        @Schema(description = "Grain size as sold.", example = "4F")
        @Size(max = 40, message = "at most 40 characters") @Nullable String granulation,

        @Schema(description = "Energy a unit of mass gives to the gas: R times the temperature of burning.")
        @NotNull(message = "the powder force is needed") SpecificEnergy powderForce,

        @Schema(
                description = "Relative standard deviation of the powder force; 0.10 for a new lot, where not given.",
                example = "0.08")
        @DecimalMin(value = "0.001", message = "0.001 to 0.5") @DecimalMax(value = "0.5", message = "0.001 to 0.5") @Nullable BigDecimal relativeUncertainty,

        @Size(max = 500, message = "at most 500 characters") @Nullable String note) {

    /** What it says, with what it leaves out filled in. */
    public PowderDetails details() {
        BigDecimal uncertainty = relativeUncertainty == null ? PowderDetails.NEW_LOT : relativeUncertainty;
        return new PowderDetails(name, lot, granulation, powderForce, uncertainty, note);
    }
}
