package org.sunder.access;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a key that was shown allows.
 *
 * @param flyerId whose things
 * @param keyId the key, or for a browser's session its own
 * @param limitedAs the key that requests count against: a session counts as the key it came from
 * @param scope what may be done
 * @param name what the key is called, that of a session as the key it came from; null where there are no keys
 */
public record Grant(
        UUID flyerId,
        UUID keyId,
        UUID limitedAs,
        Scope scope,
        @Nullable String name) {

    /** Of a service without keys, which only its own machine reaches. */
    static final Grant LOCAL = new Grant(CurrentFlyer.LOCAL, CurrentFlyer.LOCAL, CurrentFlyer.LOCAL, Scope.ADMIN, null);
}
