package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.sunder.advice.BackupWords;
import org.sunder.airframe.Display;
import org.sunder.engine.planning.BackupCharge;
import org.sunder.engine.quantity.Mass;

/** How a backup charge stands to what was fired. */
@Schema(
        name = "BackupProof",
        description = "How a backup charge stands to what was fired, and what would prove that the airframe takes it.")
record BackupProofView(
        @Schema(description = "Whether as much was fired without damage.")
        boolean firedBefore,

        @Schema(
                description = "Highest charge that a counted firing took without damage; of an earlier setup the charge"
                        + " that gives the same gauge pressure in this one.")
        Mass highestFired,

        @Schema(description = "The backup over that charge.", example = "1.26")
        BigDecimal timesHighest,

        @Schema(
                description =
                        "Shots on the ground, in order, that prove that the airframe takes the backup, each within the"
                                + " largest step; mostly one. Empty where it was fired before, or where the measure is"
                                + " too coarse for such a step.")
        List<Mass> shots,

        @Schema(
                description = "The same in a sentence or two; a few words on a branch of a ladder.",
                example = "The airframe has taken 1.50 g without damage.")
        String text) {

    private static final MathContext DIGITS = new MathContext(4);

    static BackupProofView of(BackupCharge backup, Mass measure) {
        return of(backup, BackupWords.of(backup, measure), measure);
    }

    static BackupProofView inShort(BackupCharge backup, Mass measure) {
        return of(backup, BackupWords.inShort(backup), measure);
    }

    private static BackupProofView of(BackupCharge backup, String text, Mass measure) {
        return new BackupProofView(
                backup.firedBefore(),
                Display.charge(backup.highestFired(), measure),
                BigDecimal.valueOf(backup.timesFired()).round(DIGITS),
                backup.proof().stream()
                        .map(shot -> Display.onMeasure(shot, measure))
                        .toList(),
                text);
    }
}
