package org.sunder.durability;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sunder.InThoroughRuns;

/** The service killed again and again under load, on its embedded database. */
class KillRoundsTest {

    @TempDir
    Path folder;

    @Test
    @InThoroughRuns
    void eachAcknowledgedTestIsThereOnceAndTheAnswersFollowFromTheLog() throws Exception {
        KillRounds.run(folder, List.of(), null);
    }
}
