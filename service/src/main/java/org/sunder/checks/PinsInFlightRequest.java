package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.SetupSheet;

/** Whether the pins of a setup hold in flight. */
@Schema(name = "PinsInFlightQuestion", description = "A setup and the flight its pins must hold in.")
record PinsInFlightRequest(
        @NotNull(message = "the setup is needed") @Valid SetupSheet setup,

        @NotNull(message = "the flight is needed") @Valid FlightSheet flight,

        @Schema(description = "Holding force over the largest load; 2 where not given.", example = "2")
        @DecimalMin(value = "1", message = "1 to 10") @DecimalMax(value = "10", message = "1 to 10") @Nullable BigDecimal margin) {}
