package org.sunder.pool;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** The snapshots of this service: read, and taken in from a file. */
@Service
public class PoolSnapshots {

    private static final int LONGEST_NAME = 100;

    private final PoolStore store;
    private final Clock clock;

    PoolSnapshots(PoolStore store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** The newest. */
    public Optional<PoolSnapshot> newest() {
        return store.newest();
    }

    /** The snapshots of lower numbers than one, newest first. */
    public List<PoolSnapshot> before(int number, int limit) {
        return store.before(number, limit);
    }

    /**
     * A snapshot.
     *
     * @throws ProblemException 404 where there is none of that number
     */
    public PoolSnapshot get(int number) {
        return store.find(number)
                .orElseThrow(() -> new ProblemException(
                        ProblemType.NOT_FOUND, "There is no snapshot " + number + " of the pool."));
    }

    /**
     * Takes in a file as the newest snapshot; one that is here already stays what it is. Runs inside the caller's transaction.
     *
     * @param givenBy who gave it
     * @throws ProblemException 400 naming everything that is wrong with it
     */
    public PoolSnapshot takeIn(PoolFile file, String givenBy) {
        if (givenBy.isBlank() || givenBy.length() > LONGEST_NAME) {
            throw ProblemException.invalid("givenBy", givenBy, "say who gave the file", "1 to 100 characters");
        }
        PoolFileRules.check(file);
        return store.of(file.checksum())
                .orElseGet(() ->
                        store.add(file, givenBy.strip(), clock.instant().truncatedTo(ChronoUnit.MICROS), List.of()));
    }
}
