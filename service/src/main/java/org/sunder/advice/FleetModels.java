package org.sunder.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.util.ConcurrentReferenceHashMap;
import org.sunder.engine.learning.FleetLog;
import org.sunder.engine.learning.FleetModel;
import org.sunder.engine.learning.Priors;

/**
 * Models of fleets asked about lately. Kept in memory only and compared with the log on every use: what is kept never
 * decides an answer, it saves the work of the airframes that did not change. A model changed is the same to the last bit as
 * one made anew.
 */
@Component
class FleetModels {

    private static final int FEW = 8;

    /** Softly held: some 8 MB a flyer, given up where memory runs short. */
    private final Map<UUID, Fleet> known = new ConcurrentReferenceHashMap<>();

    Fleet of(UUID flyer, FleetLog log) {
        Fleet before = known.get(flyer);
        if (before == null) {
            before = new Fleet(fresh(log));
            known.put(flyer, before);
        }
        FleetModel now = changed(before.model(), log);
        if (now == before.model()) {
            return before;
        }
        Fleet changed = new Fleet(now);
        known.put(flyer, changed);
        return changed;
    }

    private static FleetModel changed(FleetModel before, FleetLog log) {
        int airframes = log.airframes().size();
        if (before.log().airframes().size() != airframes) {
            return fresh(log);
        }
        List<Integer> differing = new ArrayList<>();
        for (int i = 0; i < airframes; i++) {
            if (!before.log().airframes().get(i).equals(log.airframes().get(i))) {
                differing.add(i);
            }
        }
        if (differing.size() > FEW) {
            return fresh(log);
        }
        FleetModel model = before;
        for (int i : differing) {
            model = model.with(i, log.airframes().get(i));
        }
        return model;
    }

    private static FleetModel fresh(FleetLog log) {
        return FleetModel.of(log, Priors.standard());
    }
}
