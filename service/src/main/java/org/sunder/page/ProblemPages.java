package org.sunder.page;

import io.swagger.v3.oas.annotations.Hidden;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.ModelAndView;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** A short page for each kind of problem: where the type of a problem document leads. */
@Controller
@Hidden
class ProblemPages {

    @GetMapping(path = "/problems/{slug}", produces = MediaType.TEXT_HTML_VALUE)
    ModelAndView page(@PathVariable String slug) {
        ProblemType type = ProblemType.find(slug)
                .orElseThrow(() -> new ProblemException(ProblemType.NOT_FOUND, "There is no such kind of problem."));
        String meaning = "Status " + type.status().value() + ". " + type.explanation();
        return Pages.page(type.title(), meaning, HttpStatus.OK);
    }
}
