package org.sunder.groundtest;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.access.CurrentFlyer;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Setup;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.engine.learning.posterior.OutcomeProbabilities;
import org.sunder.persistence.FleetVersions;
import org.sunder.persistence.RowIds;
import org.sunder.persistence.StaleFleetException;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;
import org.sunder.web.Cursor;

/** The log. Additions run inside the caller's transaction. */
@Service
public class GroundTests {

    private final GroundTestStore store;
    private final Airframes airframes;
    private final FleetVersions versions;
    private final CurrentFlyer flyer;
    private final Clock clock;

    GroundTests(GroundTestStore store, Airframes airframes, FleetVersions versions, CurrentFlyer flyer, Clock clock) {
        this.store = store;
        this.airframes = airframes;
        this.versions = versions;
        this.flyer = flyer;
        this.clock = clock;
    }

    /**
     * Refuses, by throwing, a report that breaks a rule.
     *
     * @throws ProblemException naming the field, its value and what is allowed
     */
    public void check(Report report) {
        ReportRules.checked(report, clock.instant());
    }

    /**
     * A test as it will stand in the log, not yet stored: with an id, the time of now, and what is kept of a report, times to
     * the microsecond.
     */
    public GroundTest draft(
            Occasion occasion,
            Setup setup,
            Report report,
            List<Beyond> beyond,
            OutcomeProbabilities forecast,
            CorrectionFactor correctionAfter) {
        return new GroundTest(
                RowIds.next(),
                occasion,
                setup.jointId(),
                setup.id(),
                setup.revision(),
                report.kept(),
                now(),
                flyer.keyName(),
                beyond,
                forecast,
                correctionAfter,
                List.of(),
                null);
    }

    /**
     * Adds a drafted test, inside the caller's transaction.
     *
     * @param version version of the fleet that its draft rests on
     * @throws StaleFleetException where that version stands no more
     */
    public void add(GroundTest test, long version) {
        versions.advanceFrom(flyer.id(), version);
        store.add(flyer.id(), test);
    }

    /** The test. */
    public GroundTest get(UUID id) {
        return store.find(flyer.id(), id).orElseThrow(() -> ProblemException.notFound("ground test", id));
    }

    /** A page of a joint's firings on one occasion, newest first, with one to spare. */
    @Transactional(readOnly = true)
    public List<GroundTest> page(UUID jointId, Occasion occasion, Cursor cursor, int limit) {
        airframes.getJoint(jointId);
        return store.page(flyer.id(), jointId, occasion, cursor, limit + 1);
    }

    /** Every test of the flyer in the order they were fired, voided ones and those that break a rule too. */
    public List<GroundTest> all() {
        return store.all(flyer.id());
    }

    /** Every test of these joints in the order they were fired, voided ones and those that break a rule too. */
    public List<GroundTest> of(Collection<UUID> joints) {
        return store.of(flyer.id(), joints);
    }

    /**
     * A test taken out of the fit, or back into it, not yet stored.
     *
     * @throws ProblemException 409 where it is so already
     */
    public GroundTest marked(GroundTest test, boolean voided, String reason) {
        if (test.voided() == voided) {
            throw new ProblemException(
                    ProblemType.CONFLICT, voided ? "The test is void already." : "The test is not void.");
        }
        return test.with(new VoidMark(voided, reason, now()));
    }

    /** Stores the newest mark of a test, inside the caller's transaction; otherwise as {@link #add}. */
    public void mark(GroundTest marked, long version) {
        versions.advanceFrom(flyer.id(), version);
        store.mark(flyer.id(), marked);
    }

    /** Microseconds: what both databases keep. */
    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
