package org.sunder.persistence;

import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Counts the changes of each flyer's fleet: airframes, joints, setups, tests and voids. What was read or computed at one
 * version holds as long as that version stands, on every instance. Whoever changes a fleet advances its version first, in
 * the same transaction, and so holds the flyer's row until it is committed.
 */
@Component
public class FleetVersions {

    private final JdbcClient jdbc;

    FleetVersions(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The version that stands. */
    public long of(UUID flyer) {
        return jdbc.sql("select fleet_version from flyer where id = ?")
                .params(flyer)
                .query(Long.class)
                .single();
    }

    /** Counts a change, inside the transaction that makes it. */
    public void advance(UUID flyer) {
        jdbc.sql("update flyer set fleet_version = fleet_version + 1 where id = ?")
                .params(flyer)
                .update();
    }

    /**
     * Counts a change that rests on a version, inside the transaction that makes it.
     *
     * @throws StaleFleetException where that version stands no more
     */
    public void advanceFrom(UUID flyer, long version) {
        int changed = jdbc.sql("update flyer set fleet_version = fleet_version + 1 where id = ? and fleet_version = ?")
                .params(flyer, version)
                .update();
        if (changed == 0) {
            throw new StaleFleetException();
        }
    }
}
