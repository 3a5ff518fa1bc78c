package org.sunder.engine.physics.retention;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sunder.engine.quantity.Force;

/** What few pulls say of the next pin. */
class FewPullsTest {

    /** Upper 0.05 points of Student's t: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2. */
    @ParameterizedTest
    @CsvSource({"2, 6.314", "3, 2.920", "4, 2.353", "5, 2.132", "6, 2.015", "11, 1.812", "31, 1.697", "101, 1.660"})
    void theFactorIsStudentsWithOneDegreeLessThanPulls(int pulls, double t) {
        var batch = new PinStrength.MeasuredBatch(Force.ofNewtons(200), Force.ofNewtons(8), pulls);
        assertThat(batch.oneSided95()).isCloseTo(t, within(6e-4));
        // by hand: the next pull scatters by s and the mean by s/√n
        double reach = batch.oneSided95() * batch.sdOf(1, PinThread.M2_5);
        assertThat(reach).isCloseTo(t * 8 * Math.sqrt(1 + 1.0 / pulls), within(0.01));
    }

    @ParameterizedTest
    @CsvSource({"0.95, 1.645"})
    void aStatedUncertaintyIsNormal(double p, double z) {
        assertThat(PinStrength.MaterialShear.NYLON_66.oneSided95())
                .as("quantile of " + p)
                .isCloseTo(z, within(2e-4));
    }

    /**
     * Two-sided 5 % points: D. Harvey, Analytical Chemistry 2.1, appendix 7, whose value for seven is a slip of the pen and
     * left out.
     */
    @ParameterizedTest
    @CsvSource({
        "3, 1.155",
        "4, 1.481",
        "5, 1.715",
        "6, 1.887",
        "8, 2.126",
        "9, 2.215",
        "10, 2.290",
        "12, 2.412",
        "15, 2.549"
    })
    void howFarAPullMayLieIsThePublishedPoint(int pulls, double most) {
        assertThat(PullTests.mostDeviations(pulls)).isCloseTo(most, within(1e-3));
    }

    @Test
    void aPullFarFromTheOthersIsFound() {
        assertThat(PullTests.astray(forces(190, 210, 2000))).hasValue(2);
        assertThat(PullTests.astray(forces(190, 19, 205, 198, 201))).hasValue(1);
        assertThat(PullTests.astray(forces(190, 210, 204))).isEmpty();
        assertThat(PullTests.astray(forces(190, 2000))).as("which of two?").isEmpty();
        assertThat(PullTests.astray(forces(200, 200, 200))).isEmpty();
        assertThat(PullTests.astray(List.of())).isEmpty();
    }

    private static List<Force> forces(double... newtons) {
        return Arrays.stream(newtons).mapToObj(Force::ofNewtons).toList();
    }
}
