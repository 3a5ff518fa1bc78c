package org.sunder.engine.physics.flight;

/** What pulls at a joint in flight. */
public enum LoadKind {
    TRAPPED_PRESSURE("trapped-pressure"),
    DRAG_SEPARATION("drag-separation"),
    FIRST_EVENT_JERK("first-event-jerk"),
    /** Trapped air still pushes when an earlier event jerks. */
    JERK_WITH_TRAPPED_PRESSURE("jerk-with-trapped-pressure");

    private final String word;

    LoadKind(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
