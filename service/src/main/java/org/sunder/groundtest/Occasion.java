package org.sunder.groundtest;

/** Where a charge was fired: on the ground as a test, or in flight. */
public enum Occasion {
    GROUND("ground"),
    FLIGHT("flight");

    private final String word;

    Occasion(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
