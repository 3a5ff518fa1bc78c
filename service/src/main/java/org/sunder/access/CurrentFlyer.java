package org.sunder.access;

import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.sunder.web.Requester;

/** The flyer a request speaks for. On a laptop there is one, the owner of the data folder. */
@Component
public class CurrentFlyer implements Requester {

    /** The flyer of a single-user service; where keys are on, the one who looks after it. */
    public static final UUID LOCAL = UUID.fromString("00000000-0000-7000-8000-000000000001");

    /**
     * The flyer's id.
     *
     * @throws IllegalStateException within a request that nobody was let in for
     */
    @Override
    public UUID id() {
        Authentication admitted = SecurityContextHolder.getContext().getAuthentication();
        if (admitted instanceof Admission admission) {
            return admission.grant().flyerId();
        }
        if (RequestContextHolder.getRequestAttributes() != null) {
            throw new IllegalStateException("a request without a flyer");
        }
        return LOCAL; // the service's own work, such as loading the demo fleet
    }

    /**
     * Reads as a flyer, for the service's own work.
     *
     * @param reading what is read; it may change nothing
     */
    public <T> T reading(UUID flyer, Supplier<T> reading) {
        SecurityContext before = SecurityContextHolder.getContext();
        SecurityContextHolder.setContext(
                new SecurityContextImpl(new Admission(new Grant(flyer, flyer, flyer, Scope.READ_ONLY, null))));
        try {
            return reading.get();
        } finally {
            SecurityContextHolder.setContext(before);
        }
    }

    /** What the key is called that the request came with; null where there are no keys, and for the service's own work. */
    public @Nullable String keyName() {
        return SecurityContextHolder.getContext().getAuthentication() instanceof Admission admission
                ? admission.grant().name()
                : null;
    }

    /** Whether the key may look after flyers and keys. */
    public boolean admin() {
        return holds(Scope.ADMIN);
    }

    /** Whether the key may add to the log and change nothing of it. */
    public boolean mayOnlyLog() {
        return holds(Scope.LOG_ONLY);
    }

    private static boolean holds(Scope scope) {
        return SecurityContextHolder.getContext().getAuthentication() instanceof Admission admission
                && admission.grant().scope() == scope;
    }
}
