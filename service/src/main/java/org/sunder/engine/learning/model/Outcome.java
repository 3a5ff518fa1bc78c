package org.sunder.engine.learning.model;

/** What a firing did to the joint, from least to most. */
public enum Outcome {
    /** The joint did not part. */
    NONE("none"),
    /** Pins sheared or sections moved, not fully apart. */
    PARTIAL("partial"),
    /** Fully apart, the gear out. */
    SEPARATED("separated");

    private final String word;

    Outcome(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
