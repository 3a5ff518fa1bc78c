package org.sunder.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Lists of a request as they were read: an entry that is null stays, so that validation can point at it. */
public final class RequestList {

    private RequestList() {}

    /** An unmodifiable copy; empty where the list was not given. */
    public static <T> List<T> of(@Nullable List<T> read) {
        return read == null ? List.of() : Collections.unmodifiableList(new ArrayList<>(read));
    }
}
