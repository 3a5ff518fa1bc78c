package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.sunder.Thorough;
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
    /** The same against a log worked out anew: a first fine reading has it summed at more nodes of the bias. */
    private static final double ANEW = 0.02;

    /** ln v rises by 1 per unit of x − c, from 10 m/s at the threshold. */
    private static final SpeedCurve CURVE =
            new SpeedCurve(-4, 8, List.of(StrictMath.log(10) - 4, StrictMath.log(10) + 4));

    private static Trial silent(double x, Outcome outcome) {
        return new Trial(x, outcome);
    }

    private static Trial read(double x, double metresPerSecond, double sd) {
        return new Trial(x, Outcome.SEPARATED, new SpeedReading(StrictMath.log(metresPerSecond), sd, CURVE));
    }

    private static LeafPosterior after(List<Trial> trials) {
        JointLog joint = new JointLog(List.of(new SetupLog(0.05, trials)));
        return FleetModel.of(new FleetLog(List.of(new AirframeLog(List.of(joint)))), Priors.standard())
                .leaf(new Leaf.Logged(0, 0, 0));
    }

    static Stream<Arguments> cases() {
        return Stream.of(
                        Arguments.of("one read", List.of(silent(-0.3, Outcome.NONE), read(0.3, 13, 0.05)), 0.05),
                        Arguments.of("nothing read", List.of(silent(-0.3, Outcome.NONE)), 0.10),
                        Arguments.of("nothing read, finely filmed", List.of(silent(-0.3, Outcome.NONE)), 0.03),
                        Arguments.of(
                                "two read",
                                List.of(silent(-0.1, Outcome.PARTIAL), read(0.3, 12, 0.10), read(0.2, 13, 0.04)),
                                0.05))
                .limit(Thorough.count(1, 4));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void eachReadingLeavesWhatItLeavesOnceItIsTakenIn(String name, List<Trial> trials, double sd) {
        LeafPosterior known = after(trials);
        double x = 0.25;
        Filming filming = new Filming(sd, CURVE);
        OneStepLookahead outlook = new OneStepLookahead(known, RELIABILITY, filming);
        List<Forecast> separated = outlook.after(x).stream()
                .filter(forecast -> forecast.outcome() == Outcome.SEPARATED)
                .toList();
        List<Double> speeds = outlook.speedsShown(x);
        assertThat(separated).hasSameSizeAs(speeds).hasSizeGreaterThan(2);
        for (int i = 0; i < speeds.size(); i++) {
            List<Trial> more = new ArrayList<>(trials);
            more.add(new Trial(x, Outcome.SEPARATED, filming.reading(speeds.get(i))));
            LeafPosterior really = after(more);
            assertThat(separated.get(i).logRatio())
                    .as("%s, target after %.1f m/s", name, StrictMath.exp(speeds.get(i)))
                    .isCloseTo(really.logRatioFor(RELIABILITY), within(ANEW));
            assertThat(separated.get(i).ownMedian())
                    .isCloseTo(really.ownLogRatioQuantile(0.5, RELIABILITY), within(ANEW));
        }
        assertThat(separated.stream().mapToDouble(Forecast::probability).sum())
                .isCloseTo(known.pSeparated(x), within(0.005));
    }

    /** What is expected to be believed is what is believed now: nothing is known of the film but that it will be made. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void onAverageAFilmMovesNothing(String name, List<Trial> trials, double sd) {
        LeafPosterior known = after(trials);
        double x = 0.25;
        double without = own(new OneStepLookahead(known, RELIABILITY).after(x));
        double with = own(new OneStepLookahead(known, RELIABILITY, new Filming(sd, CURVE)).after(x));
        assertThat(with).as(name).isCloseTo(without, within(0.01)); // medians average out only nearly
    }

    /**
     * The same by enumerating what a film may show, 0.02 apart in ln: the weight of each speed is how much likelier the log becomes
     * with it, the share of a lapse taken off, and what it leaves is the posterior once it is taken in.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theFewReadingsStandForAllThatAFilmMayShow(String name, List<Trial> trials, double sd) {
        LeafPosterior known = after(trials);
        double x = 0.25;
        Filming filming = new Filming(sd, CURVE);
        double lapsed = known.lapse() / 3 * SpeedReading.LAPSED;
        double all = 0;
        double target = 0;
        double square = 0;
        for (double logSpeed = 0.5; logSpeed < 4.5; logSpeed += 0.02) {
            LeafPosterior then = known.after(new Trial(x, Outcome.SEPARATED, filming.reading(logSpeed)));
            double weight = StrictMath.exp(then.logMarginalLikelihood() - known.logMarginalLikelihood()) - lapsed;
            double ratio = then.logRatioFor(RELIABILITY);
            all += weight;
            target += weight * ratio;
            square += weight * ratio * ratio;
        }
        assertThat(0.02 * all)
                .as("the chance of separating, a lapse left out")
                .isCloseTo((1 - known.lapse()) * known.pSeparated(x), within(1e-3));
        List<Forecast> forecasts = new OneStepLookahead(known, RELIABILITY, filming)
                .after(x).stream()
                        .filter(forecast -> forecast.outcome() == Outcome.SEPARATED)
                        .toList();
        double sum = forecasts.stream().mapToDouble(Forecast::probability).sum();
        double mean = forecasts.stream()
                        .mapToDouble(forecast -> forecast.probability() * forecast.logRatio())
                        .sum()
                / sum;
        double spread = StrictMath.sqrt(forecasts.stream()
                        .mapToDouble(forecast ->
                                forecast.probability() * (forecast.logRatio() - mean) * (forecast.logRatio() - mean))
                        .sum()
                / sum);
        double really = target / all;
        assertThat(mean).as(name).isCloseTo(really, within(FINE));
        assertThat(spread)
                .as("how far targets lie apart, %s", name)
                .isCloseTo(StrictMath.sqrt(square / all - really * really), within(FINE));
    }

    private static double own(List<Forecast> forecasts) {
        return forecasts.stream()
                .mapToDouble(forecast -> forecast.probability() * forecast.ownMedian())
                .sum();
    }

    @Test
    void afterAReadingLessIsInDoubtTheFinerItIs() {
        LeafPosterior known = after(List.of(silent(-0.3, Outcome.NONE)));
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
