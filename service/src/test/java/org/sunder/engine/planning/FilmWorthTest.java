package org.sunder.engine.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.planning.Cases.firing;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.sunder.engine.learning.model.Filming;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.posterior.LeafPosterior;

/** What is said of the film of a firing agrees with what it turns out to have done. */
class FilmWorthTest {

    private static final double LN = 0.02; // distance of speeds enumerated

    static Stream<Arguments> cases() {
        return Stream.of(
                        Cases.of(
                                firing(0.9, Outcome.NONE, false),
                                firing(1.1, Outcome.PARTIAL, false),
                                firing(1.35, Outcome.SEPARATED, false)),
                        Cases.of(
                                firing(0.8, Outcome.NONE, false),
                                firing(1.0, Outcome.NONE, false),
                                firing(1.25, Outcome.PARTIAL, false)))
                .flatMap(on -> Stream.of(0.03, 0.10).map(sd -> Arguments.of(on, sd)));
    }

    /** By enumerating outcomes and speeds, and asking the planner after each whether testing may stop. */
    @ParameterizedTest(name = "{index}: {1}")
    @MethodSource("cases")
    void theChanceOfBeingDoneIsThatOfAllThatAFilmMayShow(PlanningCase unfilmed, double sd) {
        Filming filming = MeasuredSpeeds.filming(sd);
        PlanningCase on = unfilmed.filmed(filming);
        NextStep.Fire fire = (NextStep.Fire) Planner.ladder(on, 0);
        double x = on.logRatio(fire.steps());
        LeafPosterior known = on.posterior();
        double lapsed = Priors.standard().lapse() / 3 * SpeedReading.LAPSED;
        double done = 0;
        double all = 0;
        for (double logSpeed = -0.5; logSpeed < 5; logSpeed += LN) {
            LeafPosterior then = known.after(new Trial(x, Outcome.SEPARATED, filming.reading(logSpeed)));
            double weight = StrictMath.exp(then.logMarginalLikelihood() - known.logMarginalLikelihood()) - lapsed;
            all += weight;
            done += weight * stops(on, fire, then);
        }
        double read = known.pSeparated(x) * done / all;
        double unread = known.pSeparated(x) * stops(on, fire, known.after(new Trial(x, Outcome.SEPARATED)));
        FilmWorth worth = FilmWorth.of(on, fire);
        assertThat(worth.read())
                .isCloseTo(read, within(0.10)); // a target is found within 0.015, and may be flown or not
        assertThat(worth.read()).as("a film helps").isGreaterThan(worth.unread() + (sd < 0.05 ? 0.05 : -0.02));
        assertThat(worth.unread()).isCloseTo(unread, within(0.02));
    }

    private static double stops(PlanningCase on, NextStep.Fire fire, LeafPosterior then) {
        PlanningCase after = MeasuredSpeeds.with(then, on.after(fire.steps(), Outcome.SEPARATED));
        return Planner.ladder(after, 0) instanceof NextStep.Stop ? 1 : 0;
    }

    @Test
    void whereTestingMayStopNoFilmIsNeededAndWhereNothingMayBeFiredNoneHelps() {
        PlanningCase done = Cases.of(
                        firing(0.9, Outcome.NONE, false),
                        firing(1.08, Outcome.PARTIAL, false),
                        firing(1.35, Outcome.SEPARATED, false),
                        firing(1.35, Outcome.SEPARATED, false),
                        firing(1.35, Outcome.SEPARATED, false),
                        firing(1.35, Outcome.SEPARATED, false))
                .filmed(MeasuredSpeeds.filming(0.05));
        NextStep step = Planner.ladder(done, 0);
        assertThat(step).isInstanceOf(NextStep.Stop.class);
        assertThat(FilmWorth.of(done, step)).isEqualTo(new FilmWorth(1, 1));
        PlanningCase blocked = Cases.of(0.0002, 0.00001, List.of()).filmed(MeasuredSpeeds.filming(0.05));
        NextStep none = Planner.ladder(blocked, 0);
        assertThat(none).isNotInstanceOf(NextStep.Fire.class);
        assertThat(FilmWorth.of(blocked, none)).isEqualTo(new FilmWorth(0, 0));
    }
}
