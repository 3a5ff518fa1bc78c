package org.sunder.groundtest;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.engine.learning.posterior.OutcomeProbabilities;

/**
 * One firing, on the ground or in flight, as it stands in the log. Never changed; at most voided.
 *
 * @param id UUID version 7
 * @param occasion on the ground or in flight
 * @param jointId the joint fired
 * @param setupId the immutable setup it was fired in
 * @param setupRevision that setup's revision
 * @param report what was seen
 * @param receivedAt when the service took it in
 * @param loggedBy what the key was called that logged it, as it was called then; null where there were no keys
 * @param beyond limits that the charge lay above
 * @param forecast what the model said before
 * @param correctionAfter the joint's correction with this test in the fit, as it stood then
 * @param marks voids and their lifting, oldest first
 * @param finding what is wrong with the row as stored, for people; null where it keeps the rules
 */
public record GroundTest(
        UUID id,
        Occasion occasion,
        UUID jointId,
        UUID setupId,
        int setupRevision,
        Report report,
        Instant receivedAt,
        @Nullable String loggedBy,
        List<Beyond> beyond,
        OutcomeProbabilities forecast,
        CorrectionFactor correctionAfter,
        List<VoidMark> marks,
        @Nullable String finding) {

    public GroundTest {
        beyond = List.copyOf(beyond);
        marks = List.copyOf(marks);
    }

    /** Whether the test is in the fit: neither void nor against the rules. */
    public boolean counted() {
        return finding == null && !voided();
    }

    /** Whether it was taken out of the fit. */
    public boolean voided() {
        return !marks.isEmpty() && marks.get(marks.size() - 1).voided();
    }

    /** This test with one more mark. */
    public GroundTest with(VoidMark mark) {
        List<VoidMark> more = new ArrayList<>(marks);
        more.add(mark);
        return new GroundTest(
                id,
                occasion,
                jointId,
                setupId,
                setupRevision,
                report,
                receivedAt,
                loggedBy,
                beyond,
                forecast,
                correctionAfter,
                more,
                finding);
    }
}
