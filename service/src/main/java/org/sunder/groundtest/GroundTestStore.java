package org.sunder.groundtest;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.sunder.web.Cursor;

/** Where the log is kept: rows are added, never changed. */
public interface GroundTestStore {

    /** Adds a test. */
    void add(UUID flyer, GroundTest test);

    /** Adds the newest mark of a test: a void, or the lifting of one. */
    void mark(UUID flyer, GroundTest marked);

    /** The test with that id, if it is the flyer's. */
    Optional<GroundTest> find(UUID flyer, UUID id);

    /** Firings of a joint on one occasion, newest first. */
    List<GroundTest> page(UUID flyer, UUID jointId, Occasion occasion, Cursor cursor, int limit);

    /** Every test of these joints in the order they were fired. */
    List<GroundTest> of(UUID flyer, Collection<UUID> joints);

    /** Every test of a flyer in the order they were fired. */
    List<GroundTest> all(UUID flyer);
}
