package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.sunder.caution.CautionView;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.Occasion;
import org.sunder.picture.ChargeRuler;

/** The charge ruler as values. */
@Schema(name = "ChargeRuler", description = "One scale of charges with all that is known of a joint, as values.")
record ChargeRulerView(
        @Schema(description = "Airframe and joint.", example = "Bittern, nose to bay")
        String subject,

        @Schema(description = "Every firing in the order fired, void ones too.")
        List<FiringView> firings,

        @Schema(description = "Where this joint is likely to part. These are estimates, not charges to fire or fly.")
        BandView likely,

        @Schema(description = "What to fire next; left out where nothing is to be fired.") @Nullable Mass nextCharge,

        @Schema(description = "What to fly; left out until testing is done.") @Nullable Mass flightCharge,

        @Schema(description = "The second charge of a flight; left out until testing is done.") @Nullable Mass backupCharge,

        @Schema(description = "What the textbook formula asks for.")
        Mass handbookCharge,

        @Schema(description = "The charge that must never be exceeded.")
        Mass ceiling,

        @Schema(description = "Step of charges.") Mass measure,
        List<CautionView> cautions) {

    /** A firing. */
    @Schema(name = "RulerFiring", description = "A firing on the ruler.")
    record FiringView(
            Occasion occasion,

            @Schema(description = "As loaded.") Mass charge,

            @Schema(
                    description = "The charge that would have done the same in the setup in force; differs from charge"
                            + " where the setup has changed since.")
            Mass comparable,

            Outcome outcome,

            @Schema(description = "Whether it is void.", example = "false")
            boolean voided,

            @Schema(
                    description = "Whether it was fired in a setup that differs from the one in force.",
                    example = "false")
            boolean earlierSetup) {}

    /** Between which charges the chance of separating rises. */
    @Schema(name = "RulerBand", description = "Between which charges the chance of separating rises from 5 to 95 %.")
    record BandView(
            @Schema(description = "Separates in 5 of 100.") Mass low,

            @Schema(description = "As likely as not.") Mass middle,

            @Schema(description = "Separates in 95 of 100.") Mass high) {}

    static ChargeRulerView of(ChargeRuler ruler) {
        ChargeRuler.Band likely = Objects.requireNonNull(ruler.likely());
        return new ChargeRulerView(
                ruler.subject(),
                ruler.firings().stream().map(ChargeRulerView::firing).toList(),
                new BandView(likely.low(), likely.middle(), likely.high()),
                ruler.next(),
                ruler.flight(),
                ruler.backup(),
                ruler.handbook(),
                ruler.ceiling(),
                ruler.measure(),
                CautionView.all());
    }

    private static FiringView firing(ChargeRuler.Firing firing) {
        return new FiringView(
                firing.mark().flight() ? Occasion.FLIGHT : Occasion.GROUND,
                firing.loaded(),
                firing.charge(),
                firing.mark().outcome(),
                firing.mark().voided(),
                firing.mark().earlierSetup());
    }
}
