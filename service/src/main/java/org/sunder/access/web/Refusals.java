package org.sunder.access.web;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.sunder.access.Admission;
import org.sunder.problem.ProblemType;
import org.sunder.problem.ProblemWriter;

/** What a request without a key, or with one that does not reach so far, is told. */
final class Refusals implements AuthenticationEntryPoint, AccessDeniedHandler {

    private static final Logger LOG = LoggerFactory.getLogger(Refusals.class);

    /** A part of a path that may be anything, a key by mistake too. */
    private static final Pattern NO_WORD = Pattern.compile("/[^/]*[^/a-z-][^/]*");

    /** The page for an address that leads nowhere; who asks for it by name gets it too. */
    static final String NOWHERE = "/nowhere";

    /** How the addresses of forms end. */
    private static final List<String> FORMS =
            List.of("/copy", "/remove", "/bring-back", "/films", "/phone", "/phone/end");

    private final ProblemWriter problems;

    Refusals(ProblemWriter problems) {
        this.problems = problems;
    }

    @Override
    public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException e)
            throws IOException {
        if (wantsPage(request)) {
            String here =
                    request.getRequestURI() + (request.getQueryString() == null ? "" : "?" + request.getQueryString());
            response.setStatus(HttpServletResponse.SC_SEE_OTHER);
            response.setHeader(HttpHeaders.LOCATION, "/sign-in?to=" + URLEncoder.encode(here, StandardCharsets.UTF_8));
            return;
        }
        response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Bearer");
        problems.write(request, response, ProblemType.KEY_NEEDED);
    }

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException e)
            throws IOException, ServletException {
        if (wantsPage(request)) {
            request.getRequestDispatcher(NOWHERE).forward(request, response);
            return;
        }
        String path = request.getRequestURI();
        boolean known = path.startsWith("/api/")
                || path.startsWith("/example")
                || path.startsWith("/pool/")
                || FORMS.stream().anyMatch(path::endsWith);
        if (known && SecurityContextHolder.getContext().getAuthentication() instanceof Admission admission) {
            LOG.warn(
                    "Not allowed to the key {} of flyer {}: {} {}",
                    admission.grant().keyId(),
                    admission.grant().flyerId(),
                    request.getMethod(),
                    NO_WORD.matcher(path).replaceAll("/…"));
        }
        problems.write(request, response, known ? ProblemType.NOT_ALLOWED : ProblemType.NOT_FOUND);
    }

    private static boolean wantsPage(HttpServletRequest request) {
        String accept = request.getHeader(HttpHeaders.ACCEPT);
        return request.getMethod().equals("GET")
                && accept != null
                && accept.contains("text/html")
                && !request.getRequestURI().startsWith("/api/");
    }
}
