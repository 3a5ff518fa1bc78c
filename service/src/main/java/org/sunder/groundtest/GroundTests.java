package org.sunder.groundtest;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.access.CurrentFlyer;
import org.sunder.airframe.Airframes;
import org.sunder.http.Cursor;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** The log. Additions run inside the caller's transaction. */
@Service
public class GroundTests {

    private final GroundTestStore store;
    private final Airframes airframes;
    private final CurrentFlyer flyer;
    private final Clock clock;

    GroundTests(GroundTestStore store, Airframes airframes, CurrentFlyer flyer, Clock clock) {
        this.store = store;
        this.airframes = airframes;
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
     * Adds a test.
     *
     * @throws ProblemException where its report breaks a rule
     */
    public GroundTest add(NewTest test) {
        check(test.report());
        return store.add(flyer.id(), test);
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

    /** Every test of the flyer that keeps the rules, in the order they were fired, voided ones too. */
    public List<GroundTest> all() {
        return withFindings().stream().filter(test -> test.finding() == null).toList();
    }

    /** Every test of the flyer in the order they were fired, voided ones and those that break a rule too. */
    public List<GroundTest> withFindings() {
        return store.all(flyer.id());
    }

    /** Every test of these joints in the order they were fired, voided ones and those that break a rule too. */
    public List<GroundTest> of(Collection<UUID> joints) {
        return store.of(flyer.id(), joints);
    }

    /** Takes a test out of the fit, or back into it. */
    public GroundTest mark(UUID id, boolean voided, String reason) {
        GroundTest test = get(id);
        if (test.voided() == voided) {
            throw new ProblemException(
                    ProblemType.CONFLICT, voided ? "The test is void already." : "The test is not void.");
        }
        store.mark(flyer.id(), id, new VoidMark(voided, reason, clock.instant().truncatedTo(ChronoUnit.MICROS)));
        return get(id);
    }
}
