package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.SetupSheet;
import org.sunder.engine.quantity.Length;
import org.sunder.web.RequestList;

/** A bay pushed in more or less. */
@Schema(name = "InsertionQuestion", description = "A setup whose bay is pushed in more or less.")
record InsertionRequest(
        @NotNull(message = "the setup is needed") @Valid SetupSheet setup,

        @Schema(
                description =
                        "Position of the bay in the setup's contents, from 0; the first intrusion where not given.",
                example = "0")
        @Min(value = 0, message = "0 to 49") @Max(value = 49, message = "0 to 49") @Nullable Integer bay,

        @Schema(description = "Least depth.") @NotNull(message = "the least depth is needed") Length from,

        @Schema(description = "Greatest depth.") @NotNull(message = "the greatest depth is needed") Length to,

        @Schema(description = "Rows of the table; 10 where not given.", example = "7")
        @Min(value = 2, message = "2 to 50") @Max(value = 50, message = "2 to 50") @Nullable Integer steps,

        @Schema(description = "The compartment on the bay's other side, into which it may go instead.") @Valid @Nullable OtherSide other) {

    /** The other compartment. */
    @Schema(
            name = "OtherCompartment",
            description = "The compartment on the bay's other side, and all that has to fit there.")
    record OtherSide(
            @NotNull(message = "the setup is needed") @Valid SetupSheet setup,

            @Schema(
                    description = "Position of the bay in that setup's contents; the first intrusion where not given.",
                    example = "0")
            @Min(value = 0, message = "0 to 49") @Max(value = 49, message = "0 to 49") @Nullable Integer bay,

            @Schema(description = "Everything that may be packed there; the fullest one says how far the bay can go.")
            @NotEmpty(message = "at least one load-out is needed") @Size(max = 20, message = "1 to 20 load-outs") List<@NotNull @Valid Alternative> loadOuts) {

        OtherSide {
            loadOuts = RequestList.of(loadOuts);
        }
    }
}
