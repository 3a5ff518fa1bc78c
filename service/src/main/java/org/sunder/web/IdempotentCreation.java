package org.sunder.web;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.sunder.persistence.Digests;
import org.sunder.persistence.DurableTransactions;
import org.sunder.persistence.FleetWrites;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;
import tools.jackson.databind.json.JsonMapper;

/**
 * Creation that may be repeated: the same key and the same body give the first answer again. The answer is stored in the
 * transaction that stores the row, so that neither exists without the other. An answer that holds a secret is not stored:
 * in its place stands what a repeated request is told.
 */
@Component
public class IdempotentCreation {

    private static final int LONGEST_KEY = 128;
    private static final int CREATED = 201;

    private final DurableTransactions transactions;
    private final FleetWrites writes;
    private final JdbcClient jdbc;
    private final JsonMapper json;
    private final Requester flyer;
    private final Clock clock;
    private final Set<String> inFlight = ConcurrentHashMap.newKeySet();

    IdempotentCreation(
            DurableTransactions transactions,
            FleetWrites writes,
            JdbcClient jdbc,
            JsonMapper json,
            Requester flyer,
            Clock clock) {
        this.transactions = transactions;
        this.writes = writes;
        this.jdbc = jdbc;
        this.json = json;
        this.flyer = flyer;
        this.clock = clock;
    }

    /**
     * Creates once.
     *
     * @param operation which operation on which parent; keys of different operations do not meet
     * @param key the Idempotency-Key header, or null
     * @param request the request as read: two that read the same are the same
     * @param work creates, inside the transaction
     * @return 201 with Location and ETag, or the first answer again
     * @throws ProblemException 409 where the first answer is being made, or was shown once; 422 where the body is another
     */
    public ResponseEntity<Object> create(
            String operation, @Nullable String key, Object request, Supplier<Created> work) {
        return create(operation, key, request, storing -> transactions.commit(() -> storing.apply(work.get())));
    }

    /**
     * Creates once what rests on a computation from the fleet.
     *
     * @param operation which operation on which parent
     * @param key the Idempotency-Key header, or null
     * @param request the request as read
     * @param attempt reads and computes, outside of any transaction; what it answers then creates, inside one
     * @return as {@link #create}
     */
    public ResponseEntity<Object> createFromFleet(
            String operation, @Nullable String key, Object request, Supplier<Supplier<Created>> attempt) {
        return create(
                operation,
                key,
                request,
                storing -> writes.inTurn(flyer.id(), () -> {
                    Supplier<Created> work = attempt.get();
                    return transactions.commit(() -> storing.apply(work.get()));
                }));
    }

    /** Creates, given what stores the answer in the transaction that stores the row. */
    @FunctionalInterface
    private interface Creation {
        Finished run(Function<Created, Finished> storing);
    }

    private ResponseEntity<Object> create(String operation, @Nullable String key, Object request, Creation creation) {
        if (key == null) {
            return answer(creation.run(created -> shown("", created)));
        }
        if (key.isBlank() || key.length() > LONGEST_KEY) {
            throw ProblemException.invalid(
                    "Idempotency-Key", key, "the key must have 1 to 128 characters", "1 to 128 characters");
        }
        String fingerprint = Digests.sha256(json.writeValueAsString(request));
        String claim = flyer.id() + " " + operation + " " + key;
        if (!inFlight.add(claim)) {
            throw new ProblemException(ProblemType.REQUEST_IN_FLIGHT, "The first request with this key goes on.");
        }
        try {
            return once(operation, key, fingerprint, creation);
        } finally {
            inFlight.remove(claim);
        }
    }

    private ResponseEntity<Object> once(String operation, String key, String fingerprint, Creation creation) {
        Optional<Finished> known = find(operation, key);
        if (known.isPresent()) {
            return replay(known.get(), fingerprint);
        }
        try {
            return answer(creation.run(created -> {
                Finished shown = shown(fingerprint, created);
                store(operation, key, created.repeated() == null ? shown : shown.keptAs(created.repeated()));
                return shown;
            }));
        } catch (DataIntegrityViolationException e) {
            // Another instance may have stored the same key first; if not, the failure is the work's own.
            return replay(find(operation, key).orElseThrow(() -> e), fingerprint);
        }
    }

    private ResponseEntity<Object> replay(Finished known, String fingerprint) {
        if (!known.fingerprint().equals(fingerprint)) {
            throw new ProblemException(
                    ProblemType.IDEMPOTENCY_KEY_REUSED, "This key was used with another body before.");
        }
        if (known.status() == ProblemType.SHOWN_ONCE.status().value()) {
            throw new ProblemException(ProblemType.SHOWN_ONCE, known.body());
        }
        transactions.catchUp();
        return answer(known);
    }

    private Finished shown(String fingerprint, Created created) {
        String body = json.writeValueAsString(created.body());
        return new Finished(fingerprint, CREATED, created.location(), created.entityTag(), body);
    }

    private Optional<Finished> find(String operation, String key) {
        return jdbc.sql("select fingerprint, status, location, entity_tag, body from idempotent_answer"
                        + " where flyer_id = ? and operation = ? and idempotency_key = ?")
                .params(flyer.id(), operation, key)
                .query((row, n) -> new Finished(
                        row.getString(1), row.getInt(2), row.getString(3), row.getString(4), row.getString(5)))
                .optional();
    }

    private void store(String operation, String key, Finished finished) {
        jdbc.sql("insert into idempotent_answer (flyer_id, operation, idempotency_key, fingerprint, status, location,"
                        + " entity_tag, body, created_at) values (?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(flyer.id(), operation, key, finished.fingerprint(), finished.status(), finished.location())
                .param(finished.entityTag())
                .params(finished.body(), OffsetDateTime.now(clock))
                .update();
    }

    private static ResponseEntity<Object> answer(Finished finished) {
        HttpHeaders headers = new HttpHeaders();
        headers.set(HttpHeaders.LOCATION, finished.location());
        if (finished.entityTag() != null) {
            headers.set(HttpHeaders.ETAG, finished.entityTag());
        }
        return ResponseEntity.status(finished.status())
                .headers(headers)
                .contentType(MediaType.APPLICATION_JSON)
                .body(finished.body());
    }

    private record Finished(
            String fingerprint,
            int status,
            String location,
            @Nullable String entityTag,
            String body) {

        Finished keptAs(String told) {
            return new Finished(fingerprint, ProblemType.SHOWN_ONCE.status().value(), location, entityTag, told);
        }
    }

    /** The operation of one parent resource, as a key's scope. */
    public static String scope(String operation, UUID parent) {
        return operation + " " + parent;
    }
}
