package org.sunder.page;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.BackupWords;
import org.sunder.advice.BothWords;
import org.sunder.advice.FlightReport;
import org.sunder.airframe.Display;
import org.sunder.engine.planning.FlightCharge;
import org.sunder.engine.planning.TestsAlone;
import org.sunder.problem.ProblemException;

/**
 * What to fly at a joint, in words.
 *
 * @param charge what to fly, or null where the tests support none
 * @param refusal why there is no charge, or null where there is one
 */
record FlightAnswer(@Nullable Charge charge, @Nullable String refusal) {

    /** What to fly, and how far to trust it. */
    record Charge(
            String primary,
            String backup,
            boolean backupAtCeiling,
            String backupProof,
            String both,
            String modelChance,
            String testsAlone) {

        static Charge of(FlightReport report, Display display) {
            FlightCharge charge = report.charge();
            TestsAlone alone = charge.testsAlone();
            return new Charge(
                    Words.of(Display.onMeasure(charge.charge(), report.measure())),
                    Words.of(Display.onMeasure(charge.backup().charge(), report.measure())),
                    charge.backup().bound(),
                    BackupWords.of(charge.backup(), report.measure()),
                    BothWords.of(charge.both(), report.measure(), display),
                    Words.percent(charge.modelChance()),
                    alone.separated() + " of " + alone.counted() + " separated: at least "
                            + Words.percent(alone.lowerBound()));
        }
    }

    /** What is answered, or why nothing is. */
    static FlightAnswer of(Supplier<FlightReport> flight, Display display) {
        try {
            return new FlightAnswer(Charge.of(flight.get(), display), null);
        } catch (ProblemException none) {
            return new FlightAnswer(null, String.valueOf(none.getMessage()));
        }
    }

    /** Nothing at a joint whose setup, as stored, cannot be. */
    static FlightAnswer none(JointSheet sheet) {
        return new FlightAnswer(null, sheet.reason() + " " + sheet.needs());
    }
}
