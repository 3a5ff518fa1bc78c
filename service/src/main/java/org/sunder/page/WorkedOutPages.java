package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.sunder.advice.Loads;
import org.sunder.advice.NextAdvice;
import org.sunder.advice.Overviews;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Display;
import org.sunder.airframe.Fits;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Measure;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.airframe.SetupSheet;
import org.sunder.airframe.StoredPhysics;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.flight.PinsInFlight;
import org.sunder.engine.quantity.Length;

/**
 * What is worked out of a joint's setup where it is asked: whether its pins hold in flight, how fast its parts leave each other, and
 * what a bay pushed in more does.
 */
@Controller
class WorkedOutPages extends Pages {

    private static final String NO_OTHER = "none";

    private final Airframes airframes;
    private final SetupPhysics physics;
    private final Fits fits;
    private final Overviews overviews;
    private final Loads loads;

    WorkedOutPages(Airframes airframes, SetupPhysics physics, Fits fits, Overviews overviews, Loads loads) {
        this.airframes = airframes;
        this.fits = fits;
        this.physics = physics;
        this.overviews = overviews;
        this.loads = loads;
    }

    /** Something to choose from. */
    record Choice(String key, String words, boolean chosen) {}

    @GetMapping(path = "/joints/{id}/pins-in-flight", produces = MediaType.TEXT_HTML_VALUE)
    String pinsInFlight(@PathVariable UUID id, @RequestParam Map<String, String> typed, Model model) {
        Asked asked = asked(id, model);
        PinsForm form = new PinsForm(asked.airframe().units(), typed);
        model.addAttribute("form", form);
        SetupSheet sheet = asked.setup().sheet();
        model.addAttribute("pinned", !sheet.pins().isEmpty());
        model.addAttribute("pins", SetupColumns.pins(sheet));
        if (asked.stored() instanceof StoredPhysics.Sound sound && !sheet.pins().isEmpty()) {
            PinsInFlight found = form.answer(sound.physics().setup());
            model.addAttribute(
                    "found",
                    found == null ? null : PinsSheet.of(found, form.margin(), form.display(), Measure.of(sheet)));
        }
        return "page/pins-in-flight";
    }

    @GetMapping(path = "/joints/{id}/speed", produces = MediaType.TEXT_HTML_VALUE)
    String speed(@PathVariable UUID id, @RequestParam Map<String, String> typed, Model model) {
        SpeedForm form = new SpeedForm(asked(id, model).airframe().units(), typed);
        model.addAttribute("form", form);
        NextAdvice next = overviews.now().joint(id).next();
        model.addAttribute(
                "found",
                next == null ? null : form.answer(next, loads.at(id).partings()).orElse(null));
        return "page/speed";
    }

    @GetMapping(path = "/joints/{id}/depth", produces = MediaType.TEXT_HTML_VALUE)
    String depth(
            @PathVariable UUID id,
            @RequestParam Map<String, String> typed,
            @RequestParam(required = false) @Nullable String other,
            Model model) {
        Asked asked = asked(id, model);
        DepthForm form = new DepthForm(asked.airframe().units(), typed);
        model.addAttribute("form", form);
        List<Joint> others = airframes.jointsOf(asked.airframe().id()).stream()
                .filter(each -> !each.id().equals(id) && side(each).isPresent())
                .toList();
        Joint chosen = others.stream()
                .filter(each -> other == null || each.id().toString().equals(other))
                .findFirst()
                .orElse(null);
        model.addAttribute("choices", choices(others, chosen));
        model.addAttribute("otherName", chosen == null ? null : chosen.name());
        side(asked.joint()).ifPresent(here -> {
            DepthTable.Side there = chosen == null ? null : side(chosen).orElse(null);
            double both = there == null ? 0 : here.depth() + there.depth();
            double farthest = both > 0 ? both : here.setup().emptyCavity().depth();
            List<Length> depths = form.depths(here.depth(), farthest);
            model.addAttribute("bay", here.setup().contents().get(here.bay()).name());
            model.addAttribute("present", form.display().depth(here.depth()));
            if (!depths.isEmpty()) {
                Length at = form.at(depths, here.depth());
                model.addAttribute("slider", form.slider(depths, at));
                model.addAttribute(
                        "found",
                        DepthTable.of(
                                depths,
                                at,
                                here,
                                there,
                                (side, deepest) -> gear(side, deepest, form.display()),
                                form.display()));
            }
        });
        return "page/depth";
    }

    /** Whether what is packed on a side fits there with what is pushed in reaching to a depth. */
    private List<DepthAt.Gear> gear(DepthTable.Side side, Length deepest, Display display) {
        List<DepthAt.Gear> packed = fits.at(side.joint(), deepest).stream()
                .map(at ->
                        new DepthAt.Gear(at.fit().fits(), at.loadOut().sheet().name(), FitWords.of(at.fit(), display)))
                .toList();
        return packed.isEmpty()
                ? List.of(new DepthAt.Gear(
                        true, "What its setup has in it", "Fits by its volume; no load-out says how long it is."))
                : packed;
    }

    private static List<Choice> choices(List<Joint> others, @Nullable Joint chosen) {
        if (others.isEmpty()) {
            return List.of();
        }
        List<Choice> choices = new ArrayList<>();
        others.forEach(each -> choices.add(new Choice(each.id().toString(), each.name(), each.equals(chosen))));
        choices.add(new Choice(NO_OTHER, "leave it out", chosen == null));
        return choices;
    }

    /** A joint as a side of what is pushed in at it, or empty where nothing is or its setup cannot be. */
    private Optional<DepthTable.Side> side(Joint joint) {
        Setup setup = airframes.currentSetup(joint);
        if (!(physics.find(setup) instanceof StoredPhysics.Sound sound)) {
            return Optional.empty();
        }
        JointSetup described = sound.physics().setup();
        for (int i = 0; i < described.contents().size(); i++) {
            if (described.contents().get(i) instanceof Content.Intrusion) {
                return Optional.of(new DepthTable.Side(joint, described, i, Measure.of(setup.sheet())));
            }
        }
        return Optional.empty();
    }

    /** What a page is asked about, shown by every one of them. */
    private record Asked(Airframe airframe, Joint joint, Setup setup, StoredPhysics stored) {}

    private Asked asked(UUID jointId, Model model) {
        Joint joint = airframes.getJoint(jointId);
        Airframe airframe = airframes.get(joint.airframeId());
        Setup setup = airframes.currentSetup(joint);
        StoredPhysics stored = physics.find(setup);
        model.addAttribute("airframe", airframe);
        model.addAttribute("joint", joint);
        model.addAttribute("revision", setup.revision());
        model.addAttribute("finding", stored.finding().orElse(null));
        return new Asked(airframe, joint, setup, stored);
    }
}
