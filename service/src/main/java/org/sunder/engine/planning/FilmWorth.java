package org.sunder.engine.planning;

import org.sunder.engine.learning.posterior.OneStepLookahead;

/**
 * What the film of the next firing is worth.
 *
 * @param read chance that testing may stop after it, where the film of a separation is read
 * @param unread that chance of the same firing where no speed is read
 */
public record FilmWorth(double read, double unread) {

    /** So many readings of a film: whether testing may stop is a step that few would meet or miss. */
    private static final int READINGS = 21;

    /** Of what comes next in a case whose firings are filmed. Both are 1 where testing may stop now, 0 where nothing may be fired. */
    public static FilmWorth of(PlanningCase on, NextStep step) {
        if (!(step instanceof NextStep.Fire fire)) {
            double done = step instanceof NextStep.Stop ? 1 : 0;
            return new FilmWorth(done, done);
        }
        return new FilmWorth(finished(on, fire.steps()), finished(on.filmed(null), fire.steps()));
    }

    private static double finished(PlanningCase on, int steps) {
        OneStepLookahead outlook =
                new OneStepLookahead(on.posterior(), on.goal().reliability(), on.filming(), READINGS);
        return Worth.of(outlook.after(on.logRatio(steps)), on, steps).finished();
    }
}
