package org.sunder.page;

import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import org.sunder.access.AccessSettings;
import org.sunder.access.CurrentFlyer;
import org.sunder.access.IssuedKey;
import org.sunder.access.KeyGiving;
import org.sunder.picture.CodePicture;

/** Take it to the phone: a code for a phone at hand, the builder's own or a partner's, that signs it in once to log tests. */
@Controller
class PhonePages extends Pages {

    private static final int LONGEST_NAME = 60;

    private final AccessSettings settings;
    private final KeyGiving giving;
    private final CurrentFlyer flyer;

    PhonePages(AccessSettings settings, KeyGiving giving, CurrentFlyer flyer) {
        this.settings = settings;
        this.giving = giving;
        this.flyer = flyer;
    }

    @GetMapping(path = "/phone", produces = MediaType.TEXT_HTML_VALUE)
    String phone(Model model) {
        model.addAttribute("keys", settings.keys());
        return "page/phone";
    }

    @PostMapping(path = "/phone", produces = MediaType.TEXT_HTML_VALUE)
    String code(@RequestParam(defaultValue = "") String name, Model model) {
        String whose = name.strip();
        model.addAttribute("keys", settings.keys());
        model.addAttribute("name", whose);
        if (!settings.keys()) {
            return "page/phone";
        }
        if (whose.isEmpty() || whose.length() > LONGEST_NAME) {
            model.addAttribute("fault", whose.isEmpty() ? "Say whose phone it is." : "Allowed: up to 60 characters.");
            return "page/phone";
        }
        IssuedKey made = giving.giveOnce(flyer.id(), "phone: " + whose);
        // Behind the # so that no log and no proxy on the way sees it: a browser sends the rest of the address only.
        String address = ServletUriComponentsBuilder.fromCurrentContextPath()
                .path("/sign-in")
                .queryParam("to", "/field")
                .fragment("once=" + made.secret())
                .toUriString();
        model.addAttribute("address", address);
        model.addAttribute(
                "code", CodePicture.of(address, "A code for the camera of the phone; the address below is the same"));
        return "page/phone";
    }
}
