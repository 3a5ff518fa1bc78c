package org.sunder.config;

import org.jspecify.annotations.Nullable;

/** Where a reader reports what it could not read. */
@FunctionalInterface
interface FaultSink {

    void accept(String pointer, String detail, @Nullable String allowed, @Nullable String value);
}
