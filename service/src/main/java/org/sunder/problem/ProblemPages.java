package org.sunder.problem;

import io.swagger.v3.oas.annotations.Hidden;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.util.HtmlUtils;

/** A short page for each kind of problem: where the type of a problem document leads. */
@RestController
@Hidden
class ProblemPages {

    @GetMapping(path = "/problems/{slug}", produces = MediaType.TEXT_HTML_VALUE)
    String page(@PathVariable String slug) {
        ProblemType type = ProblemType.find(slug)
                .orElseThrow(() -> new ProblemException(ProblemType.NOT_FOUND, "There is no such kind of problem."));
        String title = HtmlUtils.htmlEscape(type.title());
        return "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\""
                + " content=\"width=device-width\"><title>" + title + "</title></head><body><main><h1>" + title
                + "</h1><p>Status " + type.status().value() + "</p><p>"
                + HtmlUtils.htmlEscape(type.explanation()) + "</p></main></body></html>";
    }
}
