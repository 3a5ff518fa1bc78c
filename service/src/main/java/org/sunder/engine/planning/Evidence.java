package org.sunder.engine.planning;

/** How far the tests of a joint support a flight charge. */
public enum Evidence {
    /** No counted test. */
    NONE("none"),
    /** Tests, but not yet enough. */
    BUILDING("building"),
    /** Enough to fly. */
    SUFFICIENT("sufficient"),
    /** The setup changed since, and what carries over is not enough. */
    STALE("stale"),
    /** The last counted test was a surprise. */
    CONFLICTING("conflicting");

    private final String word;

    Evidence(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
