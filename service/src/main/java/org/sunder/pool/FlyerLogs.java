package org.sunder.pool;

import java.util.UUID;
import org.sunder.engine.learning.model.FleetLog;

/** Reads the log of a flyer who shares it. */
public interface FlyerLogs {

    /**
     * A log as it stood.
     *
     * @param version of the flyer's fleet
     * @param log its counted trials, nothing of the example among them
     */
    record Versioned(long version, FleetLog log) {}

    /** The log of a flyer as it stands. */
    Versioned of(UUID flyer);
}
