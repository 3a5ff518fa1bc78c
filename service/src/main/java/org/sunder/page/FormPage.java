package org.sunder.page;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.ui.Model;
import org.sunder.airframe.UnitSystem;

/**
 * A page that is a form and nothing else; its module fills it.
 *
 * @param heading what it is about
 * @param script the module
 * @param id what is changed, or null where something new is entered
 * @param airframe the airframe that it belongs to, if any
 * @param units units it is typed in, if they are known
 * @param back where one came from, if there is such a place
 * @param backWords what that place is called
 * @param removal where what was entered by mistake is deleted, or null
 */
record FormPage(
        String heading,
        String script,
        @Nullable UUID id,
        @Nullable UUID airframe,
        @Nullable UnitSystem units,
        @Nullable String back,
        @Nullable String backWords,
        @Nullable String removal) {

    static FormPage of(String heading, String script) {
        return new FormPage(heading, script, null, null, null, null, null, null);
    }

    FormPage about(UUID changed) {
        return new FormPage(heading, script, changed, airframe, units, back, backWords, removal);
    }

    FormPage of(UUID owner) {
        return new FormPage(heading, script, id, owner, units, back, backWords, removal);
    }

    FormPage in(UnitSystem system) {
        return new FormPage(heading, script, id, airframe, system, back, backWords, removal);
    }

    FormPage back(String path, String words) {
        return new FormPage(heading, script, id, airframe, units, path, words, removal);
    }

    FormPage removed(String path) {
        return new FormPage(heading, script, id, airframe, units, back, backWords, path);
    }

    /** Puts it into the model; the name of its template. */
    String show(Model model) {
        model.addAttribute("form", this);
        return "page/form";
    }
}
