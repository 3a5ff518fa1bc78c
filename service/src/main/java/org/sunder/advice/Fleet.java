package org.sunder.advice;

import org.springframework.util.ConcurrentLruCache;
import org.sunder.engine.learning.FleetModel;
import org.sunder.engine.learning.Leaf;
import org.sunder.engine.learning.LeafPosterior;

/** A fleet's model with the posteriors asked for lately; the same question of the same model has the same answer. */
final class Fleet {

    /** Posteriors kept; each is some 0.2 MB. */
    private static final int KEPT = 16;

    private final FleetModel model;
    private final ConcurrentLruCache<Leaf, LeafPosterior> posteriors;

    Fleet(FleetModel model) {
        this.model = model;
        this.posteriors = new ConcurrentLruCache<>(KEPT, model::leaf);
    }

    FleetModel model() {
        return model;
    }

    /** What is known of one setup. */
    LeafPosterior posterior(Leaf leaf) {
        return posteriors.get(leaf);
    }
}
