package org.sunder.page;

import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.ModelAndView;

/** What stands at an address that leads nowhere. */
@Controller
class Nowhere extends Pages {

    @GetMapping(
            path = {"/nowhere", "/airframes/**", "/joints/**", "/stock/**", "/fleet/**", "/pool/**"},
            produces = MediaType.TEXT_HTML_VALUE)
    ModelAndView page() {
        return page(
                "This address leads nowhere",
                "It may be mistyped, or the thing may have been taken away. Everything begins at your rockets.",
                HttpStatus.NOT_FOUND);
    }
}
