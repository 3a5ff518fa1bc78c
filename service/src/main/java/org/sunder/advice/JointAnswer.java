package org.sunder.advice;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.groundtest.GroundTest;
import org.sunder.picture.ChargeRuler;

/**
 * Where a joint stands, and what to do next, from one reading of the fleet.
 *
 * @param standing where it stands
 * @param next what to do next, or null where its setup cannot be read
 * @param ruler its charges on one scale, or null where its setup cannot be read
 * @param tests all its firings, whoever logged them and whether they count or not, in the order fired
 */
public record JointAnswer(
        Standing standing,
        @Nullable NextAdvice next,
        @Nullable ChargeRuler ruler,
        List<GroundTest> tests) {

    public JointAnswer {
        tests = List.copyOf(tests);
    }

    /** Its last firing, or null. */
    public @Nullable GroundTest last() {
        return tests.isEmpty() ? null : tests.get(tests.size() - 1);
    }
}
