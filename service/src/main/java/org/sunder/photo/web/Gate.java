package org.sunder.photo.web;

import java.io.IOException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** Lets few pass at a time, so that photos under way never fill the memory; the others wait for a while. */
final class Gate {

    private static final long PATIENCE_SECONDS = 20;

    private final Semaphore places;

    Gate(int places) {
        this.places = new Semaphore(places, true);
    }

    /** What is done with a photo. */
    @FunctionalInterface
    interface Work<T> {
        T run() throws IOException;
    }

    /**
     * Does the work as soon as there is a place.
     *
     * @throws ProblemException 429 where there is none for long
     */
    <T> T pass(Work<T> work) throws IOException {
        if (!placeFound()) {
            throw new ProblemException(
                    ProblemType.TOO_MANY_REQUESTS, "Many photos are under way just now; nothing was stored.");
        }
        try {
            return work.run();
        } finally {
            places.release();
        }
    }

    private boolean placeFound() {
        try {
            return places.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
