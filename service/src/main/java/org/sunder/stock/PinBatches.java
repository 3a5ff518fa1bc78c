package org.sunder.stock;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.LongConsumer;
import org.springframework.stereotype.Service;
import org.sunder.access.CurrentFlyer;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.quantity.Force;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;
import org.sunder.web.Cursor;

/** What a flyer does with batches of pins. Changes run inside the caller's transaction. */
@Service
public class PinBatches {

    /** Most pull tests of a batch. */
    public static final int MOST_PULLS = 1000;

    private final PinBatchStore store;
    private final CurrentFlyer flyer;

    PinBatches(PinBatchStore store, CurrentFlyer flyer) {
        this.store = store;
        this.flyer = flyer;
    }

    /** Enters a batch. */
    public PinBatch enter(PinBatchDetails details) {
        return store.add(flyer.id(), details);
    }

    /**
     * Changes what is said about a batch; its pull tests stay.
     *
     * @param versionCheck refuses, by throwing, a version that the change is not based on
     */
    public PinBatch change(UUID id, LongConsumer versionCheck, PinBatchDetails details) {
        PinBatch batch = getActive(id);
        versionCheck.accept(batch.version());
        if (!batch.pulls().isEmpty() && batch.details().thread() != details.thread()) {
            throw new ProblemException(
                    ProblemType.CONFLICT, "Pins of this thread were pulled; enter another batch for another thread.");
        }
        return store.change(flyer.id(), id, details);
    }

    /** Adds a break force. Setups that named the batch keep what it was. */
    public PinBatch pull(UUID id, Force force) {
        PinBatch batch = getActive(id);
        checkForce(force);
        if (batch.pulls().size() >= MOST_PULLS) {
            throw new ProblemException(ProblemType.CONFLICT, "A batch takes " + MOST_PULLS + " pull tests at most.");
        }
        return store.pull(flyer.id(), id, force);
    }

    /**
     * Leaves a pull out, or takes it back; where it is so already nothing changes. Setups that named the batch keep what it
     * was.
     *
     * @param number of the pull in the order entered, from 1
     * @throws ProblemException 404 where there is no such pull, 409 where too few would count
     */
    public PinBatch leaveOut(UUID id, int number, boolean leftOut) {
        PinBatch batch = getActive(id);
        if (pull(batch, number).leftOut() == leftOut) {
            return batch;
        }
        if (leftOut && batch.counted().size() <= PinBatch.FEWEST) {
            throw new ProblemException(
                    ProblemType.CONFLICT,
                    "At least " + PinBatch.FEWEST + " pulls must count. Pull another pin before this one is left out.");
        }
        return store.leaveOut(flyer.id(), id, number - 1, leftOut);
    }

    /**
     * Deletes a pull that was entered by mistake; those after it move up. Setups that named the batch keep what it was.
     *
     * @param number of the pull in the order entered, from 1
     * @param versionCheck refuses, by throwing, a version that this is not based on
     * @throws ProblemException 404 where there is no such pull, 409 where the batch would lose its strength by it
     */
    public PinBatch removePull(UUID id, int number, LongConsumer versionCheck) {
        PinBatch batch = getActive(id);
        PullTest pull = pull(batch, number);
        versionCheck.accept(batch.version());
        if (!pull.leftOut() && batch.counted().size() == PinBatch.FEWEST) {
            throw new ProblemException(
                    ProblemType.CONFLICT,
                    "With " + PinBatch.FEWEST
                            + " pulls that count the batch has a strength, which setups rest on. Add the"
                            + " right pull before this one is deleted.");
        }
        return store.removePull(flyer.id(), id, number - 1);
    }

    private static PullTest pull(PinBatch batch, int number) {
        if (number < 1 || number > batch.pulls().size()) {
            throw new ProblemException(
                    ProblemType.NOT_FOUND, "There is no pull " + number + " of pin batch " + batch.id() + ".");
        }
        return batch.pulls().get(number - 1);
    }

    /**
     * Refuses, by throwing, a force that no pin breaks at.
     *
     * @throws ProblemException naming the field
     */
    public static void checkForce(Force force) {
        if (!SetupBounds.PIN_FORCE.contains(force.newtons())) {
            throw ProblemException.invalid(
                    "/force",
                    force.value() + " " + force.unit(),
                    "the break force is out of bounds",
                    SetupBounds.PIN_FORCE.text());
        }
    }

    /** Puts a batch away. */
    public void archive(UUID id, LongConsumer versionCheck) {
        versionCheck.accept(getActive(id).version());
        store.archive(flyer.id(), id);
    }

    /** The batch, archived or not. */
    public PinBatch get(UUID id) {
        return find(id).orElseThrow(() -> ProblemException.notFound("pin batch", id));
    }

    /** The batch, archived or not, if there is one. */
    public Optional<PinBatch> find(UUID id) {
        return store.find(flyer.id(), id);
    }

    /** A page of batches in use, newest first, with one to spare. */
    public List<PinBatch> page(Cursor cursor, int limit) {
        return store.after(flyer.id(), cursor, limit + 1);
    }

    private PinBatch getActive(UUID id) {
        PinBatch batch = get(id);
        if (batch.archivedAt() != null) {
            throw new ProblemException(ProblemType.CONFLICT, "The batch is archived; it can no longer be changed.");
        }
        return batch;
    }
}
