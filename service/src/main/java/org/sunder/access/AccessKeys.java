package org.sunder.access;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.sunder.persistence.RowIds;
import org.sunder.persistence.StorageRoom;

/** Keys and sessions in their table. Asked anew for every request, so that a key revoked is refused at once. */
@Component
public class AccessKeys {

    private static final Logger LOG = LoggerFactory.getLogger(AccessKeys.class);

    private static final Duration SESSION = Duration.ofDays(30);
    private static final Duration CLAIMED = Duration.ofDays(365);
    private static final Duration NOTED = Duration.ofMinutes(1); // how exactly the last use is kept

    private final JdbcClient jdbc;
    private final Clock clock;
    private final StorageRoom room;

    AccessKeys(JdbcClient jdbc, Clock clock, StorageRoom room) {
        this.jdbc = jdbc;
        this.room = room;
        this.clock = clock;
    }

    /** Makes a key. */
    public IssuedKey issue(UUID flyer, String name, Scope scope, @Nullable Instant expiresAt) {
        return issue(flyer, null, name, scope, expiresAt);
    }

    /** Opens a session of a browser: a key of its own that ends with the one it came from. */
    public IssuedKey openSession(Grant grant) {
        Instant end = clock.instant().plus(SESSION);
        return issue(grant.flyerId(), grant.keyId(), "browser session", grant.scope(), end);
    }

    /** Makes a key that does nothing but sign one phone in, which then may log. */
    public IssuedKey issueOnce(UUID flyer, String name, Instant expiresAt) {
        IssuedKey made = issue(flyer, name, Scope.LOG_ONLY, expiresAt);
        jdbc.sql("update access_key set once = true where flyer_id = ? and id = ?")
                .params(flyer, made.key().id())
                .update();
        return made;
    }

    /**
     * Takes a key that signs in once. From then on nobody knows its text, and it stands for the phone that showed it, for a year.
     * Empty where it is unknown, used, revoked or past its end. Runs inside the caller's transaction.
     */
    public Optional<Grant> claim(String secret) {
        Instant now = clock.instant();
        String unknown = Secrets.digest(Secrets.fresh());
        int claimed = jdbc.sql(
                        "update access_key set once = false, digest = ?, expires_at = ? where digest = ? and once"
                                + " and revoked_at is null and expires_at > ?")
                .params(unknown, at(now.plus(CLAIMED)), Secrets.digest(secret), at(now))
                .update();
        Optional<Grant> grant = claimed == 0 ? Optional.empty() : grant(unknown);
        grant.ifPresent(phone -> LOG.info("The key {} of flyer {} signed a phone in", phone.keyId(), phone.flyerId()));
        return grant;
    }

    private IssuedKey issue(UUID flyer, @Nullable UUID parent, String name, Scope scope, @Nullable Instant expiresAt) {
        String secret = Secrets.fresh();
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        Instant end = expiresAt == null ? null : expiresAt.truncatedTo(ChronoUnit.MICROS);
        AccessKey key = new AccessKey(RowIds.next(), name, scope, Secrets.prefix(secret), now, end, null, null);
        jdbc.sql("insert into access_key (flyer_id, id, parent_id, name, scope, prefix, digest, created_at, expires_at)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(flyer, key.id())
                .param(parent)
                .params(name, scope.name(), key.prefix(), Secrets.digest(secret), at(now))
                .param(end == null ? null : at(end))
                .update();
        LOG.info("The {} {} of flyer {} was made: {}", parent == null ? "key" : "session", key.id(), flyer, scope);
        return new IssuedKey(key, secret);
    }

    /** What a key allows; empty where it is unknown, revoked or past its end, or the key it came from is. */
    public Optional<Grant> find(String secret) {
        return grant(Secrets.digest(secret));
    }

    private Optional<Grant> grant(String digest) {
        OffsetDateTime now = at(clock.instant());
        Optional<Found> found = jdbc.sql(
                        "select k.flyer_id, k.id, k.parent_id, k.scope, k.last_used_at, coalesce(p.name, k.name) as called"
                                + " from access_key k left join access_key p on p.flyer_id = k.flyer_id and p.id = k.parent_id"
                                + " where k.digest = ? and not k.once and k.revoked_at is null and p.revoked_at is null"
                                + " and (k.expires_at is null or k.expires_at > ?)"
                                + " and (p.expires_at is null or p.expires_at > ?)")
                .params(digest, now, now)
                .query(AccessKeys::found)
                .optional();
        found.filter(key -> key.lastUsed() == null
                        || key.lastUsed().isBefore(now.minus(NOTED).toInstant()))
                .filter(key -> room.isLeft()) // reading goes on where nothing can be noted
                .ifPresent(key -> noteUse(key.grant(), now));
        return found.map(Found::grant);
    }

    private void noteUse(Grant grant, OffsetDateTime now) {
        jdbc.sql("update access_key set last_used_at = ? where flyer_id = ? and id in (?, ?)")
                .params(now, grant.flyerId(), grant.keyId(), grant.limitedAs())
                .update();
    }

    /** A flyer's keys, newest first; sessions are left out. */
    public List<AccessKey> of(UUID flyer) {
        return jdbc.sql("select id, name, scope, prefix, created_at, expires_at, last_used_at, revoked_at"
                        + " from access_key where flyer_id = ? and parent_id is null order by created_at desc, id desc")
                .params(flyer)
                .query(AccessKeys::key)
                .list();
    }

    /** Revokes a key or a session, at once; false where the flyer has none with that id. */
    public boolean revoke(UUID flyer, UUID id) {
        int revoked = jdbc.sql(
                        "update access_key set revoked_at = coalesce(revoked_at, ?) where flyer_id = ? and id = ?")
                .params(at(clock.instant()), flyer, id)
                .update();
        if (revoked > 0) {
            LOG.info("The key {} of flyer {} was revoked", id, flyer);
        }
        return revoked > 0;
    }

    private static Found found(ResultSet row, int number) throws SQLException {
        UUID id = row.getObject("id", UUID.class);
        UUID parent = row.getObject("parent_id", UUID.class);
        Grant grant = new Grant(
                row.getObject("flyer_id", UUID.class),
                id,
                parent == null ? id : parent,
                Scope.valueOf(row.getString("scope")),
                row.getString("called"));
        return new Found(grant, instant(row, "last_used_at"));
    }

    private static AccessKey key(ResultSet row, int number) throws SQLException {
        return new AccessKey(
                row.getObject("id", UUID.class),
                row.getString("name"),
                Scope.valueOf(row.getString("scope")),
                row.getString("prefix"),
                row.getObject("created_at", OffsetDateTime.class).toInstant(),
                instant(row, "expires_at"),
                instant(row, "last_used_at"),
                instant(row, "revoked_at"));
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
        return time == null ? null : time.toInstant();
    }

    private static OffsetDateTime at(Instant instant) {
        return instant.truncatedTo(ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    private record Found(Grant grant, @Nullable Instant lastUsed) {}
}
