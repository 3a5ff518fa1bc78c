package org.sunder.page;

import io.swagger.v3.oas.annotations.Hidden;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
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
import org.sunder.web.RequestList;

/** The parts of pages that say what a change would do, alone or beside others. Faults are answered as the API answers them. */
@Hidden
@Controller
class TriedChangePart {

    private final Airframes airframes;
    private final TriedChanges tried;
    private final Comparison comparison;

    TriedChangePart(Airframes airframes, TriedChanges tried, Comparison comparison) {
        this.airframes = airframes;
        this.tried = tried;
        this.comparison = comparison;
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

    /**
     * A whole setup, beside others.
     *
     * @param with keys of the setups asked for, as in the address of the page
     */
    record Beside(
            @NotNull(message = "the setup is needed") @Valid SetupSheet setup,

            @Size(max = 200, message = "at most 200 setups") List<@NotNull(message = "a key is needed") String> with) {

        Beside {
            with = RequestList.of(with);
        }
    }

    @PostMapping(path = "/joints/{id}/compare", produces = MediaType.TEXT_HTML_VALUE)
    String beside(@PathVariable UUID id, @RequestBody Beside body, Model model) {
        comparison.show(id, body.with(), body.setup(), model);
        return "page/compared";
    }
}
