package org.sunder.page;

import io.swagger.v3.oas.annotations.Hidden;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.util.Objects;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.sunder.advice.TriedChange;
import org.sunder.advice.TriedChanges;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Display;
import org.sunder.airframe.SetupSheet;

/** The part of the setup's page that says what a change would do. Faults are answered as the API answers them. */
@Hidden
@Controller
class TriedChangePart {

    private final Airframes airframes;
    private final TriedChanges tried;

    TriedChangePart(Airframes airframes, TriedChanges tried) {
        this.airframes = airframes;
        this.tried = tried;
    }

    /** A whole setup, as it would be given to the joint. */
    record Question(
            @NotNull(message = "the setup is needed") @Valid SetupSheet setup) {}

    @PostMapping(path = "/joints/{id}/tried-change", produces = MediaType.TEXT_HTML_VALUE)
    String of(@PathVariable UUID id, @RequestBody Question body, Model model) {
        TriedChange change = tried.of(id, body.setup());
        Airframe airframe = airframes.get(airframes.getJoint(id).airframeId());
        model.addAttribute(
                "tried",
                TriedSheet.of(
                        change,
                        Objects.requireNonNull(change.after().next()),
                        Objects.requireNonNull(change.after().ruler()),
                        new Display(airframe.units())));
        return "page/tried-change";
    }
}
