package org.sunder.access;

import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.springframework.security.core.authority.AuthorityUtils;

/** A request that was let in, and for what. */
public final class Admission extends AbstractAuthenticationToken {

    private final transient Grant grant;

    /** Lets a request in. */
    public Admission(Grant grant) {
        super(AuthorityUtils.createAuthorityList(grant.scope().name()));
        this.grant = grant;
        setAuthenticated(true);
    }

    /** Of a service without keys. */
    public static Admission local() {
        return new Admission(Grant.LOCAL);
    }

    /** What it may do. */
    public Grant grant() {
        return grant;
    }

    @Override
    public Object getCredentials() {
        return "";
    }

    @Override
    public Object getPrincipal() {
        return grant.keyId();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Admission admission && admission.grant.equals(grant);
    }

    @Override
    public int hashCode() {
        return grant.hashCode();
    }
}
