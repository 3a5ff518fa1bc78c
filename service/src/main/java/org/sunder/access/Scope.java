package org.sunder.access;

/** What a key may do with its flyer's things. */
public enum Scope {
    /** Everything, and the flyers and their keys besides. */
    ADMIN("admin"),
    /** Everything of one flyer. */
    FULL("full"),
    /** Read, and log ground tests and flights: for a phone at the field. */
    LOG_ONLY("log-only"),
    /** Read: for a guest. */
    READ_ONLY("read-only");

    private final String word;

    Scope(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
