package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.Trial;

/** Looking ahead quickly agrees with taking the trial into the full posterior. */
class OneStepLookaheadTest {

    @ParameterizedTest
    @ValueSource(doubles = {-0.3, 0, 0.15, 0.3, 0.5, 0.8})
    void forecastsAreThoseOfTheFullPosterior(double x) {
        LeafPosterior posterior =
                FleetModel.of(FleetLog.empty(), Priors.standard()).leaf(new Leaf.NewAirframe(0.05));
        check(posterior, x);
        check(posterior.after(new Trial(0.2, Outcome.PARTIAL)).after(new Trial(0.4, Outcome.SEPARATED)), x);
    }

    private static void check(LeafPosterior posterior, double x) {
        for (Forecast forecast : new OneStepLookahead(posterior, 0.99).after(x)) {
            LeafPosterior after = posterior.after(new Trial(x, forecast.outcome()));
            assertThat(forecast.probability()).isCloseTo(posterior.outcomes(x).of(forecast.outcome()), within(0.002));
            assertThat(forecast.logRatio()).isCloseTo(after.logRatioFor(0.99), within(0.015));
            assertThat(forecast.ownMedian()).isCloseTo(after.ownLogRatioQuantile(0.5, 0.99), within(0.02));
        }
    }
}
