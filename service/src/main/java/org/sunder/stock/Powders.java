package org.sunder.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.sunder.access.CurrentFlyer;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.problem.Fault;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;
import org.sunder.web.Cursor;

/** What a flyer does with powders. Changes run inside the caller's transaction. */
@Service
public class Powders {

    private final PowderStore store;
    private final CurrentFlyer flyer;

    Powders(PowderStore store, CurrentFlyer flyer) {
        this.store = store;
        this.flyer = flyer;
    }

    /** Enters a powder; its name must be free. */
    public StockPowder enter(PowderDetails details) {
        check(details, null);
        return store.add(flyer.id(), details);
    }

    /**
     * Changes a powder. Setups that named it keep what it was.
     *
     * @param versionCheck refuses, by throwing, a version that the change is not based on
     */
    public StockPowder change(UUID id, LongConsumer versionCheck, PowderDetails details) {
        versionCheck.accept(getOwn(id).version());
        check(details, id);
        return store.change(flyer.id(), id, details);
    }

    /** Puts a powder away and gives its name back. */
    public void archive(UUID id, LongConsumer versionCheck) {
        versionCheck.accept(getOwn(id).version());
        store.archive(flyer.id(), id);
    }

    /** The powder, archived or not. */
    public StockPowder get(UUID id) {
        if (id.equals(StockPowder.STANDARD.id())) {
            return StockPowder.STANDARD;
        }
        return store.find(flyer.id(), id).orElseThrow(() -> ProblemException.notFound("powder", id));
    }

    /** The powder in use under that name. */
    public Optional<StockPowder> find(String name) {
        return standard(name) ? Optional.of(StockPowder.STANDARD) : store.findByName(flyer.id(), name);
    }

    /** A page of powders in use, newest first and the standard one last, with one to spare. */
    public List<StockPowder> page(Cursor cursor, int limit) {
        List<StockPowder> page = new ArrayList<>(store.after(flyer.id(), cursor, limit + 1));
        if (page.size() <= limit && cursor.at().isAfter(StockPowder.STANDARD.createdAt())) {
            page.add(StockPowder.STANDARD);
        }
        return page;
    }

    private StockPowder getOwn(UUID id) {
        StockPowder powder = get(id);
        if (powder.standard()) {
            throw new ProblemException(
                    ProblemType.CONFLICT, "The standard powder cannot be changed; enter a powder of your own.");
        }
        if (powder.archivedAt() != null) {
            throw new ProblemException(ProblemType.CONFLICT, "The powder is archived; it can no longer be changed.");
        }
        return powder;
    }

    /**
     * Refuses, by throwing, values that no powder of a flyer's own can have.
     *
     * @throws ProblemException naming the field
     */
    public static void checkValues(PowderDetails details) {
        if (!SetupBounds.POWDER_FORCE.contains(details.powderForce().si())) {
            throw ProblemException.invalid(
                    "/powderForce",
                    details.powderForce().value() + " " + details.powderForce().unit(),
                    "the powder force is out of bounds",
                    SetupBounds.POWDER_FORCE.text());
        }
        if (standard(details.name())) {
            throw nameTaken(details.name());
        }
    }

    private void check(PowderDetails details, @Nullable UUID except) {
        checkValues(details);
        boolean taken =
                find(details.name()).filter(other -> !other.id().equals(except)).isPresent();
        if (taken) {
            throw nameTaken(details.name());
        }
    }

    /** That another powder in use has the name. */
    public static ProblemException nameTaken(String name) {
        String detail = "A powder in use has the name " + name + "; a setup could not tell the two apart.";
        return new ProblemException(
                ProblemType.CONFLICT,
                detail,
                List.of(new Fault("/name", detail, "not-unique", "a name that no powder in use has", name)));
    }

    private static boolean standard(String name) {
        return name.equals(StockPowder.STANDARD.details().name());
    }
}
