package org.sunder.pool;

import org.sunder.engine.learning.model.FlyerPrior;
import org.sunder.engine.learning.model.Priors;

/**
 * What a flyer's answers start from where others were learned from.
 *
 * @param snapshot number of the snapshot
 * @param flyers how many others it was learned from
 * @param prior what it says of this flyer: from the others alone
 */
public record PoolPrior(int snapshot, int flyers, FlyerPrior prior) {

    /** The model's priors with it. */
    public Priors priors() {
        return Priors.standard().with(prior);
    }
}
