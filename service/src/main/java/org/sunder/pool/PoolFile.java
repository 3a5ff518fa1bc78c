package org.sunder.pool;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.sunder.engine.learning.model.FlyerPrior;
import org.sunder.engine.learning.model.Priors;
import org.sunder.persistence.Digests;

/** A snapshot as a document: what several flyers' rockets teach of another flyer's, with no name, id or time of a test in it. */
@Schema(
        name = "PoolFile",
        description =
                "What several flyers' rockets teach of another flyer's: a mixture of normals of the flyer's mean log"
                        + " correction, log scatter and log band. It holds no name, no id and no time of a test.")
public record PoolFile(
        @Schema(description = "What kind of document this is.", example = SCHEMA)
        @NotNull(message = "the schema is needed") String schema,

        @Schema(description = "Version of the schema.", example = "1") @NotNull(message = "the version is needed") Integer version,

        @Schema(description = "Version of the model that it was learned with.", example = "1.0")
        @NotNull(message = "the model is needed") String model,

        @Schema(description = "The day on which it was made, in UTC.", example = "2026-11-27")
        @NotNull(message = "the date is needed") String date,

        @Schema(description = "How many flyers it was learned from, at least 5.", example = "12")
        @NotNull(message = "the number of flyers is needed") Integer flyers,

        @Schema(description = "How many counted tests it was learned from.", example = "164")
        @NotNull(message = "the number of tests is needed") Integer tests,

        @NotNull(message = "what was learned is needed") @Size(min = 1, max = MOST, message = "1 to 20 normals") List<@Valid @NotNull(message = "a normal is needed") PoolNormal> learned,

        @Schema(
                description =
                        "SHA-256, in hexadecimal, of all values above in their order, a line feed after each,"
                                + " numbers in plain decimals without trailing zeros. It tells a damaged file, not a forged one.",
                example = "60f5…")
        @NotNull(message = "the checksum is needed") String checksum) {

    /** The kind of document. */
    public static final String SCHEMA = "sunder-pool";

    /** The version of the schema that is written and read. */
    public static final int VERSION = 1;

    /** Fewest flyers that a pool speaks from. */
    public static final int FEWEST_FLYERS = 5;

    /** Fewest counted tests of each of them. */
    public static final int FEWEST_TESTS = 3;

    private static final int MOST = 20;

    public PoolFile {
        learned = learned == null ? List.of() : Collections.unmodifiableList(new ArrayList<>(learned));
    }

    /**
     * A file of what was learned.
     *
     * @param date the day, as ISO 8601 writes it
     * @param flyers from how many flyers
     * @param tests from how many counted tests
     * @param parts normals whose weights add to 1
     */
    static PoolFile of(String date, int flyers, int tests, List<FlyerPrior.Part> parts) {
        List<PoolNormal> learned = kept(parts);
        return new PoolFile(
                SCHEMA,
                VERSION,
                Priors.MODEL,
                date,
                flyers,
                tests,
                learned,
                checksum(SCHEMA, VERSION, Priors.MODEL, date, flyers, tests, learned));
    }

    /** Normals as they are kept: rounded, those of no weight left out, the first of the heaviest taking what rounding left. */
    static List<PoolNormal> kept(List<FlyerPrior.Part> parts) {
        List<BigDecimal> weights = new ArrayList<>(
                parts.stream().map(part -> PoolNormal.rounded(part.weight())).toList());
        BigDecimal heaviest = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::max);
        BigDecimal sum = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        int first = weights.indexOf(heaviest);
        weights.set(first, heaviest.add(BigDecimal.ONE.subtract(sum)));
        List<PoolNormal> kept = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (weights.get(i).signum() > 0) {
                kept.add(PoolNormal.of(parts.get(i), weights.get(i)));
            }
        }
        return kept;
    }

    /** The normals that the engine computes with. */
    static List<FlyerPrior.Part> parts(List<PoolNormal> learned) {
        return learned.stream().map(PoolNormal::part).toList();
    }

    /** What the checksum must be for what the file says. */
    String rightChecksum() {
        return checksum(schema, version, model, date, flyers, tests, learned);
    }

    private static String checksum(
            String schema, int version, String model, String date, int flyers, int tests, List<PoolNormal> learned) {
        String text = Stream.concat(
                        Stream.of(
                                schema,
                                String.valueOf(version),
                                model,
                                date,
                                String.valueOf(flyers),
                                String.valueOf(tests)),
                        learned.stream().flatMap(PoolNormal::numbers).map(BigDecimal::toPlainString))
                .map(value -> value + "\n")
                .collect(Collectors.joining());
        return Digests.sha256(text);
    }
}
