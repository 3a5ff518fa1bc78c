package org.sunder.access.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.springframework.http.HttpHeaders;
import org.springframework.web.filter.OncePerRequestFilter;
import org.sunder.access.AccessSettings;
import org.sunder.problem.ProblemType;
import org.sunder.problem.ProblemWriter;

/**
 * Refuses what a page of another site makes a browser send: requests under a name that is not the service's (DNS
 * rebinding), and changes that come from another origin (cross-site request forgery).
 */
final class OriginFilter extends OncePerRequestFilter {

    private static final Set<String> HARMLESS = Set.of("GET", "HEAD", "OPTIONS", "TRACE");
    private static final Set<String> OWN = Set.of("same-origin", "none");
    private static final Pattern ADDRESS = Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}|\\[[0-9a-fA-F:.]+]");
    private static final Pattern PORT = Pattern.compile(":\\d+$");

    private final AccessSettings settings;
    private final ProblemWriter problems;

    OriginFilter(AccessSettings settings, ProblemWriter problems) {
        this.settings = settings;
        this.problems = problems;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (!knownHost(request.getHeader(HttpHeaders.HOST))) {
            problems.write(request, response, ProblemType.UNKNOWN_HOST);
        } else if (!HARMLESS.contains(request.getMethod()) && fromElsewhere(request)) {
            problems.write(request, response, ProblemType.FROM_ANOTHER_SITE);
        } else {
            chain.doFilter(request, response);
        }
    }

    private boolean knownHost(String header) {
        String host =
                PORT.matcher(String.valueOf(header).toLowerCase(Locale.ROOT)).replaceFirst("");
        return host.equals("localhost")
                || host.endsWith(".localhost")
                || ADDRESS.matcher(host).matches()
                || settings.hosts().stream().anyMatch(host::equalsIgnoreCase);
    }

    /** Browsers say where a request comes from; programs say nothing and are not led astray by pages. */
    private static boolean fromElsewhere(HttpServletRequest request) {
        String site = request.getHeader("Sec-Fetch-Site");
        if (site != null) {
            return !OWN.contains(site);
        }
        String origin = request.getHeader(HttpHeaders.ORIGIN);
        if (origin == null) {
            return false;
        }
        try {
            return !request.getHeader(HttpHeaders.HOST)
                    .equalsIgnoreCase(URI.create(origin).getAuthority());
        } catch (IllegalArgumentException e) {
            return true;
        }
    }
}
