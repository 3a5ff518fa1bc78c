package org.sunder.engine.learning.posterior;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.MultiDirectionalSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.sunder.engine.learning.model.Outcome;

/** Fits of published data through the engine's likelihood {@link ProbitNode#chance}. */
final class PublishedFits {

    private PublishedFits() {}

    /** Response at a stimulus, with threshold μ and scatter σ; binary, so without a band. */
    static double chance(boolean response, double x, double mu, double sigma) {
        return ProbitNode.of(sigma, 0).chance(response ? Outcome.SEPARATED : Outcome.NONE, x, mu);
    }

    /** Where a log likelihood is largest, by simplices of falling size. */
    static double[] maximum(ToDoubleFunction<double[]> logLikelihood, double... start) {
        double[] best = start;
        for (int round = 0; round < 8; round++) {
            double scale = StrictMath.pow(10, -1 - round / 2);
            double[] steps = new double[start.length];
            Arrays.fill(steps, scale);
            best = new SimplexOptimizer(new SimpleValueChecker(1e-15, 1e-14))
                    .optimize(
                            new MaxEval(200_000),
                            new ObjectiveFunction(logLikelihood::applyAsDouble),
                            GoalType.MAXIMIZE,
                            new InitialGuess(best),
                            round % 2 == 0 ? new NelderMeadSimplex(steps) : new MultiDirectionalSimplex(steps))
                    .getPoint();
        }
        return best;
    }

    /** Columns of numbers of a file under resources/reference/published. */
    static List<double[]> numbers(String file, int... columns) {
        return ReferenceCases.table("published/" + file).stream()
                .map(cells -> Arrays.stream(columns)
                        .mapToDouble(column -> Double.parseDouble(cells[column]))
                        .toArray())
                .toList();
    }
}
