package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.CavitySheet;
import org.sunder.engine.quantity.Length;
import org.sunder.web.RequestList;

/** A compartment and alternatives of what is packed in it. */
@Schema(name = "FitQuestion", description = "A compartment and alternatives of what is packed in it.")
record FitRequest(
        @Schema(description = "Segments of the compartment, from its closed far end to the joint.")
        @NotEmpty(message = "at least one cavity segment is needed") @Size(max = 20, message = "1 to 20 segments") List<@NotNull @Valid CavitySheet> cavity,

        @Schema(description = "How far a bay or coupler reaches in at the joint; items start behind it.") @Nullable Length pushedIn,

        @NotEmpty(message = "at least one load-out is needed") @Size(max = 20, message = "1 to 20 load-outs") List<@NotNull @Valid Alternative> loadOuts) {

    FitRequest {
        cavity = RequestList.of(cavity);
        loadOuts = RequestList.of(loadOuts);
    }
}
