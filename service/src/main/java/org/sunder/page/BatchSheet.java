package org.sunder.page;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.stock.PinBatch;

/**
 * A batch of pins, in words.
 *
 * @param strength what its pulls say of one pin
 * @param finding what to mind of its pulls
 * @param pulls each pull, oldest first
 * @param units system of units that its pulls were measured in
 */
record BatchSheet(
        UUID id,
        String name,
        String thread,
        @Nullable String lot,
        String strength,
        @Nullable String finding,
        List<String> pulls,
        String units,
        boolean archived) {

    static BatchSheet of(PinBatch batch) {
        boolean pounds = batch.pulls().stream()
                .anyMatch(pull -> pull.force().unit().toString().equals("lbf"));
        return new BatchSheet(
                batch.id(),
                batch.details().name(),
                batch.details().thread().toString(),
                batch.details().lot(),
                strength(batch),
                batch.finding().orElse(null),
                batch.pulls().stream().map(pull -> Words.of(pull.force())).toList(),
                pounds ? "us" : "metric",
                batch.archivedAt() != null);
    }

    private static String strength(PinBatch batch) {
        int pulled = batch.pulls().size();
        return batch.strength()
                .map(found -> Words.digits(found.mean().value().doubleValue()) + " ± "
                        + Words.digits(found.standardDeviation().value().doubleValue()) + " "
                        + found.mean().unit() + ", from " + pulled
                        + " pulled pins.")
                .orElse(
                        pulled == 0
                                ? "No pin pulled yet; two make a strength."
                                : "One pin pulled; two make a strength.");
    }
}
