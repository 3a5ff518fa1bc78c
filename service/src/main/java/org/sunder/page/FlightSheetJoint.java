package org.sunder.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.BackupWords;
import org.sunder.advice.BothWords;
import org.sunder.advice.FlightReport;
import org.sunder.advice.Standing;
import org.sunder.airframe.Display;
import org.sunder.airframe.Setup;
import org.sunder.engine.planning.FlightCharge;
import org.sunder.engine.planning.TestsAlone;

/**
 * A joint on the sheet of a flight day, in words.
 *
 * @param ceiling the charge never to be exceeded, with the air of the flight where that was given
 * @param opens where it opens, if that was given
 * @param air what a closed compartment still holds there, if that was asked for
 * @param warnings what to know of the setup and of the air of the flight
 * @param charge what to fly, or null where the tests support none
 * @param refusal why there is no charge
 */
record FlightSheetJoint(
        JointSheet sheet,
        int revision,
        String pins,
        String ceiling,
        @Nullable String opens,
        @Nullable String air,
        List<String> warnings,
        @Nullable Charge charge,
        @Nullable String refusal) {

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

    /** Of a joint whose setup, as stored, cannot be. */
    static FlightSheetJoint of(Standing standing, Setup setup) {
        return new FlightSheetJoint(
                JointSheet.of(standing),
                setup.revision(),
                SetupColumns.pins(setup.sheet()),
                "no charge at all",
                null,
                null,
                List.of(),
                null,
                standing.evidence().reason() + " " + standing.evidence().whatWouldRaiseIt());
    }

    FlightSheetJoint with(Charge found) {
        return new FlightSheetJoint(sheet, revision, pins, ceiling, opens, air, warnings, found, null);
    }

    FlightSheetJoint refused(String reason) {
        return new FlightSheetJoint(sheet, revision, pins, ceiling, opens, air, warnings, null, reason);
    }
}
