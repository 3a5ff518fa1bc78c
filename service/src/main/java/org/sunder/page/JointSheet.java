package org.sunder.page;

import java.util.List;
import java.util.UUID;
import org.sunder.advice.Standing;
import org.sunder.engine.learning.posterior.CorrectionFactor;

/** A joint in a list, in words. */
record JointSheet(
        UUID id,
        String name,
        String event,
        String evidence,
        String reason,
        String needs,
        int tests,
        CorrectionFactor factor) {

    static JointSheet of(Standing standing) {
        return new JointSheet(
                standing.joint().id(),
                standing.joint().name(),
                standing.joint().event().toString(),
                standing.evidence().evidence().toString(),
                standing.evidence().reason(),
                standing.evidence().whatWouldRaiseIt(),
                standing.tests(),
                standing.correction());
    }

    static List<JointSheet> of(List<Standing> standings) {
        return standings.stream().map(JointSheet::of).toList();
    }

    /** The correction in words. */
    public String correction() {
        return Words.of(factor);
    }
}
