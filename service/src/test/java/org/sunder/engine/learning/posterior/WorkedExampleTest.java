package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.Trial;

/**
 * The example of the package's page, in closed form: a normal prior through a probit (C. E. Rasmussen, C. K. I. Williams, Gaussian
 * Processes for Machine Learning, 2006, eq. 3.79 to 3.85, for the evidence and the mean).
 */
class WorkedExampleTest {

    private static final double PRIOR_SD = 0.30;
    private static final double SCATTER = 0.10;
    private static final double BAND = 0.15;
    private static final double LAPSE = 0.02;

    private static final Priors KNOWN = new Priors(PRIOR_SD, 0, 0, 0, SCATTER, 0, BAND, 0, LAPSE);

    @Test
    void oneSeparatedTestAtTheHandbookCharge() {
        FleetLog log = new FleetLog(List.of(ReferenceCases.airframe(List.of(new Trial(0, Outcome.SEPARATED)))));
        LeafPosterior posterior = FleetModel.of(log, KNOWN).leaf(new Leaf.Logged(0, 0, 0));
        double sd = StrictMath.hypot(SCATTER, PRIOR_SD);
        double k = -BAND / sd;
        double cumulative = Erf.erfc(-k / StrictMath.sqrt(2)) / 2;
        double density = StrictMath.exp(-k * k / 2) / StrictMath.sqrt(2 * Math.PI);
        double evidence = (1 - LAPSE) * cumulative + LAPSE / 3;
        double mean = -(1 - LAPSE) * PRIOR_SD * PRIOR_SD / sd * density / evidence;
        assertThat(evidence).as("as the page says").isCloseTo(0.317942, within(5e-7));
        assertThat(mean).as("as the page says").isCloseTo(-0.312732, within(5e-7));
        assertThat(StrictMath.exp(posterior.logMarginalLikelihood())).isCloseTo(evidence, within(1e-5));
        assertThat(posterior.correctionMean()).isCloseTo(mean, within(1e-4));
    }
}
