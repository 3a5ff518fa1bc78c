package org.sunder.web;

import java.util.UUID;

/** Whose request is being handled. */
@FunctionalInterface
public interface Requester {

    /** The flyer's id. */
    UUID id();
}
