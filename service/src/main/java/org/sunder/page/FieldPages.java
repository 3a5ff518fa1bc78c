package org.sunder.page;

import io.swagger.v3.oas.annotations.Hidden;
import java.util.UUID;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.ResponseBody;
import org.sunder.caution.Caution;

/** The page used at the field. It is the same for everyone and every joint, so that a phone can keep it. */
@Hidden
@Controller
class FieldPages {

    private static final MediaType SCRIPT = new MediaType("text", "javascript");
    private static final MediaType MANIFEST = new MediaType("application", "manifest+json");

    private final OfflineWorker worker;

    FieldPages(OfflineWorker worker) {
        this.worker = worker;
    }

    @ModelAttribute
    void caution(Model model) {
        model.addAttribute("beforeFiring", Caution.beforeFiring());
        model.addAttribute("terms", Term.AT_THE_FIELD);
    }

    @GetMapping(path = "/field", produces = MediaType.TEXT_HTML_VALUE)
    String field() {
        return "page/field";
    }

    @GetMapping(path = "/field/{joint}", produces = MediaType.TEXT_HTML_VALUE)
    String joint(@PathVariable UUID joint) {
        return "page/field";
    }

    @GetMapping("/worker.js")
    @ResponseBody
    ResponseEntity<String> worker() {
        return ResponseEntity.ok()
                .contentType(SCRIPT)
                .cacheControl(CacheControl.noCache())
                .body(worker.script());
    }

    @GetMapping("/manifest.webmanifest")
    @ResponseBody
    ResponseEntity<Resource> manifest() {
        return ResponseEntity.ok()
                .contentType(MANIFEST)
                .cacheControl(CacheControl.noCache())
                .body(new ClassPathResource("manifest.webmanifest"));
    }
}
