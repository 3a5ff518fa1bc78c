package org.sunder.json;

import org.jspecify.annotations.Nullable;

/** Where a reader reports what it could not read. */
@FunctionalInterface
interface FaultSink {

    /**
     * Takes a fault.
     *
     * @param pointer JSON pointer of what could not be read
     * @param detail what is wrong, for a person
     * @param code the stable word for it
     * @param allowed what would be allowed
     * @param value what was there, as text
     */
    void accept(String pointer, String detail, String code, @Nullable String allowed, @Nullable String value);
}
