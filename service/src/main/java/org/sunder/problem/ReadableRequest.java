package org.sunder.problem;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Stops what no controller could be asked: a query string that is no text (a percent sign before anything but two hexadecimal
 * digits, or bytes that are not UTF-8), and a Content-Type that names no type.
 */
@Component
@Order(BodyLimit.AFTER_ACCESS)
class ReadableRequest extends OncePerRequestFilter {

    private static final Set<String> BODIES = Set.of("POST", "PUT");
    private static final int HEX = 16;

    private final ProblemWriter problems;

    ReadableRequest(ProblemWriter problems) {
        this.problems = problems;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String query = request.getQueryString();
        Optional<String> unreadable = query == null ? Optional.empty() : unreadable(query);
        if (BODIES.contains(request.getMethod()) && wild(request.getContentType())) {
            problems.write(
                    request,
                    response,
                    ProblemType.UNSUPPORTED_MEDIA_TYPE,
                    "The Content-Type " + request.getContentType() + " is no type of content.");
        } else if (unreadable.isPresent()) {
            String detail = "The query parameter " + unreadable.get() + " is not text in UTF-8.";
            Fault fault = new Fault(unreadable.get(), detail, "wrong-form", "percent-encoded UTF-8", null);
            problems.write(request, response, ProblemType.INVALID_INPUT, detail, List.of(fault));
        } else if (query != null && !parsed(request)) {
            problems.write(
                    request,
                    response,
                    ProblemType.INVALID_INPUT,
                    "The query string is not a list of name=value pairs.");
        } else {
            chain.doFilter(request, response);
        }
    }

    private static boolean wild(@Nullable String type) {
        return type != null && type.contains("*");
    }

    /** Whether the container can read the parameters: it refuses what has no name. */
    private static boolean parsed(HttpServletRequest request) {
        try {
            request.getParameterMap();
            return true;
        } catch (IllegalStateException e) {
            return false;
        }
    }

    /** Name of the first parameter whose name or value cannot be read, as it was sent. */
    private static Optional<String> unreadable(String query) {
        for (String parameter : query.split("&", -1)) {
            if (!readable(parameter)) {
                int end = parameter.indexOf('=');
                return Optional.of(end < 0 ? parameter : parameter.substring(0, end));
            }
        }
        return Optional.empty();
    }

    private static boolean readable(String text) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != '%') {
                bytes.writeBytes(String.valueOf(c).getBytes(StandardCharsets.UTF_8));
            } else if (i + 2 < text.length()
                    && Character.digit(text.charAt(i + 1), HEX) >= 0
                    && Character.digit(text.charAt(i + 2), HEX) >= 0) {
                bytes.write(Integer.parseInt(text.substring(i + 1, i + 3), HEX));
                i += 2;
            } else {
                return false;
            }
        }
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes.toByteArray()));
            return true;
        } catch (CharacterCodingException e) {
            return false;
        }
    }
}
