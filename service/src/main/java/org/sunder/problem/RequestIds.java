package org.sunder.problem;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.slf4j.MDC;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Gives every request an id that stands in the log, in the answer's header and in a problem. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 5)
class RequestIds extends OncePerRequestFilter {

    private static final String HEADER = "X-Request-Id";
    private static final String KEY = "requestId";
    private static final Pattern HARMLESS = Pattern.compile("[A-Za-z0-9._-]{1,64}");

    /** The id of the request being handled. */
    static @Nullable String current() {
        return MDC.get(KEY);
    }

    @Override
    protected boolean shouldNotFilterErrorDispatch() {
        return false;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String given = request.getHeader(HEADER);
        String known = response.getHeader(HEADER);
        String id = known != null
                ? known
                : given != null && HARMLESS.matcher(given).matches()
                        ? given
                        : UUID.randomUUID().toString();
        response.setHeader(HEADER, id);
        MDC.put(KEY, id);
        try {
            chain.doFilter(request, response);
        } finally {
            MDC.remove(KEY);
        }
    }
}
