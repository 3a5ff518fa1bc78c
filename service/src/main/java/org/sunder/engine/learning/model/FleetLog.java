package org.sunder.engine.learning.model;

import java.util.ArrayList;
import java.util.List;

/**
 * Everything one flyer has tested.
 *
 * @param airframes the flyer's airframes
 */
public record FleetLog(List<AirframeLog> airframes) {

    public FleetLog {
        airframes = List.copyOf(airframes);
    }

    /** No airframe yet. */
    public static FleetLog empty() {
        return new FleetLog(List.of());
    }

    /** This fleet with one airframe replaced. */
    public FleetLog with(int index, AirframeLog airframe) {
        List<AirframeLog> changed = new ArrayList<>(airframes);
        changed.set(index, airframe);
        return new FleetLog(changed);
    }
}
