package org.sunder;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

/** A machine's clock that a test sets wrong: it runs, but elsewhere. */
public final class MovedClock extends Clock {

    private final AtomicReference<Duration> ahead = new AtomicReference<>(Duration.ZERO);

    /** Sets it, from now on, ahead of the right time or, with a negative duration, behind it. */
    public void set(Duration aheadOfTime) {
        ahead.set(aheadOfTime);
    }

    @Override
    public Instant instant() {
        return Instant.now().plus(ahead.get());
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("the one clock is in UTC");
    }
}
