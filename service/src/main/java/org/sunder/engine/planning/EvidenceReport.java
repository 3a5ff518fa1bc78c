package org.sunder.engine.planning;

/**
 * The evidence of a joint, in words.
 *
 * @param evidence which
 * @param reason why, one plain sentence
 * @param whatWouldRaiseIt what to do for more, one plain sentence
 */
public record EvidenceReport(Evidence evidence, String reason, String whatWouldRaiseIt) {

    /** Judges a case. Every rule is stated at the words it gives. */
    public static EvidenceReport of(PlanningCase on) {
        return of(on, Target.of(on));
    }

    static EvidenceReport of(PlanningCase on, Target target) {
        if (on.counted().isEmpty()) {
            return new EvidenceReport(Evidence.NONE, "No counted test yet.", "Fire a first ground test.");
        }
        if (on.surpriseUnanswered()) {
            return new EvidenceReport(
                    Evidence.CONFLICTING,
                    "The last counted test had less than a 2 % chance of its outcome.",
                    "Check pins, powder and igniter; void the test if something was wrong, or fire once more.");
        }
        String missing = target.missing(on);
        if (missing.isEmpty()) {
            return new EvidenceReport(
                    Evidence.SUFFICIENT,
                    "A counted test separated at or below the flight charge, and little is left to learn.",
                    "More separated tests at the flight charge raise what the tests show alone.");
        }
        boolean stale = on.setupChanged() && on.counted().stream().anyMatch(Firing::separated);
        return stale
                ? new EvidenceReport(
                        Evidence.STALE,
                        "The setup changed since the last separated test. " + missing,
                        "Fire one test in the current setup.")
                : new EvidenceReport(Evidence.BUILDING, missing, "Fire the next charge.");
    }
}
