package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.TreeMap;
import org.sunder.advice.ReasonWords;
import org.sunder.airframe.Display;
import org.sunder.engine.planning.Reason;
import org.sunder.engine.quantity.Mass;

/** Why a step of a plan is what it is. */
@Schema(name = "Reason", description = "Why a step of a plan is what it is: a code, words, and the numbers in them.")
record ReasonView(
        @Schema(description = "Which reason.", example = "confirm")
        Reason.Code code,

        @Schema(
                description = "One or two sentences with their numbers; a few words on a branch of a ladder.",
                example = "0.85 g did nothing, so more: 1.05 g separates it with a chance of 58 %.")
        String text,

        @Schema(description = "The numbers behind it.") Values values) {

    /** The numbers of a reason by name. */
    @Schema(name = "ReasonValues", description = "Charges, and chances, factors and counts, by name.")
    record Values(
            @Schema(description = "Charges by name.") Map<String, Mass> charges,

            @Schema(description = "Chances, factors and counts by name.")
            Map<String, BigDecimal> numbers) {}

    private static final MathContext DIGITS = new MathContext(4);

    static ReasonView of(Reason reason, Mass measure) {
        return of(reason, ReasonWords.of(reason, measure), measure);
    }

    static ReasonView inShort(Reason reason, Mass measure) {
        return of(reason, ReasonWords.inShort(reason.code()), measure);
    }

    private static ReasonView of(Reason reason, String text, Mass measure) {
        Map<String, Mass> charges = new TreeMap<>();
        reason.charges().forEach((name, kilograms) -> charges.put(name, Display.charge(kilograms, measure)));
        Map<String, BigDecimal> numbers = new TreeMap<>();
        reason.numbers()
                .forEach((name, value) ->
                        numbers.put(name, BigDecimal.valueOf(value).round(DIGITS)));
        return new ReasonView(reason.code(), text, new Values(charges, numbers));
    }
}
