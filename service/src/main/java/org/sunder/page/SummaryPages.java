package org.sunder.page;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.sunder.advice.Advising;
import org.sunder.advice.Basis;
import org.sunder.advice.Estimates;
import org.sunder.advice.JointAnswer;
import org.sunder.advice.Overviews;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Display;

/** An airframe on one sheet for the range safety officer: what it is, what parts it with what, and how far that was tested. */
@Controller
class SummaryPages extends Pages {

    private final Airframes airframes;
    private final Overviews overviews;
    private final Advising advising;
    private final Clock clock;

    SummaryPages(Airframes airframes, Overviews overviews, Advising advising, Clock clock) {
        this.airframes = airframes;
        this.overviews = overviews;
        this.advising = advising;
        this.clock = clock;
    }

    @GetMapping(path = "/airframes/{id}/summary", produces = MediaType.TEXT_HTML_VALUE)
    String summary(@PathVariable UUID id, Model model) {
        Airframe airframe = airframes.get(id);
        Display display = new Display(airframe.units());
        boolean inUse = airframe.archivedAt() == null;
        model.addAttribute("airframe", airframe);
        model.addAttribute(
                "diameter", airframe.outerDiameter() == null ? "not stated" : Words.of(airframe.outerDiameter()));
        model.addAttribute(
                "joints",
                inUse
                        ? overviews.now().joints(id).stream()
                                .map(answer -> joint(answer, display))
                                .toList()
                        : List.of());
        model.addAttribute("made", Words.of(clock.instant()));
        model.addAttribute("model", Basis.MODEL);
        return "page/summary";
    }

    private SummaryJoint joint(JointAnswer answer, Display display) {
        JointSheet sheet = JointSheet.of(answer.standing());
        FlightAnswer flight = answer.next() == null
                ? FlightAnswer.none(sheet)
                : FlightAnswer.of(() -> advising.flight(sheet.id(), Estimates.TARGET), display);
        return SummaryJoint.of(
                sheet, answer, airframes.currentSetup(answer.standing().joint()), flight, display);
    }
}
