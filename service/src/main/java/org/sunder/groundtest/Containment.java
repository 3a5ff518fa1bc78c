package org.sunder.groundtest;

/** What held the powder. */
public enum Containment {
    VIAL("vial"),
    TUBE("tube"),
    BAG("bag");

    private final String word;

    Containment(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
