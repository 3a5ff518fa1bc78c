package org.sunder.advice;

import java.util.List;
import java.util.Locale;
import org.sunder.engine.planning.BackupCharge;
import org.sunder.engine.quantity.Mass;

/** How a backup charge stands to what was fired, in the builder's words, and what would prove that the airframe takes it. */
public final class BackupWords {

    private BackupWords() {}

    /**
     * One or two sentences.
     *
     * @param measure step of charges, whose unit and digits the charges get
     */
    public static String of(BackupCharge backup, Mass measure) {
        String fired = ReasonWords.charge(backup.highestFired(), measure);
        return backup.firedBefore()
                ? "The airframe has taken " + fired + " without damage."
                : "Not fired before: " + times(backup) + " times the highest charge fired without damage, " + fired
                        + ". " + proof(backup.proof(), measure);
    }

    /** A few words, for a branch. */
    public static String inShort(BackupCharge backup) {
        return backup.firedBefore()
                ? "fired before"
                : "not fired before: " + times(backup) + " times the highest fired without damage";
    }

    private static String proof(List<Double> shots, Mass measure) {
        if (shots.isEmpty()) {
            return "This measure is too coarse for a shot on the ground that would prove it within the largest step.";
        }
        String last = ReasonWords.charge(shots.get(shots.size() - 1), measure);
        if (shots.size() == 1) {
            return "One shot of " + last + " on the ground proves that the airframe takes it.";
        }
        List<String> before = shots.subList(0, shots.size() - 1).stream()
                .map(shot -> ReasonWords.charge(shot, measure))
                .toList();
        return "Shots of " + String.join(", ", before) + " and " + last
                + " on the ground prove that the airframe takes it.";
    }

    private static String times(BackupCharge backup) {
        return String.format(Locale.ROOT, "%.2f", backup.timesFired());
    }
}
