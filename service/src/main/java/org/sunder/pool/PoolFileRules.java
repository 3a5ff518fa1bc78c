package org.sunder.pool;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.sunder.engine.learning.model.FlyerPrior;
import org.sunder.engine.learning.model.Priors;
import org.sunder.problem.Fault;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/**
 * What a file must be to be taken in: one that this version can read, undamaged, from enough flyers, and no surer of anything than
 * a pool made here could be. A file that passes may still be invented: that is for whoever takes it in to judge.
 */
final class PoolFileRules {

    private static final int MOST_FLYERS = 1_000_000;

    // What a pool made here can say: means within the reach of the model's nodes, spreads between flyers no smaller
    // than the
    // least that the engine tries, no larger than prior and largest spread together and half as much again.
    private static final Bounds CORRECTION = new Bounds("-1", "1");
    private static final Bounds LOG_SCATTER = new Bounds("-3.91", "-0.69");
    private static final Bounds LOG_BAND = new Bounds("-3.5", "-0.22");
    private static final Bounds CORRECTION_VARIANCE = new Bounds("0.01", "0.25");
    private static final Bounds LOG_VARIANCE = new Bounds("0.0225", "0.6");
    private static final Bounds WEIGHT = new Bounds("0.00001", "1");

    private final List<Fault> faults = new ArrayList<>();

    private PoolFileRules() {}

    private record Bounds(BigDecimal low, BigDecimal high) {

        Bounds(String low, String high) {
            this(new BigDecimal(low), new BigDecimal(high));
        }

        boolean contain(BigDecimal value) {
            return value.compareTo(low) >= 0 && value.compareTo(high) <= 0;
        }
    }

    /**
     * Refuses what cannot be taken in.
     *
     * @throws ProblemException 400 naming everything that is wrong
     */
    static void check(PoolFile file) {
        PoolFileRules rules = new PoolFileRules();
        rules.kind(file);
        if (rules.faults.isEmpty()) {
            rules.counts(file);
            for (int i = 0; i < file.learned().size(); i++) {
                rules.normal(file.learned().get(i), "/learned/" + i);
            }
            rules.weights(file);
            rules.checksum(file);
        }
        if (!rules.faults.isEmpty()) {
            throw new ProblemException(
                    ProblemType.INVALID_INPUT,
                    rules.faults.stream().map(Fault::words).limit(3).collect(Collectors.joining("; "))
                            + ". Nothing was taken in.",
                    rules.faults);
        }
    }

    private void kind(PoolFile file) {
        require(
                file.schema().equals(PoolFile.SCHEMA),
                "/schema",
                file.schema(),
                "this is another kind of document",
                PoolFile.SCHEMA);
        require(
                file.version() == PoolFile.VERSION,
                "/version",
                file.version(),
                "this version of the document is not known here",
                String.valueOf(PoolFile.VERSION));
        require(
                file.model().equals(Priors.MODEL),
                "/model",
                file.model(),
                "it was learned with another version of the model, whose numbers mean something else",
                Priors.MODEL);
    }

    private void counts(PoolFile file) {
        require(isDate(file.date()), "/date", file.date(), "this is no date", "a day such as 2026-11-27");
        require(
                file.flyers() >= PoolFile.FEWEST_FLYERS && file.flyers() <= MOST_FLYERS,
                "/flyers",
                file.flyers(),
                "a pool speaks from five flyers or more",
                PoolFile.FEWEST_FLYERS + " to " + MOST_FLYERS);
        require(
                file.tests() >= (long) PoolFile.FEWEST_TESTS * file.flyers(),
                "/tests",
                file.tests(),
                "each flyer has three counted tests or more",
                "at least three times the number of flyers");
    }

    private void normal(PoolNormal normal, String at) {
        within(WEIGHT, normal.weight(), at + "/weight");
        within(CORRECTION, normal.logCorrection(), at + "/logCorrection");
        within(LOG_SCATTER, normal.logScatter(), at + "/logScatter");
        within(LOG_BAND, normal.logBand(), at + "/logBand");
        PoolNormal.Covariance covariance = normal.covariance();
        within(CORRECTION_VARIANCE, covariance.correction(), at + "/covariance/correction");
        within(LOG_VARIANCE, covariance.scatter(), at + "/covariance/scatter");
        within(LOG_VARIANCE, covariance.band(), at + "/covariance/band");
        if (faults.isEmpty()) {
            require(
                    isCovariance(normal),
                    at + "/covariance",
                    covariance,
                    "no quantities can vary together like this",
                    "a positive definite covariance");
        }
    }

    private static boolean isCovariance(PoolNormal normal) {
        try {
            normal.part();
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private void weights(PoolFile file) {
        BigDecimal sum = file.learned().stream().map(PoolNormal::weight).reduce(BigDecimal.ZERO, BigDecimal::add);
        require(
                sum.compareTo(BigDecimal.ONE) == 0,
                "/learned",
                sum,
                "the weights do not add to 1",
                "weights that add to 1");
    }

    private void checksum(PoolFile file) {
        if (faults.isEmpty()) {
            require(
                    file.checksum().equals(file.rightChecksum()),
                    "/checksum",
                    file.checksum(),
                    "the file is damaged: its checksum belongs to other content",
                    "the file as it was given");
        }
    }

    private void within(Bounds bounds, BigDecimal value, String pointer) {
        require(
                bounds.contain(value),
                pointer,
                value,
                "no pool says so",
                bounds.low().toPlainString() + " to " + bounds.high().toPlainString());
    }

    private void require(boolean holds, String pointer, Object value, String detail, String allowed) {
        if (!holds) {
            faults.add(new Fault(pointer, detail, "not-allowed", allowed, String.valueOf(value)));
        }
    }

    private static boolean isDate(String text) {
        try {
            return LocalDate.parse(text).toString().equals(text);
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    /** The prior of what a file says, with the tenth of what would be believed without it. */
    static FlyerPrior prior(List<PoolNormal> learned) {
        return FlyerPrior.of(PoolFile.parts(learned), Priors.standard());
    }
}
