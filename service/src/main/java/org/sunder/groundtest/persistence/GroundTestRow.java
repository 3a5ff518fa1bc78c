package org.sunder.groundtest.persistence;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.CorrectionFactor;
import org.sunder.engine.learning.Outcome;
import org.sunder.engine.learning.OutcomeProbabilities;
import org.sunder.engine.physics.Containment;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.SpeedUnit;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.Report;
import org.sunder.groundtest.VoidMark;
import org.sunder.http.FlyerRow;
import org.sunder.http.QuantityColumns;

/** Row of a ground test. */
@Entity
@Immutable
@Table(name = "ground_test")
class GroundTestRow extends FlyerRow {

    @Enumerated(EnumType.STRING)
    @Column(columnDefinition = "varchar(10)")
    Occasion occasion;

    UUID jointId;
    UUID setupId;
    int setupRevision;
    String chargeValue;
    String chargeUnit;

    @Enumerated(EnumType.STRING)
    @Column(columnDefinition = "varchar(12)")
    Outcome outcome;

    boolean damaged;

    @Nullable String speedValue;

    @Nullable String speedUnit;

    @Enumerated(EnumType.STRING)
    @Column(columnDefinition = "varchar(12)")
    @Nullable Containment containment;

    @Nullable String notes;

    Instant firedAt;
    int firedOffsetSeconds;
    Instant receivedAt;
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
        this.occasion = test.occasion();
        this.jointId = test.jointId();
        this.setupId = test.setupId();
        this.setupRevision = test.setupRevision();
        this.receivedAt = test.receivedAt();
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
        outcome = report.outcome();
        damaged = report.damaged();
        speedValue = QuantityColumns.digits(report.speed());
        speedUnit = QuantityColumns.unit(report.speed());
        containment = report.containment();
        notes = report.notes();
        firedAt = report.firedAt().toInstant();
        firedOffsetSeconds = report.firedAt().getOffset().getTotalSeconds();
    }

    GroundTest test(List<VoidMark> marks) {
        Mass charge = QuantityColumns.read(chargeValue, chargeUnit, MassUnit.class, Mass::new);
        Report report = new Report(
                charge,
                outcome,
                damaged,
                speed(),
                containment,
                firedAt.atOffset(ZoneOffset.ofTotalSeconds(firedOffsetSeconds)),
                notes);
        return new GroundTest(
                getId(),
                occasion,
                jointId,
                setupId,
                setupRevision,
                report,
                receivedAt,
                new OutcomeProbabilities(predictedNone, predictedPartial, predictedSeparated),
                new CorrectionFactor(factorMedian, factorLow, factorHigh),
                marks);
    }

    private @Nullable Speed speed() {
        return speedValue == null || speedUnit == null
                ? null
                : QuantityColumns.read(speedValue, speedUnit, SpeedUnit.class, Speed::new);
    }
}
