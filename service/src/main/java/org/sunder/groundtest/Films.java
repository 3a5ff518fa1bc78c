package org.sunder.groundtest;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.sunder.access.CurrentFlyer;
import org.sunder.persistence.FleetVersions;

/**
 * Whether a flyer films every firing, and how good the speeds of those films are: one choice for all rockets of a flyer. The
 * choice of charges rests on it, so a change of it is one of the fleet. Changes run inside the caller's transaction.
 */
@Service
public class Films {

    /** How good a speed from a phone's film is, in percent, where nothing else is said; see service/docs/film.md. */
    public static final int USUAL_PERCENT = 5;

    private final JdbcClient jdbc;
    private final FleetVersions versions;
    private final CurrentFlyer flyer;

    Films(JdbcClient jdbc, FleetVersions versions, CurrentFlyer flyer) {
        this.jdbc = jdbc;
        this.versions = versions;
        this.flyer = flyer;
    }

    /** How good the films of a flyer are, one standard deviation of a speed in percent; empty where nothing is filmed. */
    public Optional<BigDecimal> of(UUID who) {
        return jdbc.sql("select filmed_percent from flyer where id = ?").param(who).query(Integer.class).list().stream()
                .filter(Objects::nonNull)
                .map(percent -> BigDecimal.valueOf(percent.longValue()))
                .findFirst();
    }

    /** What the flyer says whose request it is. */
    public Optional<BigDecimal> own() {
        return of(flyer.id());
    }

    /**
     * From now on the choice of charges counts on films, or on none.
     *
     * @param percent 3 to 50, or null where nothing is filmed
     */
    public void choose(@Nullable Integer percent) {
        versions.advance(flyer.id());
        jdbc.sql("update flyer set filmed_percent = ? where id = ?")
                .param(percent)
                .param(flyer.id())
                .update();
    }
}
