package org.sunder.engine.physics.packing;

/** How the powder of a charge is held together until it burns. Firmly held powder burns completely; loose powder may not. */
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
