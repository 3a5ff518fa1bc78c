package org.sunder.engine.physics.charge;

/** Where a ceiling comes from; the word is what the API and the pages show. */
public enum CeilingSource {
    /** The flyer's limit of gauge pressure. */
    STRUCTURAL_LIMIT("structural-limit"),
    /** The flyer's limit of separation speed. */
    SEPARATION_SPEED_LIMIT("separation-speed"),
    /** No limit was given: three times the threshold pressure. */
    DEFAULT_THREE_TIMES_THRESHOLD("default"),
    /** The largest pressure or charge the model answers for, where that comes first. */
    MODEL_DOMAIN("model-domain");

    private final String word;

    CeilingSource(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
