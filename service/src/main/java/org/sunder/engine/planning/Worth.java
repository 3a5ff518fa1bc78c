package org.sunder.engine.planning;

import java.util.List;
import org.sunder.engine.learning.Forecast;
import org.sunder.engine.learning.Outcome;

/** What a firing is worth: the less, the better. */
final class Worth {

    private Worth() {}

    /** Expected ln of the target charge after a firing, plus the price of a further test where one is needed. */
    static double loss(List<Forecast> forecasts, PlanningCase on, int steps) {
        double loss = 0;
        for (Forecast forecast : forecasts) {
            double toCome =
                    done(forecast, on, on.logRatio(steps)) ? 0 : on.goal().pricePerTest();
            loss += forecast.probability() * (forecast.logRatio() + toCome);
        }
        return loss;
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
