package org.sunder.access.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.HttpHeaders;
import org.springframework.security.web.header.HeaderWriter;

/** The content policy of each answer, and that answers of the API are not kept. */
final class PolicyHeaders implements HeaderWriter {

    private static final String POLICY = "Content-Security-Policy";
    private static final String REST =
            "; frame-ancestors 'none'; base-uri 'none'; form-action 'self'; object-src 'none'";
    private static final String USUAL = "default-src 'self'" + REST;
    // A film is read on the phone, from an address that only its own page knows.
    private static final String FIELD = "default-src 'self'; media-src 'self' blob:" + REST;
    // Its page styles elements from its scripts, and its icons are data.
    private static final String SWAGGER =
            "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:" + REST;
    private static final Pattern STYLE = Pattern.compile("<style>(.*?)</style>", Pattern.DOTALL);

    private final String card =
            "default-src 'none'; font-src 'self'; style-src " + styles("templates/ladder-card.html") + REST;

    @Override
    public void writeHeaders(HttpServletRequest request, HttpServletResponse response) {
        String path = request.getRequestURI();
        if (!response.containsHeader(POLICY)) {
            response.setHeader(POLICY, policy(path));
        }
        boolean lasting = path.startsWith("/assets/") || path.startsWith("/swagger-ui/");
        if (!lasting && !response.containsHeader(HttpHeaders.CACHE_CONTROL)) {
            response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        }
    }

    private String policy(String path) {
        if (path.startsWith("/swagger-ui")) {
            return SWAGGER;
        }
        if (path.equals("/field") || path.startsWith("/field/")) {
            return FIELD;
        }
        return path.startsWith("/api/") && path.endsWith("/ladder") ? card : USUAL;
    }

    /** The card to print carries its own style, so that it can be saved as one file: allowed by its hash. */
    private static String styles(String template) {
        try {
            String text = new ClassPathResource(template).getContentAsString(StandardCharsets.UTF_8);
            Matcher style = STYLE.matcher(text);
            StringBuilder allowed = new StringBuilder();
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            while (style.find()) {
                byte[] digest = sha.digest(style.group(1).getBytes(StandardCharsets.UTF_8));
                allowed.append(" 'sha256-")
                        .append(Base64.getEncoder().encodeToString(digest))
                        .append('\'');
            }
            return allowed.toString().trim();
        } catch (IOException | NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
