package org.sunder.advice;

import org.springframework.stereotype.Component;
import org.springframework.util.ConcurrentLruCache;
import org.sunder.engine.planning.EvidenceReport;
import org.sunder.engine.planning.Ladder;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.planning.Planner;
import org.sunder.engine.planning.PlanningCase;

/**
 * What the planner answered lately. A plan follows from its case alone, and a case holds all that was known, so what is kept
 * is what would be found anew.
 */
@Component
class Plans {

    private static final int KEPT = 32;

    private final ConcurrentLruCache<PlanningCase, NextStep> steps =
            new ConcurrentLruCache<>(KEPT, Planner::nextCharge);
    private final ConcurrentLruCache<PlanningCase, EvidenceReport> evidence =
            new ConcurrentLruCache<>(KEPT, EvidenceReport::of);
    private final ConcurrentLruCache<Ahead, Ladder> ladders =
            new ConcurrentLruCache<>(KEPT, ahead -> Ladder.of(ahead.on(), ahead.depth()));

    private record Ahead(PlanningCase on, int depth) {}

    NextStep next(PlanningCase on) {
        return steps.get(on);
    }

    EvidenceReport evidence(PlanningCase on) {
        return evidence.get(on);
    }

    Ladder ladder(PlanningCase on, int depth) {
        return ladders.get(new Ahead(on, depth));
    }
}
