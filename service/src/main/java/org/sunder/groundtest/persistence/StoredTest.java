package org.sunder.groundtest.persistence;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.engine.learning.posterior.OutcomeProbabilities;
import org.sunder.engine.physics.packing.Containment;
import org.sunder.engine.quantity.Decimals;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.SpeedUnit;
import org.sunder.groundtest.Beyond;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.Report;
import org.sunder.groundtest.ReportRules;
import org.sunder.groundtest.VoidMark;
import org.sunder.persistence.QuantityColumns;

/** Reads a row that may break any rule: what cannot be read is found, and nothing stands in its place. */
final class StoredTest {

    private static final Mass NOTHING = new Mass(BigDecimal.ZERO, MassUnit.GRAM);

    private final GroundTestRow row;
    private @Nullable String finding;

    StoredTest(GroundTestRow row) {
        this.row = row;
    }

    GroundTest test(List<VoidMark> marks) {
        Occasion occasion = word("occasion", Occasion.class, row.occasion).orElse(Occasion.GROUND);
        Report report = report();
        OutcomeProbabilities forecast = forecast();
        CorrectionFactor after = correction();
        if (finding == null) {
            finding = ReportRules.finding(report, row.receivedAt).orElse(null);
        }
        return new GroundTest(
                row.getId(),
                occasion,
                row.jointId,
                row.setupId,
                row.setupRevision,
                report,
                row.receivedAt,
                row.loggedBy,
                Beyond.read(row.beyond),
                forecast,
                after,
                marks,
                finding);
    }

    private Report report() {
        return new Report(
                QuantityColumns.find(row.chargeValue, row.chargeUnit, MassUnit.class, Mass::new)
                        .orElseGet(() -> unreadable("charge", row.chargeValue + " " + row.chargeUnit, NOTHING)),
                word("outcome", Outcome.class, row.outcome).orElse(Outcome.NONE),
                row.damaged,
                speed(),
                uncertainty(),
                row.containment == null
                        ? null
                        : word("containment", Containment.class, row.containment)
                                .orElse(null),
                firedAt(),
                row.notes);
    }

    private @Nullable Speed speed() {
        Optional<Speed> speed = QuantityColumns.find(row.speedValue, row.speedUnit, SpeedUnit.class, Speed::new);
        if (speed.isEmpty() && (row.speedValue != null || row.speedUnit != null)) {
            find("speed", row.speedValue + " " + row.speedUnit);
        }
        return speed.orElse(null);
    }

    private @Nullable BigDecimal uncertainty() {
        String stored = row.speedUncertaintyPercent;
        Optional<BigDecimal> percent = stored == null ? Optional.empty() : Decimals.find(stored);
        if (percent.isEmpty() && stored != null) {
            find("uncertainty of the speed", stored);
        }
        return percent.orElse(null);
    }

    private OffsetDateTime firedAt() {
        int widest = ZoneOffset.MAX.getTotalSeconds();
        if (Math.abs((long) row.firedOffsetSeconds) > widest) {
            find("offset of its time", row.firedOffsetSeconds + " s");
            return row.firedAt.atOffset(ZoneOffset.UTC);
        }
        return row.firedAt.atOffset(ZoneOffset.ofTotalSeconds(row.firedOffsetSeconds));
    }

    private OutcomeProbabilities forecast() {
        boolean sound = chance(row.predictedNone) && chance(row.predictedPartial) && chance(row.predictedSeparated);
        if (!sound) {
            find("chances foretold", row.predictedNone + ", " + row.predictedPartial + ", " + row.predictedSeparated);
            return new OutcomeProbabilities(0, 0, 0);
        }
        return new OutcomeProbabilities(row.predictedNone, row.predictedPartial, row.predictedSeparated);
    }

    private CorrectionFactor correction() {
        if (!(factor(row.factorLow) && factor(row.factorMedian) && factor(row.factorHigh))) {
            find("correction after it", row.factorLow + ", " + row.factorMedian + ", " + row.factorHigh);
            return new CorrectionFactor(1, 1, 1);
        }
        return new CorrectionFactor(row.factorMedian, row.factorLow, row.factorHigh);
    }

    private static boolean chance(double value) {
        return value >= 0 && value <= 1;
    }

    private static boolean factor(double value) {
        return value > 0 && Double.isFinite(value);
    }

    private <T extends Enum<T>> Optional<T> word(String what, Class<T> words, String stored) {
        Optional<T> known = Arrays.stream(words.getEnumConstants())
                .filter(constant -> constant.name().equals(stored))
                .findFirst();
        if (known.isEmpty()) {
            find(what, stored);
        }
        return known;
    }

    private <T> T unreadable(String what, String stored, T instead) {
        find(what, stored);
        return instead;
    }

    private void find(String what, String stored) {
        if (finding == null) {
            finding = "The " + what + " of this test cannot be read: " + stored + " is stored.";
        }
    }
}
