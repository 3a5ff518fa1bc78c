package org.sunder.pool;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import org.sunder.access.CurrentFlyer;
import org.sunder.airframe.SetupStored;
import org.sunder.persistence.FleetVersions;

/**
 * What a flyer shares and uses. Each answer of a flyer rests on one snapshot, and that changes only where the flyer asks for it or
 * describes a setup: never between a test and the answer to it. Changes run inside the caller's transaction.
 */
@Service
public class PoolUse {

    private final PoolStore store;
    private final FleetVersions versions;
    private final CurrentFlyer flyer;

    PoolUse(PoolStore store, FleetVersions versions, CurrentFlyer flyer) {
        this.store = store;
        this.versions = versions;
        this.flyer = flyer;
    }

    /** What the flyer chose. */
    public PoolChoices choices() {
        return store.choices(flyer.id());
    }

    /** Puts the own log into the next snapshot, or leaves it out from there on. */
    public PoolChoices share(boolean sharing) {
        store.share(flyer.id(), sharing);
        return choices();
    }

    /** Lets answers rest on the newest snapshot, or on none. */
    public PoolChoices use(boolean using) {
        if (choices().using() != using) {
            versions.advance(flyer.id());
            store.use(flyer.id(), using);
            store.move(flyer.id());
        }
        return choices();
    }

    /** Moves to the newest snapshot, where the pool is used. */
    public PoolChoices move() {
        versions.advance(flyer.id());
        store.move(flyer.id());
        return choices();
    }

    /** A flyer who describes a setup goes on with the newest snapshot; the version of the fleet is advanced with the setup. */
    @EventListener
    void described(SetupStored stored) {
        store.move(stored.flyer());
    }

    /**
     * What a flyer's answers start from; empty where they start from the model's own priors: the pool is not used, there is none,
     * or too few others took part in it.
     */
    public Optional<PoolPrior> prior(UUID of) {
        PoolChoices choices = store.choices(of);
        Integer snapshot = choices.snapshot();
        if (!choices.using() || snapshot == null) {
            return Optional.empty();
        }
        return prior(of, snapshot);
    }

    /** What they start from, or would start from were the pool used. */
    public Optional<PoolPrior> offered(UUID of) {
        Optional<PoolPrior> used = prior(of);
        if (used.isPresent()) {
            return used;
        }
        return store.newest().map(PoolSnapshot::number).flatMap(newest -> prior(of, newest));
    }

    /** From the others alone where the flyer took part, else from all. */
    private Optional<PoolPrior> prior(UUID of, int snapshot) {
        return store.find(snapshot).flatMap(known -> {
            int flyers = known.file().flyers();
            Optional<PoolStore.Share> own = store.shareOf(of, snapshot);
            return own.isEmpty()
                    ? Optional.of(prior(snapshot, flyers, known.file().learned()))
                    : Optional.ofNullable(own.get().others()).map(others -> prior(snapshot, flyers - 1, others));
        });
    }

    private static PoolPrior prior(int snapshot, int flyers, List<PoolNormal> learned) {
        return new PoolPrior(snapshot, flyers, PoolFileRules.prior(learned));
    }
}
