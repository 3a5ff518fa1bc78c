package org.sunder.engine.planning;

import java.util.Optional;

/** Allows a charge, or rejects it with a reason. */
@FunctionalInterface
interface Safeguard {

    /** Empty if the charge of so many steps is allowed. */
    Optional<Rejection> check(PlanningCase planningCase, int steps);
}
