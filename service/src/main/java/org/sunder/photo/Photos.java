package org.sunder.photo;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.sunder.access.CurrentFlyer;
import org.sunder.groundtest.GroundTests;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;
import org.sunder.web.EntityTags;

/**
 * The photos of a flyer's tests, one a test. They stand beside the log and not in it: no answer rests on them, and no fleet changes
 * its version by them. A void test keeps its photo. Changes run inside the caller's transaction.
 */
@Service
public class Photos {

    /** Most photos that a flyer keeps. */
    public static final int MOST = 1000;

    /** Most bytes that they have together. */
    public static final long MOST_BYTES = 500L * 1024 * 1024;

    private final PhotoStore store;
    private final GroundTests tests;
    private final CurrentFlyer flyer;
    private final Clock clock;

    Photos(PhotoStore store, GroundTests tests, CurrentFlyer flyer, Clock clock) {
        this.store = store;
        this.tests = tests;
        this.flyer = flyer;
        this.clock = clock;
    }

    /**
     * What came of storing.
     *
     * @param photo as it is kept now
     * @param added whether the test had none before
     */
    public record Stored(Photo photo, boolean added) {}

    /**
     * Refuses, by throwing, a test that is not there.
     *
     * @throws ProblemException 404
     */
    public void requireTest(UUID test) {
        tests.get(test);
    }

    /**
     * What is known of the photo of a test.
     *
     * @throws ProblemException 404 where there is no such test, or none of it
     */
    public Photo get(UUID test) {
        requireTest(test);
        return store.find(flyer.id(), test).orElseThrow(() -> none(test));
    }

    /**
     * The bytes of a photo.
     *
     * @throws ProblemException 404 where it was removed or replaced meanwhile
     */
    public byte[] content(Photo photo) {
        return store.content(flyer.id(), photo).orElseThrow(() -> none(photo.testId()));
    }

    /** What is known of the photos at some joints, in the order of the tests' ids. */
    public List<Photo> of(Collection<UUID> joints) {
        return store.of(flyer.id(), joints);
    }

    /** How many photos the flyer has. */
    public int count() {
        return store.total(flyer.id()).photos();
    }

    /** What is known of all of a flyer's photos, in the order of the tests' ids. */
    public List<Photo> all() {
        return store.all(flyer.id());
    }

    /**
     * Keeps a photo. The same one again changes nothing, so that a phone may send it twice.
     *
     * @param ifMatch tag of the photo that it takes the place of; null where the test has none
     * @throws ProblemException 404 where there is no such test; 428 and 412 where another photo is there and was not named; 403
     *     where the key may add and not replace; 409 where the flyer keeps as many as may be
     */
    public Stored put(UUID test, CleanPhoto photo, @Nullable String ifMatch) {
        store.hold(flyer.id());
        requireTest(test);
        Photo fresh = photo(test, photo, clock.instant().truncatedTo(ChronoUnit.MICROS));
        Optional<Photo> there = store.find(flyer.id(), test);
        if (there.isPresent()) {
            if (there.get().digest().equals(fresh.digest())) {
                return new Stored(there.get(), false);
            }
            EntityTags.requireMatch(ifMatch, there.get().tag());
            if (flyer.mayOnlyLog()) {
                throw new ProblemException(
                        ProblemType.NOT_ALLOWED, "A log-only key adds a photo; replacing one takes a full key.");
            }
            store.remove(flyer.id(), test);
        } else if (ifMatch != null) {
            throw new ProblemException(
                    ProblemType.VERSION_MISMATCH, "The test has no photo that If-Match could name; send it without.");
        }
        requireRoom(fresh);
        store.add(flyer.id(), fresh, photo.content());
        return new Stored(fresh, there.isEmpty());
    }

    private void requireRoom(Photo fresh) {
        PhotoStore.Total total = store.total(flyer.id());
        if (total.photos() >= MOST || total.bytes() + fresh.bytes() > MOST_BYTES) {
            throw new ProblemException(
                    ProblemType.CONFLICT,
                    "A flyer keeps " + MOST + " photos at most, of 500 MB together; there are " + total.photos()
                            + " now. Remove some first.");
        }
    }

    /**
     * Adds a photo that an export holds. Limits on all of a flyer's photos are checked when all are there.
     *
     * @param storedAt when it was first taken in
     */
    public void takeIn(UUID test, CleanPhoto photo, Instant storedAt) {
        store.add(flyer.id(), photo(test, photo, storedAt), photo.content());
    }

    /**
     * Removes the photo of a test.
     *
     * @param ifMatch tag of the photo that is meant
     * @throws ProblemException 404 where there is none; 428 and 412 where it was not named
     */
    public void remove(UUID test, @Nullable String ifMatch) {
        store.hold(flyer.id());
        EntityTags.requireMatch(ifMatch, get(test).tag());
        store.remove(flyer.id(), test);
    }

    /** What will be known of a photo once it is kept. */
    private static Photo photo(UUID test, CleanPhoto photo, Instant storedAt) {
        return new Photo(test, photo.type(), photo.width(), photo.height(), photo.bytes(), photo.digest(), storedAt);
    }

    private static ProblemException none(UUID test) {
        return new ProblemException(ProblemType.NOT_FOUND, "There is no photo of the ground test " + test + ".");
    }
}
