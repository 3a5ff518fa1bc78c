package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.Trial;

/** One joint alone, against adaptive quadrature in Python (scipy) of the same model. */
class SingleJointPosteriorTest {

    /** c ~ N(0, 0.35²) alone, σ and δ known. */
    private static final Priors KNOWN = new Priors(0.35, 0, 0, 0, 0.10, 0, 0.15, 0, 0);
    /** As KNOWN, no band and ln σ ~ N(ln 0.10, 0.5²). */
    private static final Priors BINARY = new Priors(0.35, 0, 0, 0, 0.10, 0.5, 1e-12, 0, 0);

    private static LeafPosterior posterior(Priors priors, Trial... trials) {
        FleetLog log = new FleetLog(List.of(ReferenceCases.airframe(List.of(trials))));
        return FleetModel.of(log, priors, ReferenceCases.fine(priors, 0.005)).leaf(new Leaf.Logged(0, 0, 0));
    }

    private static LeafPosterior oneOfEach() {
        return posterior(
                KNOWN,
                new Trial(StrictMath.log(0.80), Outcome.NONE),
                new Trial(0, Outcome.PARTIAL),
                new Trial(StrictMath.log(1.20), Outcome.SEPARATED));
    }

    @Test
    void evidenceAndMomentsOfOneOfEachAreTheQuadratures() {
        LeafPosterior leaf = oneOfEach();
        assertThat(StrictMath.exp(leaf.logMarginalLikelihood())).isCloseTo(0.0992822512, within(1e-6));
        assertThat(leaf.correctionMean()).isCloseTo(-0.07921066, within(1e-6));
        assertThat(leaf.correctionSd()).isCloseTo(0.08072584, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "0.025, -0.23737635",
        "0.05, -0.21223095",
        "0.25, -0.13392706",
        "0.5, -0.07909584",
        "0.75, -0.02438138",
        "0.95, 0.05341453",
        "0.975, 0.07834321"
    })
    void quantilesOfOneOfEachAreTheQuadratures(double p, double expected) {
        assertThat(oneOfEach().correctionQuantile(p)).isCloseTo(expected, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "1.0, 0.26907896, 0.29097701",
        "1.2, 0.02083438, 0.80706035",
        "1.4, 0.00058782, 0.98073878",
        "1.6, 0.00000867, 0.99908137"
    })
    void predictiveChancesOfOneOfEachAreTheQuadratures(double ratio, double none, double separated) {
        OutcomeProbabilities chances = oneOfEach().outcomes(StrictMath.log(ratio));
        assertThat(chances.none()).isCloseTo(none, within(1e-6));
        assertThat(chances.separated()).isCloseTo(separated, within(1e-6));
    }

    /** Two none below, two separated above: maximum likelihood has no answer here; the posterior does. */
    @ParameterizedTest
    @CsvSource({"0.05, -0.18610, 0.01039", "0.5, -0.04743, 0.16989", "0.95, 0.09441, 0.50808"})
    void completeSeparationStillHasAPosterior(double p, double middle, double x99) {
        LeafPosterior leaf = posterior(
                BINARY,
                new Trial(-0.2, Outcome.NONE),
                new Trial(-0.1, Outcome.NONE),
                new Trial(0, Outcome.SEPARATED),
                new Trial(0.1, Outcome.SEPARATED));
        assertThat(leaf.correctionQuantile(p)).isCloseTo(middle, within(3e-4));
        assertThat(leaf.ownLogRatioQuantile(p, 0.99)).isCloseTo(x99, within(3e-4));
        assertThat(leaf.correctionMean()).isCloseTo(-0.046855, within(3e-4));
        assertThat(leaf.correctionSd()).isCloseTo(0.087820, within(3e-4));
        assertThat(leaf.scatterMean()).isCloseTo(0.107429, within(3e-4));
    }

    /** With c = 0, σ = 0.10 and δ = 0.15 known the chances are normal tail areas. */
    @ParameterizedTest
    @CsvSource({
        "0.8, 0.98717385, 0.01273095, 0.00009520", "1.0, 0.50000000, 0.43319280, 0.06680720",
        "1.2, 0.03413537, 0.33913062, 0.62673400", "1.3, 0.00434975, 0.12623258, 0.86941767",
        "1.5, 0.00002510, 0.00528961, 0.99468529"
    })
    void chancesAtKnownParametersAreNormalTails(double ratio, double none, double partial, double separated) {
        ProbitNode row = ProbitNode.of(0.10, 0.15);
        double x = StrictMath.log(ratio);
        assertThat(row.chance(Outcome.NONE, x, 0)).isCloseTo(none, within(1e-8));
        assertThat(row.chance(Outcome.PARTIAL, x, 0)).isCloseTo(partial, within(1e-8));
        assertThat(row.chance(Outcome.SEPARATED, x, 0)).isCloseTo(separated, within(1e-8));
    }
}
