package org.sunder.stock;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.sunder.engine.quantity.Force;
import org.sunder.web.Cursor;

/** Where a flyer's pin batches and their pull tests are kept. */
public interface PinBatchStore {

    PinBatch add(UUID flyer, PinBatchDetails details);

    PinBatch change(UUID flyer, UUID id, PinBatchDetails details);

    /** Adds a pull test; the batch gets a new version. */
    PinBatch pull(UUID flyer, UUID id, Force force);

    /**
     * Marks a pull as left out or as counting; the batch gets a new version.
     *
     * @param place of the pull in the order entered, from 0
     */
    PinBatch leaveOut(UUID flyer, UUID id, int place, boolean leftOut);

    /**
     * Deletes a pull for good; those after it move up, and the batch gets a new version.
     *
     * @param place of the pull in the order entered, from 0
     */
    PinBatch removePull(UUID flyer, UUID id, int place);

    void archive(UUID flyer, UUID id);

    Optional<PinBatch> find(UUID flyer, UUID id);

    /** Batches in use, newest first. */
    List<PinBatch> after(UUID flyer, Cursor cursor, int limit);
}
