package org.sunder.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.sunder.advice.FleetCorrections;
import org.sunder.advice.Standing;
import org.sunder.advice.Standings;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;

/** Where one begins, and the whole fleet at a glance. */
@Controller
class StartPages extends Pages {

    private final Airframes airframes;
    private final Standings standings;
    private final FleetCorrections corrections;

    StartPages(Airframes airframes, Standings standings, FleetCorrections corrections) {
        this.airframes = airframes;
        this.standings = standings;
        this.corrections = corrections;
    }

    /** An airframe with its joints. */
    record AirframeSheet(UUID id, String name, List<JointSheet> joints) {}

    @GetMapping(path = "/", produces = MediaType.TEXT_HTML_VALUE)
    String start(Model model) {
        model.addAttribute("airframes", sheets());
        return "page/start";
    }

    @GetMapping(path = "/fleet", produces = MediaType.TEXT_HTML_VALUE)
    String fleet(Model model) {
        List<AirframeSheet> sheets = sheets();
        var fleet = corrections.now();
        List<CorrectionPicture.Row> rows = new ArrayList<>();
        rows.add(new CorrectionPicture.Row("before any test", null, true, fleet.beforeAnyTest()));
        rows.add(new CorrectionPicture.Row("a new airframe", null, true, fleet.newAirframe()));
        model.addAttribute("airframes", sheets);
        model.addAttribute("tests", fleet.tests());
        model.addAttribute("newAirframe", Words.of(fleet.newAirframe()));
        model.addAttribute("beforeAnyTest", Words.of(fleet.beforeAnyTest()));
        model.addAttribute("scatter", Words.percent(fleet.scatter()));
        model.addAttribute("taught", CorrectionPicture.of("Where a new airframe starts", rows));
        return "page/fleet";
    }

    private List<AirframeSheet> sheets() {
        Map<UUID, List<Standing>> joints = standings.byAirframe();
        return airframes.all().stream()
                .filter(airframe -> airframe.archivedAt() == null)
                .sorted(Comparator.comparing(Airframe::createdAt).reversed())
                .map(airframe -> new AirframeSheet(
                        airframe.id(), airframe.name(), JointSheet.of(joints.getOrDefault(airframe.id(), List.of()))))
                .toList();
    }
}
