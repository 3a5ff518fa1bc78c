package org.sunder.web;

import org.jspecify.annotations.Nullable;

/**
 * What was created.
 *
 * @param location path of the new resource
 * @param entityTag its tag; null where it has no versions
 * @param body the answer
 * @param repeated where the answer holds a secret, and so is shown once and not kept: what a repeated request is told
 */
public record Created(
        String location,
        @Nullable String entityTag,
        Object body,
        @Nullable String repeated) {

    /** A resource whose answer is kept for repeated requests. */
    public Created(String location, @Nullable String entityTag, Object body) {
        this(location, entityTag, body, null);
    }
}
