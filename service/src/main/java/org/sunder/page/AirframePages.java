package org.sunder.page;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.sunder.advice.Advising;
import org.sunder.advice.Basis;
import org.sunder.advice.Estimates;
import org.sunder.advice.History;
import org.sunder.advice.JointAnswer;
import org.sunder.advice.Overview;
import org.sunder.advice.Overviews;
import org.sunder.advice.Standing;
import org.sunder.advice.Standings;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Display;
import org.sunder.airframe.Measure;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.airframe.StoredPhysics;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.charge.Ceiling;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.flight.BayVents;
import org.sunder.engine.physics.flight.FlightAir;
import org.sunder.engine.physics.flight.FlightCase;
import org.sunder.photo.Photos;
import org.sunder.picture.SideView;
import org.sunder.picture.SideViewPicture;

/** One airframe: what happened to it, and the sheet to fly it by. */
@Controller
class AirframePages extends Pages {

    private final Airframes airframes;
    private final SetupPhysics physics;
    private final Standings standings;
    private final History history;
    private final Advising advising;
    private final Overviews overviews;
    private final Photos photos;
    private final Clock clock;

    AirframePages(
            Airframes airframes,
            SetupPhysics physics,
            Standings standings,
            History history,
            Advising advising,
            Overviews overviews,
            Photos photos,
            Clock clock) {
        this.airframes = airframes;
        this.physics = physics;
        this.standings = standings;
        this.history = history;
        this.advising = advising;
        this.overviews = overviews;
        this.photos = photos;
        this.clock = clock;
    }

    @GetMapping(path = "/airframes/{id}", produces = MediaType.TEXT_HTML_VALUE)
    String airframe(@PathVariable UUID id, Model model) {
        Airframe airframe = airframes.get(id);
        Overview fleet = overviews.now();
        List<JointAnswer> answers = fleet.joints(id);
        SideView view = fleet.view(id).linked(joint -> "/joints/" + joint + "/plan");
        model.addAttribute("airframe", airframe);
        model.addAttribute(
                "view", view.cuts().isEmpty() ? Map.of() : Drawn.across(width -> SideViewPicture.of(view, width)));
        model.addAttribute(
                "story", AirframeStory.of(history.of(id), answers, physics::find, new Display(airframe.units())));
        model.addAttribute("seats", SeatSheet.of(view, answers));
        model.addAttribute("photos", PhotoSheet.of(photos, ids(answers)));
        model.addAttribute(
                "corrections",
                answers.stream()
                        .collect(Collectors.toMap(
                                answer -> answer.standing().joint().id(), JointStory::correction)));
        return "page/airframe";
    }

    @GetMapping(path = "/airframes/{id}/flight-day", produces = MediaType.TEXT_HTML_VALUE)
    String flightDay(@PathVariable UUID id, @RequestParam Map<String, String> typed, Model model) {
        Airframe airframe = airframes.get(id);
        FlightDay day = new FlightDay(airframe.units(), typed);
        BayVents vents = day.vents();
        model.addAttribute("airframe", airframe);
        model.addAttribute("day", day);
        model.addAttribute(
                "joints",
                joints(id).stream().map(standing -> flight(standing, day)).toList());
        model.addAttribute("vents", vents == null ? null : VentWords.of(vents, day.display()));
        model.addAttribute("made", Words.of(clock.instant()));
        model.addAttribute("model", Basis.MODEL);
        return "page/flight-day";
    }

    private static List<UUID> ids(List<JointAnswer> answers) {
        return answers.stream().map(answer -> answer.standing().joint().id()).toList();
    }

    private List<Standing> joints(UUID airframeId) {
        return standings.of(Set.of(airframeId)).getOrDefault(airframeId, List.of());
    }

    private FlightSheetJoint flight(Standing standing, FlightDay day) {
        UUID joint = standing.joint().id();
        Setup setup = airframes.currentSetup(standing.joint());
        if (!(physics.find(setup) instanceof StoredPhysics.Sound sound)) {
            return FlightSheetJoint.of(standing, setup);
        }
        JointPhysics ground = sound.physics();
        FlightCase.Climb climb = day.climb(joint);
        FlightAir air = climb == null ? null : FlightAir.of(ground, climb);
        Ceiling ceiling = air == null ? ground.ceiling() : air.ceiling();
        return new FlightSheetJoint(
                JointSheet.of(standing),
                setup.revision(),
                SetupColumns.pins(setup.sheet()),
                Words.of(Display.never(Math.max(0, ceiling.chargeKg()), Measure.of(setup.sheet()))),
                day.eventWords(joint),
                air == null ? null : Words.brief(day.display().pressure(air.trappedPressure())),
                Stream.concat(
                                ground.warnings().stream().filter(Warning::changesWhatAChargeDoes),
                                air == null ? Stream.of() : air.warnings().stream())
                        .map(Warning::text)
                        .toList(),
                FlightAnswer.of(() -> advising.flight(joint, Estimates.TARGET, climb), day.display()));
    }
}
