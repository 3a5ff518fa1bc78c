package org.sunder.airframe;

/** The units a flyer reads. */
public enum UnitSystem {
    METRIC("metric"),
    US("us");

    private final String word;

    UnitSystem(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
