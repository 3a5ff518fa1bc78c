package org.sunder.access.web;

import io.swagger.v3.oas.annotations.Hidden;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.sunder.access.AccessKeys;
import org.sunder.access.CurrentFlyer;
import org.sunder.access.Grant;
import org.sunder.persistence.DurableTransactions;

/** Where a browser shows its key once and gets a session. */
@Controller
@Hidden
class SignIn {

    private static final Logger LOG = LoggerFactory.getLogger(SignIn.class);

    private static final Pattern HERE = Pattern.compile("/(?![/\\\\])[\\x21-\\x7e]*");

    private final AccessKeys keys;
    private final Limits limits;
    private final CurrentFlyer flyer;
    private final DurableTransactions transactions;

    SignIn(AccessKeys keys, Limits limits, CurrentFlyer flyer, DurableTransactions transactions) {
        this.keys = keys;
        this.limits = limits;
        this.flyer = flyer;
        this.transactions = transactions;
    }

    @GetMapping("/sign-in")
    String page(@RequestParam(defaultValue = "/") String to, Model model) {
        return page(to, "", model);
    }

    @PostMapping("/sign-in")
    @Nullable String signIn(
            @RequestParam(defaultValue = "") String key,
            @RequestParam(defaultValue = "/") String to,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        String shown = key.trim();
        Optional<Grant> grant = keys.find(shown).or(() -> transactions.commit(() -> keys.claim(shown)));
        if (grant.isEmpty()) {
            long wait = limits.failedKey(request.getRemoteAddr());
            if (wait > 0) {
                response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
                response.setHeader(HttpHeaders.RETRY_AFTER, String.valueOf(wait));
                return page(to, "Too many keys were wrong. Try again in a minute.", model);
            }
            LOG.warn("A key was refused at signing in, from {}", request.getRemoteAddr());
            response.setStatus(HttpStatus.UNAUTHORIZED.value());
            return page(to, "That key is not known, was revoked, or has ended.", model);
        }
        String session =
                transactions.commit(() -> keys.openSession(grant.get())).secret();
        response.addHeader(HttpHeaders.SET_COOKIE, Sessions.opened(request, session));
        return "redirect:" + here(to);
    }

    @PostMapping("/sign-out")
    ResponseEntity<Void> signOut(HttpServletRequest request) {
        String secret = Sessions.find(request);
        if (secret != null) {
            keys.find(secret).ifPresent(grant -> transactions.commit(() -> keys.revoke(flyer.id(), grant.keyId())));
        }
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.SET_COOKIE, Sessions.closed(request))
                .header(HttpHeaders.LOCATION, "/sign-in")
                .build();
    }

    private static String page(String to, String refusal, Model model) {
        model.addAttribute("to", here(to));
        model.addAttribute("refusal", refusal);
        return "sign-in";
    }

    /** Only paths of this service: a link must not lead elsewhere by way of signing in. */
    private static String here(String to) {
        return HERE.matcher(to).matches() ? to : "/";
    }
}
