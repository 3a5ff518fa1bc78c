package org.sunder.page;

import org.sunder.advice.FilmWords;
import org.sunder.advice.NextAdvice;

/**
 * Whether the flyer films the tests, and what that does at a joint.
 *
 * @param filming whether every firing is filmed
 * @param said what a film does here, in words
 * @param lacking whether the setup lacks what it takes for a speed to tell something
 */
record FilmsSheet(boolean filming, String said, boolean lacking) {

    static FilmsSheet of(boolean filming, NextAdvice next) {
        if (!filming) {
            return new FilmsSheet(
                    false,
                    "A filmed test tells more than what it did: how fast the parts left says how far above its threshold"
                            + " the charge was. Say that you film, and the plan counts on it: that saves about one test in six"
                            + " of a first rocket.",
                    false);
        }
        return next.filmed() == null
                ? new FilmsSheet(
                        true,
                        "You film your tests, but here a speed tells nothing: it takes the masses of both parts and the"
                                + " length of the shoulder.",
                        true)
                : new FilmsSheet(true, "You film your tests. " + FilmWords.of(next.filmed()), false);
    }
}
