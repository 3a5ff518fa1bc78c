package org.sunder.page;

import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Joint;

/** Forms for an airframe, a joint, and a change of its setup. */
@Controller
class SetupPages extends Pages {

    private final Airframes airframes;

    SetupPages(Airframes airframes) {
        this.airframes = airframes;
    }

    @GetMapping(path = "/airframes/new", produces = MediaType.TEXT_HTML_VALUE)
    String newAirframe(Model model) {
        return FormPage.of("A new airframe", "airframe.js").show(model);
    }

    @GetMapping(path = "/airframes/{id}/edit", produces = MediaType.TEXT_HTML_VALUE)
    String editAirframe(@PathVariable UUID id, Model model) {
        Airframe airframe = airframes.get(id);
        return FormPage.of(airframe.name() + ": name, units, notes", "airframe.js")
                .about(id)
                .in(airframe.units())
                .back("/airframes/" + id, airframe.name())
                .removed("/airframes/" + id + "/remove")
                .show(model);
    }

    @GetMapping(path = "/airframes/{id}/joints/new", produces = MediaType.TEXT_HTML_VALUE)
    String newJoint(@PathVariable UUID id, Model model) {
        Airframe airframe = airframes.get(id);
        model.addAttribute("airframe", airframe);
        model.addAttribute("heading", airframe.name() + ": a new joint");
        return "page/setup";
    }

    @GetMapping(path = "/joints/{id}", produces = MediaType.TEXT_HTML_VALUE)
    String joint(@PathVariable UUID id, Model model) {
        Joint joint = airframes.getJoint(id);
        Airframe airframe = airframes.get(joint.airframeId());
        model.addAttribute("airframe", airframe);
        model.addAttribute("joint", joint);
        model.addAttribute("heading", airframe.name() + ", " + joint.name() + ": setup");
        return "page/setup";
    }
}
