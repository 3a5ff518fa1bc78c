package org.sunder.engine.planning;

import java.util.List;
import java.util.OptionalDouble;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.posterior.Forecast;

/**
 * What a firing is worth.
 *
 * @param steps its steps of the measure
 * @param charge its charge, kg
 * @param separated chance that it separates the joint
 * @param logTarget expected ln of (target charge / handbook charge) after it, or of what is flown where testing may stop
 * @param finished chance that testing may stop after it
 * @param loss what is weighed, the less the better: {@code logTarget} and the price of a further test where one is needed
 */
public record Worth(int steps, double charge, double separated, double logTarget, double finished, double loss) {

    static Worth of(List<Forecast> forecasts, PlanningCase on, int steps) {
        double separated = 0;
        double logTarget = 0;
        double finished = 0;
        for (Forecast forecast : forecasts) {
            OptionalDouble flown = flown(forecast, on, on.logRatio(steps));
            logTarget += forecast.probability() * flown.orElse(forecast.logRatio());
            separated += forecast.outcome() == Outcome.SEPARATED ? forecast.probability() : 0;
            finished += flown.isPresent() ? forecast.probability() : 0;
        }
        double loss = logTarget + (1 - finished) * on.goal().pricePerTest();
        return new Worth(steps, on.charge(steps), separated, logTarget, finished, loss);
    }

    /**
     * The log ratio to fly if testing may stop after an outcome at log ratio x, see {@link Target}: little enough above the
     * joint's own, and the target within the largest step above what was fired.
     */
    private static OptionalDouble flown(Forecast forecast, PlanningCase on, double x) {
        double onGrid = on.logRatio(on.stepsReaching(forecast.logRatio()));
        double lowest = Target.lowestSeparated(on).orElse(Double.POSITIVE_INFINITY);
        if (forecast.outcome() == Outcome.SEPARATED) {
            lowest = Math.min(lowest, x);
        }
        double flown = lowest <= onGrid + Target.ROUNDING ? forecast.logRatio() : lowest;
        double highest = Math.max(x, Safeguards.highestUndamaged(on).orElse(x));
        boolean inReach = onGrid <= highest + Safeguards.LOG_STEP;
        return inReach && flown - forecast.ownMedian() <= on.goal().excessLimit()
                ? OptionalDouble.of(flown)
                : OptionalDouble.empty();
    }
}
