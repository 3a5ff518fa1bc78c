package org.sunder.groundtest.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Whether every firing is filmed. */
@Schema(name = "Filming", description = "Whether the caller films every firing.")
record FilmingView(
        @Schema(description = "Whether the choice of charges counts on films. Off until switched on.")
        boolean filming,

        @Schema(
                description = "How good the speeds of the films are, one standard deviation in percent; absent where"
                        + " nothing is filmed.",
                example = "5")
        @Nullable BigDecimal uncertaintyPercent) {

    static FilmingView of(Optional<BigDecimal> percent) {
        return new FilmingView(percent.isPresent(), percent.orElse(null));
    }
}
