package org.sunder.page;

import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.sunder.stock.PinBatch;
import org.sunder.stock.PullTest;
import org.sunder.web.EntityTags;

/**
 * A batch of pins, in words.
 *
 * @param strength what its pulls say of one pin
 * @param finding what to mind of its pulls
 * @param pulls each pull, oldest first
 * @param tag its version, as a change of it names it
 * @param units system of units that its pulls were measured in
 */
record BatchSheet(
        UUID id,
        String name,
        String thread,
        @Nullable String lot,
        String strength,
        @Nullable String finding,
        List<Pull> pulls,
        String tag,
        String units,
        boolean archived) {

    /**
     * One pull.
     *
     * @param number from 1
     * @param leftOut whether it stays but does not count
     * @param far whether it lies far from the others
     */
    record Pull(int number, String force, boolean leftOut, boolean far) {}

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
                pulls(batch),
                EntityTags.of(batch.version()),
                pounds ? "us" : "metric",
                batch.archivedAt() != null);
    }

    private static List<Pull> pulls(PinBatch batch) {
        return IntStream.rangeClosed(1, batch.pulls().size())
                .mapToObj(number -> {
                    PullTest pull = batch.pulls().get(number - 1);
                    boolean far = batch.far().orElse(0) == number;
                    return new Pull(number, Words.of(pull.force()), pull.leftOut(), far);
                })
                .toList();
    }

    private static String strength(PinBatch batch) {
        int pulled = batch.counted().size();
        int out = batch.pulls().size() - pulled;
        return batch.strength()
                .map(found -> Words.digits(found.mean().value().doubleValue()) + " ± "
                        + Words.digits(found.standardDeviation().value().doubleValue()) + " "
                        + found.mean().unit() + ", from " + pulled
                        + " pulled pins" + (out == 0 ? "." : ", " + out + " left out."))
                .orElse(
                        pulled == 0
                                ? "No pin pulled yet; two make a strength."
                                : "One pin pulled; two make a strength.");
    }
}
