package org.sunder.access.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import org.sunder.access.AccessKeys;
import org.sunder.access.AccessSettings;
import org.sunder.access.Admission;
import org.sunder.access.Grant;
import org.sunder.problem.ProblemType;
import org.sunder.problem.ProblemWriter;

/** Who is asking: by a key, by a browser's session, or the one person on this machine where keys are off. */
final class KeyFilter extends OncePerRequestFilter {

    private static final Logger LOG = LoggerFactory.getLogger(KeyFilter.class);

    private static final String BEARER = "Bearer ";
    private static final String RETRY_SECONDS = "5";

    private final AccessSettings settings;
    private final AccessKeys keys;
    private final Limits limits;
    private final ProblemWriter problems;

    KeyFilter(AccessSettings settings, AccessKeys keys, Limits limits, ProblemWriter problems) {
        this.settings = settings;
        this.keys = keys;
        this.limits = limits;
        this.problems = problems;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (!settings.keys()) {
            admit(Admission.local());
            chain.doFilter(request, response);
            return;
        }
        String header = request.getHeader(HttpHeaders.AUTHORIZATION);
        String secret = header == null ? Sessions.find(request) : bearer(header);
        Optional<Grant> grant;
        try {
            grant = secret == null ? Optional.empty() : keys.find(secret);
        } catch (DataAccessException e) {
            response.setHeader(HttpHeaders.RETRY_AFTER, RETRY_SECONDS);
            problems.write(request, response, ProblemType.STORAGE_UNAVAILABLE);
            return;
        }
        String address = request.getRemoteAddr();
        if (header != null && grant.isEmpty()) {
            refuse(request, response, limits.failedKey(address), ProblemType.KEY_REFUSED);
            return;
        }
        long wait =
                limits.request(grant.map(known -> known.limitedAs().toString()).orElse(address));
        if (wait > 0) {
            refuse(request, response, wait, ProblemType.TOO_MANY_REQUESTS);
            return;
        }
        grant.ifPresent(known -> admit(new Admission(known)));
        chain.doFilter(request, response);
    }

    private void refuse(HttpServletRequest request, HttpServletResponse response, long wait, ProblemType type)
            throws IOException {
        if (wait > 0) {
            response.setHeader(HttpHeaders.RETRY_AFTER, String.valueOf(wait));
            problems.write(request, response, ProblemType.TOO_MANY_REQUESTS);
            return;
        }
        LOG.warn("A key was refused, from {}", request.getRemoteAddr());
        response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Bearer error=\"invalid_token\"");
        problems.write(request, response, type);
    }

    private static @Nullable String bearer(String header) {
        return header.startsWith(BEARER) ? header.substring(BEARER.length()).trim() : null;
    }

    private static void admit(Admission admission) {
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(admission);
        SecurityContextHolder.setContext(context);
    }
}
