package org.sunder.web;

import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.concurrent.TimeUnit;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/**
 * Stored answers of creations are kept for 90 days, so that a phone that syncs late still finds its own; older ones are let go
 * once a day. Any instance may do it.
 */
@Component
@EnableScheduling
public class KeptAnswers {

    /** How long an answer can be asked for again. */
    public static final Duration KEPT = Duration.ofDays(90);

    private final JdbcClient jdbc;
    private final Clock clock;

    KeptAnswers(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Lets go of the answers that are too old; answers how many. */
    @Scheduled(initialDelay = 1, fixedDelay = 24, timeUnit = TimeUnit.HOURS)
    public int letGo() {
        return jdbc.sql("delete from idempotent_answer where created_at < ?")
                .param(OffsetDateTime.now(clock).minus(KEPT))
                .update();
    }
}
