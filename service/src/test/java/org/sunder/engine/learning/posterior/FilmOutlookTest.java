package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.Filming;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.SpeedCurve;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.learning.model.Trial;

/** What a film is expected to tell agrees with what each reading does tell once it is taken in. */
class FilmOutlookTest {

    private static final double RELIABILITY = 0.99;
    /** How fine a lookahead is said to be. */
    private static final double FINE = 0.015;

    /** ln v rises by 1 per unit of x − c, from 10 m/s at the threshold. */
    private static final SpeedCurve CURVE =
            new SpeedCurve(-4, 8, List.of(StrictMath.log(10) - 4, StrictMath.log(10) + 4));

    private static Trial silent(double x, Outcome outcome) {
        return new Trial(x, outcome);
    }

    private static Trial read(double x, double metresPerSecond, double sd) {
        return new Trial(x, Outcome.SEPARATED, new SpeedReading(StrictMath.log(metresPerSecond), sd, CURVE));
    }

    private static LeafPosterior after(Trial... trials) {
        JointLog joint = new JointLog(List.of(new SetupLog(0.05, List.of(trials))));
        return FleetModel.of(new FleetLog(List.of(new AirframeLog(List.of(joint)))), Priors.standard())
                .leaf(new Leaf.Logged(0, 0, 0));
    }

    static Stream<Arguments> cases() {
        return Stream.of(
                Arguments.of("nothing read", after(silent(-0.3, Outcome.NONE)), 0.10),
                Arguments.of("nothing read, finely filmed", after(silent(-0.3, Outcome.NONE)), 0.03),
                Arguments.of("one read", after(silent(-0.3, Outcome.NONE), read(0.3, 13, 0.05)), 0.05),
                Arguments.of(
                        "two read",
                        after(silent(-0.1, Outcome.PARTIAL), read(0.3, 12, 0.10), read(0.2, 13, 0.04)),
                        0.05));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void eachReadingLeavesWhatItLeavesOnceItIsTakenIn(String name, LeafPosterior known, double sd) {
        double x = 0.25;
        Filming filming = new Filming(sd, CURVE);
        OneStepLookahead outlook = new OneStepLookahead(known, RELIABILITY, filming);
        List<Forecast> separated = outlook.after(x).stream()
                .filter(forecast -> forecast.outcome() == Outcome.SEPARATED)
                .toList();
        List<Double> speeds = outlook.speedsShown(x);
        assertThat(separated).hasSameSizeAs(speeds).hasSizeGreaterThan(2);
        for (int i = 0; i < speeds.size(); i++) {
            LeafPosterior really = known.after(new Trial(x, Outcome.SEPARATED, filming.reading(speeds.get(i))));
            assertThat(separated.get(i).logRatio())
                    .as("%s, target after %.1f m/s", name, StrictMath.exp(speeds.get(i)))
                    .isCloseTo(really.logRatioFor(RELIABILITY), within(FINE));
            assertThat(separated.get(i).ownMedian())
                    .isCloseTo(really.ownLogRatioQuantile(0.5, RELIABILITY), within(FINE));
        }
        assertThat(separated.stream().mapToDouble(Forecast::probability).sum())
                .isCloseTo(known.pSeparated(x), within(0.005));
    }

    /** What is expected to be believed is what is believed now: nothing is known of the film but that it will be made. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void onAverageAFilmMovesNothing(String name, LeafPosterior known, double sd) {
        double x = 0.25;
        double without = own(new OneStepLookahead(known, RELIABILITY).after(x));
        double with = own(new OneStepLookahead(known, RELIABILITY, new Filming(sd, CURVE)).after(x));
        assertThat(with).as(name).isCloseTo(without, within(0.01)); // medians average out only nearly
    }

    private static double own(List<Forecast> forecasts) {
        return forecasts.stream()
                .mapToDouble(forecast -> forecast.probability() * forecast.ownMedian())
                .sum();
    }

    @Test
    void afterAReadingLessIsInDoubtTheFinerItIs() {
        LeafPosterior known = after(silent(-0.3, Outcome.NONE));
        double before = expectedTarget(new OneStepLookahead(known, RELIABILITY));
        for (double sd : new double[] {0.30, 0.10, 0.03}) {
            double now = expectedTarget(new OneStepLookahead(known, RELIABILITY, new Filming(sd, CURVE)));
            assertThat(now).as("at %s", sd).isLessThan(before);
            before = now;
        }
    }

    private static double expectedTarget(OneStepLookahead outlook) {
        return outlook.after(0.25).stream()
                .mapToDouble(forecast -> forecast.probability() * forecast.logRatio())
                .sum();
    }
}
