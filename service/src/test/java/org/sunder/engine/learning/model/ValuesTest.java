package org.sunder.engine.learning.model;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What cannot be observed or believed is refused where it is made. */
class ValuesTest {

    private static final SpeedCurve CURVE = new SpeedCurve(0, 0.1, List.of(1.0, 2.0));

    static List<ThrowingCallable> impossible() {
        return List.of(
                () -> new Trial(Double.NaN, Outcome.NONE),
                () -> new Trial(0, Outcome.PARTIAL, new SpeedReading(1, CURVE)),
                () -> new SpeedReading(Double.NEGATIVE_INFINITY, CURVE),
                () -> new SpeedReading(1, 0.029, CURVE),
                () -> new SpeedReading(1, 0.51, CURVE),
                () -> new SpeedReading(1, Double.NaN, CURVE),
                () -> new SpeedCurve(0, 0, List.of(1.0, 2.0)),
                () -> new SpeedCurve(0, 0.1, List.of(1.0)),
                () -> new SpeedCurve(0, 0.1, List.of(1.0, Double.NaN)),
                () -> new SetupLog(-0.1, List.of()),
                () -> new SetupLog(Double.POSITIVE_INFINITY, List.of()),
                () -> new Priors(0.3, -1, 0, 0, 0.1, 0, 0.1, 0, 0),
                () -> new Priors(0, 0, 0, 0, 0.1, 0, 0.1, 0, 0),
                () -> new Priors(0.3, 0, 0, 0, 0.1, 0, 0.1, 0, 1));
    }

    @ParameterizedTest
    @MethodSource("impossible")
    void isRefused(ThrowingCallable making) {
        assertThatThrownBy(making).isInstanceOf(IllegalArgumentException.class);
    }
}
