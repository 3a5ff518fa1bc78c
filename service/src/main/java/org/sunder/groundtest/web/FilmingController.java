package org.sunder.groundtest.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.groundtest.Films;
import org.sunder.persistence.DurableTransactions;
import org.sunder.problem.ProblemException;

/** Whether firings are filmed. */
@RestController
@Tag(name = "Ground tests")
class FilmingController {

    private final Films films;
    private final DurableTransactions transactions;

    FilmingController(Films films, DurableTransactions transactions) {
        this.films = films;
        this.transactions = transactions;
    }

    @GetMapping("/api/filming")
    @Operation(
            operationId = "getFilming",
            summary = "Whether you film your firings",
            description =
                    "Where you do, the choice among the charges that every safeguard allows counts on what the film"
                            + " of a separation is going to tell.")
    FilmingView filming() {
        return FilmingView.of(films.own());
    }

    @PutMapping("/api/filming")
    @Operation(
            operationId = "setFilming",
            summary = "Say that you film your firings, or that you do not",
            description = "It holds for all your rockets, on every phone, from the next answer on. No safeguard asks"
                    + " whether there is a film, and a test without one is taken in as ever.")
    FilmingView film(@RequestBody FilmingRequest body) {
        Integer percent = percent(body);
        return transactions.commit(() -> {
            films.choose(percent);
            return FilmingView.of(films.own());
        });
    }

    private static @Nullable Integer percent(FilmingRequest body) {
        Integer stated = body.uncertaintyPercent();
        if (body.filming()) {
            return stated == null ? Films.USUAL_PERCENT : stated;
        }
        if (stated != null) {
            throw ProblemException.invalid(
                    "uncertaintyPercent", stated, "where nothing is filmed there is no speed", "nothing");
        }
        return null;
    }
}
