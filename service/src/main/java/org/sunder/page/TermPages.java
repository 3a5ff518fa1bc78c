package org.sunder.page;

import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** All words of the trade and of this program in one place. */
@Controller
class TermPages extends Pages {

    @GetMapping(path = "/terms", produces = MediaType.TEXT_HTML_VALUE)
    String terms(Model model) {
        model.addAttribute("trade", Term.TRADE);
        return "page/terms";
    }
}
