package org.sunder.groundtest.persistence;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.sunder.groundtest.Beyond;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.Report;
import org.sunder.groundtest.VoidMark;
import org.sunder.persistence.FlyerRow;
import org.sunder.persistence.QuantityColumns;

/** Row of a ground test. */
@Entity
@Immutable
@Table(name = "ground_test")
class GroundTestRow extends FlyerRow {

    // Words and not enums: one that no version knows must not keep the rest of the log from being read.
    String occasion;

    UUID jointId;
    UUID setupId;
    int setupRevision;
    String chargeValue;
    String chargeUnit;

    String outcome;

    boolean damaged;

    @Nullable String speedValue;

    @Nullable String speedUnit;

    @Nullable String speedUncertaintyPercent;

    @Nullable String containment;

    @Nullable String notes;

    Instant firedAt;
    int firedOffsetSeconds;
    Instant receivedAt;

    @Nullable String loggedBy;

    @Nullable String beyond;

    double predictedSeparated;
    double predictedPartial;
    double predictedNone;
    double factorMedian;
    double factorLow;
    double factorHigh;

    @SuppressWarnings("NullAway.Init")
    protected GroundTestRow() {}

    @SuppressWarnings("NullAway.Init")
    GroundTestRow(UUID flyerId, GroundTest test) {
        super(test.id(), flyerId);
        this.occasion = test.occasion().name();
        this.jointId = test.jointId();
        this.setupId = test.setupId();
        this.setupRevision = test.setupRevision();
        this.receivedAt = test.receivedAt();
        this.loggedBy = test.loggedBy();
        this.beyond = Beyond.stored(test.beyond());
        this.predictedSeparated = test.forecast().separated();
        this.predictedPartial = test.forecast().partial();
        this.predictedNone = test.forecast().none();
        this.factorMedian = test.correctionAfter().median();
        this.factorLow = test.correctionAfter().low();
        this.factorHigh = test.correctionAfter().high();
        describe(test.report());
    }

    private void describe(Report report) {
        chargeValue = report.charge().value().toPlainString();
        chargeUnit = report.charge().unit().symbol();
        outcome = report.outcome().name();
        damaged = report.damaged();
        speedValue = QuantityColumns.digits(report.speed());
        speedUnit = QuantityColumns.unit(report.speed());
        BigDecimal percent = report.speedUncertaintyPercent();
        speedUncertaintyPercent = percent == null ? null : percent.toPlainString();
        containment = report.containment() == null ? null : report.containment().name();
        notes = report.notes();
        firedAt = report.firedAt().toInstant();
        firedOffsetSeconds = report.firedAt().getOffset().getTotalSeconds();
    }

    GroundTest test(List<VoidMark> marks) {
        return new StoredTest(this).test(marks);
    }
}
