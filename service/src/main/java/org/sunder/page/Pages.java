package org.sunder.page;

import io.swagger.v3.oas.annotations.Hidden;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.servlet.ModelAndView;
import org.sunder.caution.Caution;
import org.sunder.caution.CautionView;
import org.sunder.problem.ProblemException;

/** What every page has: the cautions, the words it explains, and a page instead of a problem document where something is not there. */
@Hidden
abstract class Pages {

    @ModelAttribute
    void cautions(Model model) {
        model.addAttribute("cautions", CautionView.all());
        model.addAttribute("beforeFiring", Caution.beforeFiring());
        model.addAttribute("beforeFlight", Caution.beforeFlight());
        model.addAttribute("terms", Term.OURS);
    }

    @ExceptionHandler(ProblemException.class)
    ModelAndView problem(ProblemException e) {
        return page(e.type().title(), String.valueOf(e.getMessage()), e.type().status());
    }

    @ExceptionHandler(MethodArgumentTypeMismatchException.class)
    ModelAndView noSuchPath() {
        return page("There is no such page", "The address is not complete.", HttpStatus.NOT_FOUND);
    }

    static ModelAndView page(String title, String detail, HttpStatusCode status) {
        ModelAndView page = new ModelAndView("page/problem");
        page.setStatus(status);
        page.addObject("title", title);
        page.addObject("detail", detail);
        return page;
    }
}
