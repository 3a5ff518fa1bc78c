package org.sunder.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.Standing;
import org.sunder.airframe.Setup;

/**
 * A joint on the sheet of a flight day, in words.
 *
 * @param ceiling the charge never to be exceeded, with the air of the flight where that was given
 * @param opens where it opens, if that was given
 * @param air what a closed compartment still holds there, if that was asked for
 * @param warnings what to know of the setup and of the air of the flight
 * @param flight what to fly, or why nothing
 */
record FlightSheetJoint(
        JointSheet sheet,
        int revision,
        String pins,
        String ceiling,
        @Nullable String opens,
        @Nullable String air,
        List<String> warnings,
        FlightAnswer flight) {

    /** Of a joint whose setup, as stored, cannot be. */
    static FlightSheetJoint of(Standing standing, Setup setup) {
        JointSheet sheet = JointSheet.of(standing);
        return new FlightSheetJoint(
                sheet,
                setup.revision(),
                SetupColumns.pins(setup.sheet()),
                "no charge at all",
                null,
                null,
                List.of(),
                FlightAnswer.none(sheet));
    }
}
