package org.sunder.page;

import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import org.sunder.access.AccessKey;
import org.sunder.access.AccessKeys;
import org.sunder.access.AccessSettings;
import org.sunder.access.CurrentFlyer;
import org.sunder.access.IssuedKey;
import org.sunder.access.KeyGiving;
import org.sunder.picture.CodePicture;

/** Take it to the phone: a code for a phone at hand, the builder's own or a partner's, that signs it in once to log tests. */
@Controller
class PhonePages extends Pages {

    private static final int LONGEST_NAME = 60;
    /** How the key of a phone begins to be called; whose it is follows. */
    static final String PHONE = "phone: ";

    private final AccessSettings settings;
    private final AccessKeys keys;
    private final KeyGiving giving;
    private final CurrentFlyer flyer;

    PhonePages(AccessSettings settings, AccessKeys keys, KeyGiving giving, CurrentFlyer flyer) {
        this.settings = settings;
        this.keys = keys;
        this.giving = giving;
        this.flyer = flyer;
    }

    /** A phone that was let in, or may still be. */
    record Phone(UUID id, String name, String since, String used) {}

    @GetMapping(path = "/phone", produces = MediaType.TEXT_HTML_VALUE)
    String phone(Model model) {
        return page(model);
    }

    private String page(Model model) {
        model.addAttribute("keys", settings.keys());
        model.addAttribute(
                "phones",
                keys.of(flyer.id()).stream()
                        .filter(key -> key.revokedAt() == null && key.name().startsWith(PHONE))
                        .map(PhonePages::phone)
                        .toList());
        return "page/phone";
    }

    private static Phone phone(AccessKey key) {
        return new Phone(
                key.id(),
                key.name().substring(PHONE.length()),
                "since " + Words.of(key.createdAt()),
                key.lastUsedAt() == null ? "not used yet" : "last used " + Words.of(key.lastUsedAt()));
    }

    @PostMapping("/phone/end")
    String end(@RequestParam UUID id) {
        giving.takeBack(flyer.id(), id);
        return "redirect:/phone";
    }

    @PostMapping(path = "/phone", produces = MediaType.TEXT_HTML_VALUE)
    String code(@RequestParam(defaultValue = "") String name, Model model) {
        String whose = name.strip();
        model.addAttribute("name", whose);
        if (!settings.keys()) {
            return page(model);
        }
        if (whose.isEmpty() || whose.length() > LONGEST_NAME) {
            model.addAttribute("fault", whose.isEmpty() ? "Say whose phone it is." : "Allowed: up to 60 characters.");
            return page(model);
        }
        IssuedKey made = giving.giveOnce(flyer.id(), PHONE + whose);
        // Behind the # so that no log and no proxy on the way sees it: a browser sends the rest of the address only.
        String address = ServletUriComponentsBuilder.fromCurrentContextPath()
                .path("/sign-in")
                .queryParam("to", "/field")
                .fragment("once=" + made.secret())
                .toUriString();
        model.addAttribute("address", address);
        model.addAttribute(
                "code", CodePicture.of(address, "A code for the camera of the phone; the address below is the same"));
        return page(model);
    }
}
