package org.sunder.airframe;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Force;

/**
 * Equal shear pins.
 *
 * @param thread e.g. M2.5 or #2-56
 * @param count how many
 * @param batch id of a batch of the stock; its pull tests fill in {@code measured} when the setup comes into force
 * @param measured what pull tests of this batch gave; nylon 6/6 on the thread's root area where not given
 */
@Schema(description = "Equal nylon shear pins.")
public record PinSheet(
        @Schema(description = "Thread: #2-56 to 1/4-28, or M2 to M5.", example = "M2.5")
        @NotBlank(message = "a thread is needed") @Size(max = 12, message = "at most 12 characters") String thread,

        @Schema(description = "How many of them.", example = "3")
        @NotNull(message = "a count is needed") @Min(value = 1, message = "1 to 48") @Max(value = 48, message = "1 to 48") Integer count,

        @Schema(
                description =
                        "A pin batch of the stock: its pull tests are taken into measured when the setup comes into"
                                + " force, and stay as they were then.")
        @Nullable UUID batch,

        @Schema(description = "What pull tests of this batch gave; filled in by the service where a batch is named.")
        @Valid @Nullable PullTests measured) {

    /**
     * Pull tests of one pin.
     *
     * @param mean mean breaking force
     * @param standardDeviation sample standard deviation
     * @param tests how many were pulled
     */
    @Schema(description = "Breaking force of single pins of this batch, as pulled.")
    public record PullTests(
            @NotNull(message = "the mean is needed") Force mean,

            @NotNull(message = "the standard deviation is needed") Force standardDeviation,

            @Schema(example = "6")
            @NotNull(message = "the number of tests is needed") @Min(value = 2, message = "2 to 1000") @Max(value = 1000, message = "2 to 1000") Integer tests) {}
}
