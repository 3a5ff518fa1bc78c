package org.sunder.access;

import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.sunder.persistence.DurableTransactions;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** Gives keys and takes them back. */
@Service
public class KeyGiving {

    private static final Duration AT_HAND = Duration.ofMinutes(10);
    private static final OffsetDateTime LATEST = OffsetDateTime.parse("9998-01-01T00:00:00Z");

    private final AccessKeys keys;
    private final CurrentFlyer current;
    private final DurableTransactions transactions;
    private final Clock clock;

    KeyGiving(AccessKeys keys, CurrentFlyer current, DurableTransactions transactions, Clock clock) {
        this.keys = keys;
        this.current = current;
        this.transactions = transactions;
        this.clock = clock;
    }

    /**
     * Gives a key to a flyer. Runs inside the caller's transaction.
     *
     * @throws ProblemException 403 where someone without an admin key gives one, 400 where it would have ended already
     */
    public IssuedKey give(UUID flyer, String name, Scope scope, @Nullable OffsetDateTime expiresAt) {
        if (scope == Scope.ADMIN && !current.admin()) {
            throw new ProblemException(ProblemType.NOT_ALLOWED, "An admin key is given by an admin key only.");
        }
        if (expiresAt != null && (!expiresAt.isAfter(OffsetDateTime.now(clock)) || expiresAt.isAfter(LATEST))) {
            throw ProblemException.invalid(
                    "/expiresAt", expiresAt, "the key would have ended, or never end", "a time to come");
        }
        return keys.issue(flyer, name, scope, expiresAt == null ? null : expiresAt.toInstant());
    }

    /**
     * Gives a phone at hand a way in: a key that signs in once, within ten minutes, and then may only log.
     *
     * @param name whose phone
     */
    public IssuedKey giveOnce(UUID flyer, String name) {
        return transactions.commit(
                () -> keys.issueOnce(flyer, name, clock.instant().plus(AT_HAND)));
    }

    /**
     * Takes a key back, at once.
     *
     * @throws ProblemException 404 where the flyer has no such key
     */
    public void takeBack(UUID flyer, UUID id) {
        if (!transactions.commit(() -> keys.revoke(flyer, id))) {
            throw ProblemException.notFound("access key", id);
        }
    }
}
