package org.sunder.stock;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.sunder.web.Cursor;

/** Where a flyer's powders are kept. */
public interface PowderStore {

    StockPowder add(UUID flyer, PowderDetails details);

    StockPowder change(UUID flyer, UUID id, PowderDetails details);

    void archive(UUID flyer, UUID id);

    Optional<StockPowder> find(UUID flyer, UUID id);

    /** The powder in use under that name. */
    Optional<StockPowder> findByName(UUID flyer, String name);

    /** Powders in use, newest first. */
    List<StockPowder> after(UUID flyer, Cursor cursor, int limit);
}
