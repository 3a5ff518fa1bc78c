package org.sunder.pool;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.sunder.json.StoredJson;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Rows of the pool. Changes run inside the caller's transaction. */
@Component
class PoolStore {

    private static final TypeReference<List<PoolNormal>> NORMALS = new TypeReference<>() {};

    private final JdbcClient jdbc;
    private final JsonMapper json = StoredJson.mapper();

    PoolStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A flyer who shares, and the version of the fleet. */
    record Sharer(UUID flyer, long version) {}

    /**
     * A flyer's part in a snapshot.
     *
     * @param version of the fleet that was read
     * @param digest tells logs apart
     * @param others what the others alone teach this flyer; null where they are too few
     */
    record Share(
            UUID flyer,
            long version,
            String digest,
            @Nullable List<PoolNormal> others) {}

    PoolChoices choices(UUID flyer) {
        return jdbc.sql("select pool_sharing, pool_using, pool_snapshot from flyer where id = ?")
                .param(flyer)
                .query((row, n) ->
                        new PoolChoices(row.getBoolean(1), row.getBoolean(2), row.getObject(3, Integer.class)))
                .single();
    }

    void share(UUID flyer, boolean sharing) {
        jdbc.sql("update flyer set pool_sharing = ? where id = ?")
                .params(sharing, flyer)
                .update();
    }

    void use(UUID flyer, boolean using) {
        jdbc.sql("update flyer set pool_using = ? where id = ?")
                .params(using, flyer)
                .update();
    }

    /** Lets a flyer who uses the pool stand on its newest snapshot. */
    void move(UUID flyer) {
        jdbc.sql("update flyer set pool_snapshot = (select max(number) from pool_snapshot) where id = ? and pool_using")
                .param(flyer)
                .update();
    }

    List<Sharer> sharers() {
        return jdbc.sql("select id, fleet_version from flyer where pool_sharing order by id")
                .query((row, n) -> new Sharer(row.getObject(1, UUID.class), row.getLong(2)))
                .list();
    }

    Optional<PoolSnapshot> newest() {
        return one("order by number desc fetch first 1 rows only");
    }

    /** The number of the newest that was made here, 0 before the first. */
    int newestMade() {
        return jdbc.sql("select coalesce(max(number), 0) from pool_snapshot where given_by is null")
                .query(Integer.class)
                .single();
    }

    Optional<PoolSnapshot> find(int number) {
        return one("where number = ?", number);
    }

    Optional<PoolSnapshot> of(String checksum) {
        return one("where checksum = ?", checksum);
    }

    /** The snapshots of lower numbers than one, newest first. */
    List<PoolSnapshot> before(int number, int limit) {
        return query("where number < ? order by number desc fetch first " + limit + " rows only", number)
                .list();
    }

    private Optional<PoolSnapshot> one(String which, Object... values) {
        return query(which, values).optional();
    }

    private JdbcClient.MappedQuerySpec<PoolSnapshot> query(String which, Object... values) {
        RowMapper<PoolSnapshot> reading = (row, n) -> new PoolSnapshot(
                row.getInt(1),
                row.getString(2),
                row.getObject(3, OffsetDateTime.class).toInstant(),
                json.readValue(row.getString(4), PoolFile.class));
        return jdbc.sql("select number, given_by, stored_at, document from pool_snapshot " + which)
                .params(List.of(values))
                .query(reading);
    }

    /** Stores the next snapshot. Where another instance was quicker, the key refuses it. */
    PoolSnapshot add(PoolFile file, @Nullable String givenBy, Instant now, List<Share> shares) {
        int number = newest().map(PoolSnapshot::number).orElse(0) + 1;
        jdbc.sql("insert into pool_snapshot (number, given_by, stored_at, checksum, document) values (?, ?, ?, ?, ?)")
                .param(number)
                .param(givenBy)
                .param(now.atOffset(ZoneOffset.UTC))
                .param(file.checksum())
                .param(json.writeValueAsString(file))
                .update();
        shares.forEach(share -> add(number, share));
        return new PoolSnapshot(number, givenBy, now, file);
    }

    private void add(int snapshot, Share share) {
        jdbc.sql("insert into pool_share (flyer_id, snapshot, fleet_version, digest, others) values (?, ?, ?, ?, ?)")
                .param(share.flyer())
                .param(snapshot)
                .param(share.version())
                .param(share.digest())
                .param(share.others() == null ? null : json.writeValueAsString(share.others()))
                .update();
    }

    /** Who took part in a snapshot. */
    List<Share> shares(int snapshot) {
        return jdbc.sql("select flyer_id, fleet_version, digest, others from pool_share where snapshot = ?"
                        + " order by flyer_id")
                .param(snapshot)
                .query(this::share)
                .list();
    }

    /** A flyer's part in a snapshot, where there was one. */
    Optional<Share> shareOf(UUID flyer, int snapshot) {
        return jdbc.sql("select flyer_id, fleet_version, digest, others from pool_share where flyer_id = ?"
                        + " and snapshot = ?")
                .params(flyer, snapshot)
                .query(this::share)
                .optional();
    }

    private Share share(ResultSet row, int number) throws SQLException {
        String others = row.getString(4);
        return new Share(
                row.getObject(1, UUID.class),
                row.getLong(2),
                row.getString(3),
                others == null ? null : json.readValue(others, NORMALS));
    }
}
