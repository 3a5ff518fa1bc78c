package org.sunder.page;

import java.util.List;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** Setups side by side. */
@Controller
class ComparePages extends Pages {

    private final Comparison comparison;

    ComparePages(Comparison comparison) {
        this.comparison = comparison;
    }

    @GetMapping(path = "/joints/{id}/compare", produces = MediaType.TEXT_HTML_VALUE)
    String compare(
            @PathVariable UUID id, @RequestParam(name = "with", defaultValue = "") List<String> with, Model model) {
        comparison.show(id, with, null, model);
        return "page/compare";
    }
}
