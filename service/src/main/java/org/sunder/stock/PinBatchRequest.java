package org.sunder.stock;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.retention.PinThread;

/** What a flyer says about a batch of pins. */
@Schema(description = "What a flyer says about a batch of shear pins.")
public record PinBatchRequest(
        @Schema(example = "white nylon, bag of 100")
        @NotBlank(message = "a name is needed") @Size(max = 80, message = "1 to 80 characters") String name,

        @NotNull(message = "the thread is needed") PinThread thread,

        @Schema(description = "The maker's lot.") @Size(max = 80, message = "at most 80 characters") @Nullable String lot,

        @Size(max = 500, message = "at most 500 characters") @Nullable String note) {

    /** What it says, with what it leaves out filled in. */
    public PinBatchDetails details() {
        return new PinBatchDetails(name, thread, lot, note);
    }
}
