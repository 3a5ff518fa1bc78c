package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.sunder.engine.learning.posterior.FleetModel;

/** What is kept of what was found, where memory is short. */
class FindingsTest {

    private static final int KILOBYTES = 60_000;
    private static final int ANSWERS = 2000; // more than there is room for

    private final Findings findings = new Findings(KILOBYTES);

    @Test
    void noNumberOfAnswersPushesTheModelOut() {
        FleetSnapshot fleet = fleet(UUID.randomUUID(), 1);
        for (int i = 0; i < ANSWERS; i++) {
            asked(fleet, i);
            asked(fleet, i);
        }
        FleetModel model = model(fleet);
        assertThat(model(fleet)).isSameAs(model);
        for (int i = 0; i < ANSWERS; i++) {
            asked(fleet, -i);
            asked(fleet, -i);
        }
        assertThat(model(fleet)).isSameAs(model);
        assertThat(model(fleet(fleet.flyer(), 2))).as("the same log").isSameAs(model);
    }

    /** Many flyers in turn, with room for a few models: whoever asks once more meets the model that was made a moment ago. */
    @Test
    void theModelMadeLastIsStillThereWhoeverAskedBefore() {
        int each = model(fleet(UUID.randomUUID(), 1)).kilobytes();
        Findings small = new Findings(4L * 3 * each + 4); // a quarter of it is for models
        for (int round = 0; round < 2; round++) {
            for (long flyer = 1; flyer <= 12; flyer++) {
                FleetSnapshot fleet = fleet(new UUID(0, flyer), 1);
                FleetModel model = small.ask(fleet, found -> found);
                assertThat(small.<FleetModel>ask(fleet, found -> found))
                        .as("round %d, flyer %d", round, flyer)
                        .isSameAs(model);
            }
        }
    }

    @Test
    void whatWasAnsweredOfAnEarlierVersionMakesRoomForTheLatest() {
        UUID flyer = UUID.randomUUID();
        for (int version = 1; version <= 20; version++) {
            FleetSnapshot fleet = fleet(flyer, version);
            findings.keep(fleet);
            for (int i = 0; i < 50; i++) {
                asked(fleet, i);
                asked(fleet, i);
            }
            assertThat(asked(fleet, 49)).as("once found of version " + version).isEqualTo(0);
        }
    }

    private FleetModel model(FleetSnapshot fleet) {
        return findings.ask(fleet, found -> found);
    }

    /** How often it had to be found: 0 where it was kept. */
    private int asked(FleetSnapshot fleet, int question) {
        int[] found = {0};
        findings.answer(fleet, question, () -> ++found[0]);
        return found[0];
    }

    private static FleetSnapshot fleet(UUID flyer, long version) {
        return FleetSnapshot.of(flyer, version, Optional.empty(), Optional.empty(), List.of(), Map.of());
    }
}
