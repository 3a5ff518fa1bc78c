package org.sunder.access;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.sunder.persistence.RowIds;
import org.sunder.problem.ProblemException;

/** The flyers of a service. Changes run inside the caller's transaction. */
@Component
public class Flyers {

    private final JdbcClient jdbc;
    private final Clock clock;

    Flyers(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Enters a flyer. */
    public Flyer enter(String name) {
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        Flyer flyer = new Flyer(RowIds.next(), name, now);
        jdbc.sql("insert into flyer (id, name, created_at) values (?, ?, ?)")
                .params(flyer.id(), name, now.atOffset(ZoneOffset.UTC))
                .update();
        return flyer;
    }

    /** All flyers, oldest first. */
    public List<Flyer> all() {
        return jdbc.sql("select id, name, created_at from flyer order by created_at, id")
                .query((row, number) -> new Flyer(
                        row.getObject("id", UUID.class),
                        row.getString("name"),
                        row.getObject("created_at", OffsetDateTime.class).toInstant()))
                .list();
    }

    /** The flyer. */
    public Flyer get(UUID id) {
        return all().stream()
                .filter(flyer -> flyer.id().equals(id))
                .findFirst()
                .orElseThrow(() -> ProblemException.notFound("flyer", id));
    }
}
