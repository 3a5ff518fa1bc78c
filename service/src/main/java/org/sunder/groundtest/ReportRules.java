package org.sunder.groundtest;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Quantity;
import org.sunder.engine.quantity.Speed;
import org.sunder.problem.Fault;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/**
 * Every rule of a report, one set for all ways in: a test logged, a flight event, an import. A row that is read is held
 * against them too. What the airframe stands is no rule of the log: a firing above it happened all the same.
 */
public final class ReportRules {

    /** Longest notes, in characters. */
    public static final int LONGEST_NOTES = 2000;

    /** How far the clocks of phone and service may disagree. */
    public static final Duration CLOCKS_DISAGREE = Duration.ofMinutes(2);

    private static final BigDecimal LEAST = percent(SpeedReading.LEAST_SD);
    private static final BigDecimal LARGEST = percent(SpeedReading.LARGEST_SD);
    private static final String UNCERTAINTIES = LEAST + " to " + LARGEST;

    private static final OffsetDateTime EARLIEST = OffsetDateTime.parse("1900-01-01T00:00:00Z");
    private static final String CHARGES = "more than 0, up to 50 g";

    /** What was converted to kilograms may lie above the bound by a rounding. */
    private static final double LARGEST_CHARGE = SetupBounds.DOMAIN_CHARGE * (1 + 1e-9);

    private ReportRules() {}

    /**
     * A report that keeps every rule.
     *
     * @param report what was seen
     * @param receivedAt when the service took it in: nothing was fired after that
     * @throws ProblemException naming the field, its value and what is allowed
     */
    public static Report checked(Report report, Instant receivedAt) {
        broken(report, receivedAt).ifPresent(problem -> {
            throw problem;
        });
        return report;
    }

    /** What is wrong with a report that was stored all the same, for people; empty where it keeps every rule. */
    public static Optional<String> finding(Report report, Instant receivedAt) {
        return broken(report, receivedAt).map(ProblemException::getMessage);
    }

    private static Optional<ProblemException> broken(Report report, Instant receivedAt) {
        return time(report.firedAt(), receivedAt)
                .or(() -> charge(report.charge()))
                .or(() -> speed(report))
                .or(() -> uncertainty(report))
                .or(() -> notes(report));
    }

    private static Optional<ProblemException> time(OffsetDateTime firedAt, Instant receivedAt) {
        if (firedAt.isBefore(EARLIEST)) {
            return Optional.of(ProblemException.invalid(
                    "/firedAt",
                    firedAt,
                    "The time of firing, " + firedAt + ", lies too far back; it may be " + EARLIEST
                            + " at the earliest.",
                    "a time since " + EARLIEST));
        }
        if (firedAt.toInstant().isAfter(receivedAt.plus(CLOCKS_DISAGREE))) {
            String detail = "The time of firing, " + firedAt + ", lies in the future; it may be at most now.";
            Fault fault = new Fault("/firedAt", detail, "in-the-future", "a time up to now", firedAt.toString());
            return Optional.of(new ProblemException(ProblemType.TEST_IN_THE_FUTURE, detail, List.of(fault)));
        }
        return Optional.empty();
    }

    private static Optional<ProblemException> charge(Mass charge) {
        if (!(charge.kilograms() > 0)) {
            return Optional.of(charge(charge, "must be more than nothing."));
        }
        return charge.kilograms() > LARGEST_CHARGE
                ? Optional.of(charge(charge, "is outside the model's domain; at most 50 g is allowed."))
                : Optional.empty();
    }

    private static ProblemException charge(Mass charge, String wrong) {
        String detail = "The charge, " + words(charge) + ", " + wrong;
        Fault fault = new Fault("/charge", detail, "out-of-range", CHARGES, words(charge));
        return new ProblemException(ProblemType.UNSOUND_CHARGE, detail, List.of(fault));
    }

    private static Optional<ProblemException> speed(Report report) {
        Speed speed = report.speed();
        if (speed == null) {
            return Optional.empty();
        }
        if (report.outcome() != Outcome.SEPARATED) {
            return Optional.of(ProblemException.invalid(
                    "/speed",
                    speed.value(),
                    "A speed was given, but only a separated test has one.",
                    "no speed, or the outcome separated"));
        }
        return SetupBounds.SPEED_LIMIT.contains(speed.metresPerSecond())
                ? Optional.empty()
                : Optional.of(ProblemException.invalid(
                        "/speed",
                        speed.value(),
                        "The speed, " + words(speed) + ", is out of range; " + SetupBounds.SPEED_LIMIT.text()
                                + " is allowed.",
                        SetupBounds.SPEED_LIMIT.text()));
    }

    private static Optional<ProblemException> uncertainty(Report report) {
        BigDecimal percent = report.speedUncertaintyPercent();
        if (percent == null) {
            return Optional.empty();
        }
        String pointer = "/speedUncertaintyPercent";
        if (report.speed() == null) {
            return Optional.of(ProblemException.invalid(
                    pointer,
                    percent,
                    "The uncertainty of a speed was given, but no speed.",
                    "no uncertainty, or the speed it belongs to"));
        }
        return percent.compareTo(LEAST) >= 0 && percent.compareTo(LARGEST) <= 0
                ? Optional.empty()
                : Optional.of(ProblemException.invalid(
                        pointer,
                        percent,
                        "The uncertainty of the speed, " + percent.toPlainString() + " %, is out of range; "
                                + UNCERTAINTIES + " % is allowed.",
                        UNCERTAINTIES));
    }

    private static Optional<ProblemException> notes(Report report) {
        String notes = report.notes();
        return notes == null || notes.length() <= LONGEST_NOTES
                ? Optional.empty()
                : Optional.of(ProblemException.invalid(
                        "/notes", notes, "at most " + LONGEST_NOTES + " characters", "0 to " + LONGEST_NOTES));
    }

    private static BigDecimal percent(double share) {
        return BigDecimal.valueOf(share).movePointRight(2).setScale(0);
    }

    private static String words(Quantity<?> quantity) {
        return quantity.value().toPlainString() + " " + quantity.unit();
    }
}
