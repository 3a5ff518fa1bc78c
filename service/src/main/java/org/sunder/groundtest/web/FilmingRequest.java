package org.sunder.groundtest.web;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;

/** Whether every firing is filmed. */
@Schema(name = "FilmingChoice", description = "Whether every firing is filmed.")
record FilmingRequest(
        @NotNull(message = "true or false is needed") Boolean filming,

        @Schema(
                description = "How good the speeds of the films are, one standard deviation in percent; 5 where left"
                        + " out. Nothing where nothing is filmed.",
                example = "5")
        @Min(value = 3, message = "3 to 50") @Max(value = 50, message = "3 to 50") @Nullable Integer uncertaintyPercent) {}
