package org.sunder.advice;

/** What to do next at a joint. */
public enum Decision {
    FIRE("fire"),
    STOP("stop"),
    STATE_LIMIT("state-limit"),
    CHANGE_SETUP("change-setup");

    private final String word;

    Decision(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
