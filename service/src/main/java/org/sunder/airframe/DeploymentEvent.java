package org.sunder.airframe;

/** What parts at a joint in flight. */
public enum DeploymentEvent {
    DROGUE("drogue"),
    MAIN("main"),
    OTHER("other");

    private final String word;

    DeploymentEvent(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
