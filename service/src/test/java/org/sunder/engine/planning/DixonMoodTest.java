package org.sunder.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Published up-and-down runs. */
class DixonMoodTest {

    /** Ekaputra, Dewa, Haryadi, Kim, Open Eng. 10 (2020) 394: 282 MPa, 10.6 MPa; the order of shots is not published. */
    @Test
    void fatigueStrengthIsThePublishedOne() {
        int[] levels = {2, 2, 2, 1, 1, 1, 1, 1, 1, 0, 0, 0};
        boolean[] failed = {true, true, true, true, true, false, false, false, false, false, false, false};
        DixonMood estimate = DixonMood.of(260, 20, levels, failed, true);
        assertThat(estimate.mean()).isCloseTo(282, within(0.5));
        assertThat(estimate.scatter()).isCloseTo(10.6, within(0.05));
    }

    /** Gorla et al. (2017), material 751: 42 41 40 39 40 41 40 41 42 41 42 41 42 kN; worked out by hand from the formula. */
    @Test
    void theRunOfGearTestsGivesTheFormulasValues() {
        int[] loads = {42, 41, 40, 39, 40, 41, 40, 41, 42, 41, 42, 41, 42};
        boolean[] failed = {true, true, true, false, false, true, false, false, true, false, true, false, true};
        int[] levels = Arrays.stream(loads).map(load -> load - 39).toArray();
        DixonMood estimate = DixonMood.of(39, 1, levels, failed, false);
        assertThat(estimate.mean()).isCloseTo(40.8333, within(1e-4));
        assertThat(estimate.scatter()).isCloseTo(0.94698, within(1e-5));
    }
}
