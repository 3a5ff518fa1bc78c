package org.sunder.airframe;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.web.RequestList;

/**
 * What is installed for a flight, as a flyer describes it; read, stored and answered in this form.
 *
 * @param name what it is called
 * @param motorCase the motor case flown
 * @param compartments what is packed, by joint
 * @param note free text
 */
@Schema(name = "LoadOutDescription", description = "What is installed for a flight.")
public record LoadOutSheet(
        @Schema(example = "long case, big main")
        @NotBlank(message = "a name is needed") @Size(max = 80, message = "1 to 80 characters") String name,

        @Schema(
                description = "The motor case flown. Where it reaches into a compartment, its end is an item there.",
                example = "54 mm, long")
        @Size(max = 80, message = "at most 80 characters") @Nullable String motorCase,

        @Schema(description = "What is packed, by joint.")
        @NotEmpty(message = "at least one compartment is needed") @Size(max = 10, message = "1 to 10 compartments") List<@NotNull @Valid CompartmentSheet> compartments,

        @Size(max = 500, message = "at most 500 characters") @Nullable String note) {

    /** Copies the list. */
    public LoadOutSheet {
        compartments = RequestList.of(compartments);
    }

    /** In place of one that cannot be read: nothing is packed, and its note says so. */
    public static LoadOutSheet unreadable(String finding) {
        return new LoadOutSheet("unreadable", null, List.of(), finding);
    }

    /**
     * What is packed in one joint's compartment.
     *
     * @param jointId the joint
     * @param items everything in it but what is pushed in at the joint
     */
    @Schema(name = "PackedCompartment", description = "Everything packed in the compartment of one joint.")
    public record CompartmentSheet(
            @NotNull(message = "the joint is needed") UUID jointId,

            @Schema(
                    description = "Everything in the compartment but the bay or coupler pushed in at the joint, which"
                            + " stays that of the setup. Each is stacked from its place in the order listed.")
            @Size(max = 40, message = "at most 40 items") List<@NotNull @Valid PackedItemSheet> items) {

        /** Copies the list. */
        public CompartmentSheet {
            items = RequestList.of(items);
        }
    }
}
