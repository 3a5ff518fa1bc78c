package org.sunder.advice;

import org.sunder.groundtest.GroundTest;

/** A change of the log that is worked out and not stored: the test as it will stand, and what to do next then. */
public final class LogDraft {

    private final FleetSnapshot before;
    private final FleetSnapshot after;
    private final GroundTest test;
    private final NextAdvice next;

    LogDraft(FleetSnapshot before, FleetSnapshot after, GroundTest test, NextAdvice next) {
        this.before = before;
        this.after = after;
        this.test = test;
        this.next = next;
    }

    /** The test as it will stand in the log. */
    public GroundTest test() {
        return test;
    }

    /** What to do next at its joint. */
    public NextAdvice next() {
        return next;
    }

    /** Version of the fleet that the draft rests on. */
    long version() {
        return before.version();
    }

    /** The fleet as it will be. */
    FleetSnapshot after() {
        return after;
    }
}
