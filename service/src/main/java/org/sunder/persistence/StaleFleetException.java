package org.sunder.persistence;

/** What a write rests on was changed meanwhile; it is to be worked out anew. */
public final class StaleFleetException extends RuntimeException {

    StaleFleetException() {
        super("the fleet was changed meanwhile");
    }
}
