package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.Hidden;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.advice.Advising;

/** The ladder for the field: JSON, a card to print, a picture. */
@RestController
@Tag(name = "Advice")
class LadderController {

    private static final String SVG = "image/svg+xml";
    private static final String RANGE = "1 to 4";

    private final Advising advising;
    private final LadderCard card;

    LadderController(Advising advising, LadderCard card) {
        this.advising = advising;
        this.card = card;
    }

    @GetMapping(path = "/api/joints/{id}/ladder", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "getLadder",
            summary = "The planned tests as a tree",
            description = "After each outcome the next charge, or the flight charge; chances of being done, and what to"
                    + " pack. Accept text/html gives a card to print on one page, image/svg+xml the picture.")
    LadderView ladder(
            @PathVariable UUID id,
            @Parameter(description = "Firings to look ahead.", example = "3")
                    @RequestParam(defaultValue = "3")
                    @Min(value = 1, message = RANGE) @Max(value = 4, message = RANGE) int depth) {
        return LadderViews.of(advising.ladder(id, depth));
    }

    @Hidden
    @GetMapping(path = "/api/joints/{id}/ladder", produces = SVG)
    String picture(
            @PathVariable UUID id,
            @RequestParam(defaultValue = "3") @Min(value = 1, message = RANGE) @Max(value = 4, message = RANGE) int depth) {
        return LadderPicture.of(ladder(id, depth)).replace("<svg ", "<svg color=\"#111\" ");
    }

    @Hidden
    @GetMapping(path = "/api/joints/{id}/ladder", produces = MediaType.TEXT_HTML_VALUE)
    String card(
            @PathVariable UUID id,
            @RequestParam(defaultValue = "3") @Min(value = 1, message = RANGE) @Max(value = 4, message = RANGE) int depth) {
        return card.of(id, depth);
    }
}
