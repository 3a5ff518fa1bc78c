package org.sunder.access.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import java.time.Duration;
import org.sunder.access.AccessSettings;

/** How often a key or an address may ask. Counted by each instance for itself: a limit on load, not an allowance. */
final class Limits {

    private static final int REMEMBERED = 10_000;
    private static final Duration PERIOD = Duration.ofMinutes(1);

    private final AccessSettings settings;
    private final Cache<String, Bucket> buckets = Caffeine.newBuilder()
            .maximumSize(REMEMBERED)
            .executor(Runnable::run)
            .build();

    Limits(AccessSettings settings) {
        this.settings = settings;
    }

    /** Counts a request; 0 where it may go on, else the seconds to wait. */
    long request(String whose) {
        return take("request " + whose, settings.requestsPerMinute());
    }

    /** Counts a key that was refused; 0 below the limit, else the seconds to wait. */
    long failedKey(String address) {
        return take("failed key " + address, settings.failedKeysPerMinute());
    }

    private long take(String name, int perMinute) {
        ConsumptionProbe probe = bucket(name, perMinute).tryConsumeAndReturnRemaining(1);
        return probe.isConsumed()
                ? 0
                : Duration.ofNanos(probe.getNanosToWaitForRefill()).toSeconds() + 1;
    }

    private Bucket bucket(String name, int perMinute) {
        return buckets.get(
                name,
                fresh -> Bucket.builder()
                        .addLimit(limit -> limit.capacity(perMinute).refillGreedy(perMinute, PERIOD))
                        .build());
    }
}
