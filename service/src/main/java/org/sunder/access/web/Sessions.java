package org.sunder.access.web;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseCookie;
import org.springframework.web.util.WebUtils;

/**
 * The cookie of a browser's session. Scripts cannot read it, and no other site can have it sent. Over TLS its name begins so that
 * browsers take it from this host alone, whole and by TLS.
 */
final class Sessions {

    private static final String NAME = "sunder_session";
    private static final String THIS_HOST = "__Host-";
    private static final Duration LONGEST = Duration.ofDays(30);

    private Sessions() {}

    static @Nullable String find(HttpServletRequest request) {
        Cookie cookie = WebUtils.getCookie(request, name(request));
        return cookie == null || cookie.getValue().isEmpty() ? null : cookie.getValue();
    }

    static String opened(HttpServletRequest request, String secret) {
        return cookie(request, secret, LONGEST);
    }

    static String closed(HttpServletRequest request) {
        return cookie(request, "", Duration.ZERO);
    }

    private static String name(HttpServletRequest request) {
        return request.isSecure() ? THIS_HOST + NAME : NAME;
    }

    private static String cookie(HttpServletRequest request, String value, Duration age) {
        return ResponseCookie.from(name(request), value)
                .httpOnly(true)
                .sameSite("Strict")
                .secure(request.isSecure())
                .path("/")
                .maxAge(age)
                .build()
                .toString();
    }
}
