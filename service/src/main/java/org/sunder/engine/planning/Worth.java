package org.sunder.engine.planning;

import java.util.List;
import org.sunder.engine.learning.Forecast;
import org.sunder.engine.learning.Outcome;

/**
 * What a firing is worth.
 *
 * @param steps its steps of the measure
 * @param charge its charge, kg
 * @param separated chance that it separates the joint
 * @param logTarget expected ln of (target charge / handbook charge) after it
 * @param finished chance that testing may stop after it
 * @param loss what is weighed, the less the better: {@code logTarget} and the price of a further test where one is needed
 */
public record Worth(int steps, double charge, double separated, double logTarget, double finished, double loss) {

    static Worth of(List<Forecast> forecasts, PlanningCase on, int steps) {
        double separated = 0;
        double logTarget = 0;
        double finished = 0;
        for (Forecast forecast : forecasts) {
            logTarget += forecast.probability() * forecast.logRatio();
            separated += forecast.outcome() == Outcome.SEPARATED ? forecast.probability() : 0;
            finished += done(forecast, on, on.logRatio(steps)) ? forecast.probability() : 0;
        }
        double loss = logTarget + (1 - finished) * on.goal().pricePerTest();
        return new Worth(steps, on.charge(steps), separated, logTarget, finished, loss);
    }

    /**
     * Whether testing may stop after an outcome at log ratio x: settled, separated at the target or below, and the
     * target within the largest step above what was fired.
     */
    private static boolean done(Forecast forecast, PlanningCase on, double x) {
        boolean confirmed = (forecast.outcome() == Outcome.SEPARATED && x <= forecast.logRatio())
                || on.firings().stream()
                        .anyMatch(firing -> firing.separated() && firing.logRatio() <= forecast.logRatio());
        double highest = Math.max(x, Safeguards.highestUndamaged(on).orElse(x));
        boolean inReach = forecast.logRatio() <= highest + Safeguards.LOG_STEP;
        return confirmed && inReach && forecast.excess() <= on.goal().excessLimit();
    }
}
