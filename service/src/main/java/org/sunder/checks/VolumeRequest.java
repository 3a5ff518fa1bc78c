package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.sunder.airframe.CavitySheet;
import org.sunder.airframe.ContentSheet;
import org.sunder.web.RequestList;

/** A compartment and what is in it. */
@Schema(name = "VolumeQuestion", description = "A compartment and what is in it.")
record VolumeRequest(
        @Schema(description = "Segments of the compartment, from its closed far end to the joint.")
        @NotEmpty(message = "at least one cavity segment is needed") @Size(max = 20, message = "1 to 20 segments") List<@NotNull @Valid CavitySheet> cavity,

        @Schema(description = "What is in the compartment.") @Size(max = 50, message = "at most 50 items") List<@NotNull @Valid ContentSheet> contents) {

    VolumeRequest {
        cavity = RequestList.of(cavity);
        contents = RequestList.of(contents);
    }
}
