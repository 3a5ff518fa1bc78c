package org.sunder.persistence;

import java.util.UUID;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/**
 * Writes that rest on what was computed from a fleet: read, compute, and write only if the fleet's version still stands. On
 * this instance a flyer's writers take turns, so that none computes in vain; what another instance or another kind of change
 * wrote meanwhile makes a writer try again.
 */
@Component
public class FleetWrites {

    private static final int ATTEMPTS = 50;
    private static final int STRIPES = 64;

    private final Lock[] turns =
            IntStream.range(0, STRIPES).mapToObj(i -> new ReentrantLock(true)).toArray(Lock[]::new);

    /**
     * Runs an attempt until the version it rests on stood.
     *
     * @param attempt reads, computes and commits; throws {@link StaleFleetException} where the version stands no more
     * @throws ProblemException 409 where others were quicker every time
     */
    public <T> T inTurn(UUID flyer, Supplier<T> attempt) {
        Lock turn = turns[Math.floorMod(flyer.hashCode(), STRIPES)];
        turn.lock();
        try {
            for (int i = 0; i < ATTEMPTS; i++) {
                try {
                    return attempt.get();
                } catch (StaleFleetException changed) {
                    // worked out anew on what stands now
                }
            }
        } finally {
            turn.unlock();
        }
        throw new ProblemException(
                ProblemType.CONFLICT, "The fleet was changed by others each time; nothing was stored. Send it again.");
    }
}
