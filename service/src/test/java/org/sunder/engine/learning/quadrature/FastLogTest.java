package org.sunder.engine.learning.quadrature;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The fast logarithm against the JDK's. */
class FastLogTest {

    @Test
    void agreesWithTheLibraryOverAllNormalDoubles() {
        Random random = new Random(1);
        for (int i = 0; i < 1_000_000; i++) {
            double v = StrictMath.scalb(1 + random.nextDouble(), random.nextInt(2045) - 1022);
            double expected = StrictMath.log(v);
            assertThat(FastLog.log(v)).isCloseTo(expected, within(1e-14 * (1 + Math.abs(expected))));
        }
    }

    @Test
    void agreesNearOne() {
        for (double v : new double[] {1, Math.nextDown(1.0), Math.nextUp(1.0), 0.999, 1.001, Double.MIN_NORMAL}) {
            assertThat(FastLog.log(v)).isCloseTo(StrictMath.log(v), within(1e-13));
        }
    }
}
