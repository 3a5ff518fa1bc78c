package org.sunder.page;

import java.util.List;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Display;
import org.sunder.airframe.Fits;
import org.sunder.airframe.InstalledLoadOut;
import org.sunder.airframe.JointFit;
import org.sunder.airframe.LoadOuts;
import org.sunder.problem.ProblemException;

/** What is installed for a flight, and whether it fits. */
@Controller
class LoadOutPages extends Pages {

    private final Airframes airframes;
    private final LoadOuts loadOuts;
    private final Fits fits;

    LoadOutPages(Airframes airframes, LoadOuts loadOuts, Fits fits) {
        this.airframes = airframes;
        this.loadOuts = loadOuts;
        this.fits = fits;
    }

    @GetMapping(path = "/airframes/{id}/load-outs", produces = MediaType.TEXT_HTML_VALUE)
    String list(@PathVariable UUID id, Model model) {
        Airframe airframe = airframes.get(id);
        List<JointFit> found = fits.of(id);
        Display display = new Display(airframe.units());
        model.addAttribute("airframe", airframe);
        model.addAttribute("jointless", found.isEmpty());
        model.addAttribute(
                "findings",
                found.stream()
                        .flatMap(joint -> joint.physics().finding().stream()
                                .map(finding -> joint.joint().name() + ": " + finding))
                        .toList());
        model.addAttribute("loadOuts", LoadOutStory.of(loadOuts.of(id), found, display));
        return "page/load-outs";
    }

    @GetMapping(path = "/airframes/{id}/load-outs/new", produces = MediaType.TEXT_HTML_VALUE)
    String newLoadOut(@PathVariable UUID id, Model model) {
        Airframe airframe = airframes.get(id);
        return form(airframe, airframe.name() + ": a new load-out").show(model);
    }

    @GetMapping(path = "/airframes/{id}/load-outs/{loadOutId}", produces = MediaType.TEXT_HTML_VALUE)
    String loadOut(@PathVariable UUID id, @PathVariable UUID loadOutId, Model model) {
        Airframe airframe = airframes.get(id);
        InstalledLoadOut loadOut = loadOuts.get(loadOutId);
        if (!loadOut.airframeId().equals(id)) {
            throw ProblemException.notFound("load-out", loadOutId);
        }
        return form(airframe, airframe.name() + ": " + loadOut.sheet().name())
                .about(loadOutId)
                .show(model);
    }

    private static FormPage form(Airframe airframe, String heading) {
        return FormPage.of(heading, "load-out.js")
                .of(airframe.id())
                .in(airframe.units())
                .back("/airframes/" + airframe.id() + "/load-outs", "Load-outs of " + airframe.name());
    }
}
