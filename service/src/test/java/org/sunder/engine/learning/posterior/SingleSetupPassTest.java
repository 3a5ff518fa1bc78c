package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.quadrature.Downsampled;
import org.sunder.engine.learning.quadrature.GaussianKernel;

/** The quick way of an airframe with one tested setup against the tree's own, which knows of no interpolation. */
class SingleSetupPassTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 12, 30})
    void saysWhatTheTreeSays(int trials) {
        for (int seed = 0; seed < 3; seed++) {
            AirframeLog log = airframe(new Random(100L * trials + seed), trials);
            FleetLog fleet = new FleetLog(List.of(log));
            Hierarchy levels = new Hierarchy(Priors.standard(), Design.standard(Priors.standard(), fleet), List.of());
            Optional<SingleSetupPass> chain = SingleSetupPass.find(levels, log);
            assertThat(chain).isPresent();
            int knots = levels.design().knots();
            for (int r = 0; r < levels.probits().size(); r += 7) {
                long[] quick = new long[levels.design().spreads() * knots];
                long[] tree = new long[quick.length];
                MeanLogLikelihood.fill(
                        quick, 0, r, new UpwardPass(levels, levels.probits().get(r), log, chain), levels, cell -> true);
                MeanLogLikelihood.fill(
                        tree,
                        0,
                        r,
                        new UpwardPass(levels, levels.probits().get(r), log, Optional.empty()),
                        levels,
                        cell -> true);
                // One smoothing over the whole variance; the tree's three in a row have errors of their own.
                long[] once = smoothedOnce(
                        levels, new UpwardPass(levels, levels.probits().get(r), log, chain).leaf(0, 1));
                assertThat(furthest(quick, once)).isLessThan(2e-3);
                assertThat(furthest(quick, tree)).isLessThan(6e-3);
            }
        }
    }

    private static long[] smoothedOnce(Hierarchy levels, Message leaf) {
        Design design = levels.design();
        long[] result = new long[design.spreads() * design.knots()];
        for (int s = 0; s < design.setup().size(); s++) {
            for (int j = 0; j < design.joint().size(); j++) {
                for (int a = 0; a < design.airframe().size(); a++) {
                    double upper = Math.hypot(levels.airframeSd(a), levels.jointSd(j));
                    GaussianKernel smoothing =
                            GaussianKernel.of(Math.hypot(upper, levels.setupSd(s, 0.05)), design.corrections());
                    double[] logs = MeanLogLikelihood.logsAtKnots(
                            new Downsampled(leaf.values()), leaf.exponent(), smoothing, design);
                    MeanLogLikelihood.round(logs, result, levels.cell(0, s, j, a) * design.knots());
                }
            }
        }
        return result;
    }

    @Test
    void isForOneTestedSetupOnly() {
        AirframeLog one = airframe(new Random(1), 3);
        AirframeLog two =
                new AirframeLog(List.of(one.joints().get(0), one.joints().get(0)));
        FleetLog fleet = new FleetLog(List.of(two));
        Hierarchy levels = new Hierarchy(Priors.standard(), Design.standard(Priors.standard(), fleet), List.of());
        assertThat(SingleSetupPass.find(levels, one)).isPresent();
        assertThat(SingleSetupPass.find(levels, two)).isEmpty();
        assertThat(SingleSetupPass.find(levels, new AirframeLog(List.of()))).isEmpty();
        assertThat(SingleSetupPass.find(levels, airframe(new Random(1), 31))).isEmpty();
    }

    /** Largest difference of two log likelihoods, weighted: where little of the best is left, it is no matter. */
    private static double furthest(long[] some, long[] others) {
        double best = units(max(others));
        double result = 0;
        for (int i = 0; i < others.length; i++) {
            double weight = Math.exp(units(others[i]) - best);
            result = Math.max(result, Math.abs(units(some[i]) - units(others[i])) * weight);
        }
        return result;
    }

    private static double units(long value) {
        return value * 0x1p-24;
    }

    private static long max(long[] values) {
        long result = Long.MIN_VALUE;
        for (long value : values) {
            result = Math.max(result, value);
        }
        return result;
    }

    private static AirframeLog airframe(Random random, int tests) {
        double c = 0.1 + 0.3 * random.nextGaussian();
        List<Trial> trials = new ArrayList<>();
        for (int i = 0; i < tests; i++) {
            double x = c + 0.1 + 0.2 * random.nextGaussian();
            double z = x - c + 0.1 * random.nextGaussian();
            trials.add(new Trial(x, z < 0 ? Outcome.NONE : z < 0.15 ? Outcome.PARTIAL : Outcome.SEPARATED));
        }
        SetupLog untested = new SetupLog(0.1, List.of());
        return new AirframeLog(List.of(new JointLog(List.of(untested, new SetupLog(0.05, trials)))));
    }
}
