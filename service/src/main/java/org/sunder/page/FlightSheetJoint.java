package org.sunder.page;

import org.jspecify.annotations.Nullable;

/**
 * A joint on the sheet of a flight day, in words.
 *
 * @param primary charge to fly, or null where the tests support none
 * @param refusal why there is none
 */
record FlightSheetJoint(
        JointSheet sheet,
        int revision,
        String pins,
        String ceiling,
        @Nullable String primary,
        @Nullable String backup,
        boolean backupAtCeiling,
        @Nullable String modelChance,
        @Nullable String testsAlone,
        @Nullable String refusal) {}
