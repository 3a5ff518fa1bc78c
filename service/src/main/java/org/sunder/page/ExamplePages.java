package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.sunder.exchange.ExampleRocket;
import org.sunder.exchange.PhotoRows;

/** The invented rocket: added with one press, taken away with one. And the way in for an export, with the way out of photos. */
@Controller
class ExamplePages extends Pages {

    private final ExampleRocket example;
    private final PhotoRows photos;

    ExamplePages(ExampleRocket example, PhotoRows photos) {
        this.example = example;
        this.photos = photos;
    }

    @PostMapping("/example")
    String add() {
        example.add();
        return "redirect:/";
    }

    /** What of the flyer's own hangs on it is named first, and goes along only if the flyer agreed to just that. */
    @PostMapping("/example/away")
    ModelAndView takeAway(
            @RequestParam(defaultValue = "0") int joints,
            @RequestParam(defaultValue = "0") int setups,
            @RequestParam(defaultValue = "0") int tests,
            @RequestParam(defaultValue = "0") int loadOuts,
            @RequestParam(defaultValue = "0") int marks,
            @RequestParam(defaultValue = "0") int photos) {
        if (example.takeAway(new ExampleRocket.Own(joints, setups, tests, loadOuts, marks, photos))) {
            return new ModelAndView("redirect:/");
        }
        ExampleRocket.Own own = example.own();
        ModelAndView page = new ModelAndView("page/example-away");
        page.setStatus(HttpStatus.CONFLICT);
        page.addObject("own", own);
        page.addObject("along", along(own));
        return page;
    }

    @GetMapping(path = "/import", produces = MediaType.TEXT_HTML_VALUE)
    String takeIn(Model model) {
        model.addAttribute("photos", photos.beginnings());
        return "page/import";
    }

    private static List<String> along(ExampleRocket.Own own) {
        List<String> along = new ArrayList<>();
        name(along, own.tests(), "test that you logged", "tests that you logged");
        name(along, own.setups(), "setup that you described", "setups that you described");
        name(along, own.joints(), "joint that you added", "joints that you added");
        name(along, own.loadOuts(), "load-out", "load-outs");
        name(along, own.marks(), "mark that a test is void", "marks that a test is void, or counts again");
        name(along, own.photos(), "photo of a test", "photos of tests");
        return along;
    }

    private static void name(List<String> along, int count, String one, String many) {
        if (count > 0) {
            along.add(count + " " + (count == 1 ? one : many));
        }
    }
}
