package org.sunder.start;

/** A setting that the service does not start with. */
class RefusedSetting extends RuntimeException {

    /**
     * Names what is wrong.
     *
     * @param name the setting, e.g. {@code server.port}
     * @param fault what is wrong with it and what is allowed, in words
     */
    RefusedSetting(String name, String fault) {
        super("setting " + name + ": " + fault);
    }
}
