package org.sunder.page;

import static java.util.stream.Collectors.toMap;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.sunder.advice.ChangeWords;
import org.sunder.advice.Curves;
import org.sunder.advice.JointAnswer;
import org.sunder.advice.LoadWords;
import org.sunder.advice.Loads;
import org.sunder.advice.NextAdvice;
import org.sunder.advice.Overview;
import org.sunder.advice.Overviews;
import org.sunder.advice.ReasonWords;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Display;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.caution.Caution;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.posterior.OutcomeProbabilities;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.PartingLoad;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.quantity.Speed;
import org.sunder.groundtest.Films;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.Occasion;
import org.sunder.persistence.DurableTransactions;
import org.sunder.photo.Photos;
import org.sunder.picture.ChargeRuler;
import org.sunder.picture.ChargeRulerPicture;
import org.sunder.picture.SideView;
import org.sunder.picture.SideViewPicture;

/** A joint: what now, and why; what follows each outcome, what is known and what is missing. */
@Controller
class PlanPages extends Pages {

    private final Airframes airframes;
    private final Overviews overviews;
    private final Curves curves;
    private final SetupPhysics physics;
    private final Photos photos;
    private final Films films;
    private final Loads loads;
    private final DurableTransactions transactions;

    PlanPages(
            Airframes airframes,
            Overviews overviews,
            Curves curves,
            SetupPhysics physics,
            Photos photos,
            Films films,
            Loads loads,
            DurableTransactions transactions) {
        this.airframes = airframes;
        this.overviews = overviews;
        this.curves = curves;
        this.physics = physics;
        this.photos = photos;
        this.films = films;
        this.loads = loads;
        this.transactions = transactions;
    }

    /**
     * What an outcome would lead to.
     *
     * @param chance of it: "86 in 100"
     * @param step what to do then
     * @param why in a few words
     */
    record Then(String outcome, String chance, String step, String why) {}

    /**
     * A firing in the list of all.
     *
     * @param load what a separation whose speed was measured asked of harness and bulkheads, in words
     * @param strained that it passed what was stated, or null
     */
    record Shot(
            UUID id,
            String charge,
            String mark,
            String did,
            String when,
            @Nullable String by,
            int revision,
            boolean voided,
            @Nullable String note,
            @Nullable String load,
            @Nullable String strained) {}

    @GetMapping(path = "/joints/{id}/plan", produces = MediaType.TEXT_HTML_VALUE)
    String plan(@PathVariable UUID id, @RequestParam(required = false) @Nullable String stored, Model model) {
        Overview fleet = overviews.now();
        JointAnswer answer = fleet.joint(id);
        Airframe airframe = airframes.get(answer.standing().joint().airframeId());
        SideView view = fleet.view(airframe.id()).opened(id.toString()).linked(joint -> "/joints/" + joint + "/plan");
        SeatSheet seat = SeatSheet.of(0, answer, Map.of());
        model.addAttribute("airframe", airframe);
        model.addAttribute("stored", stored != null);
        model.addAttribute("jointsSoFar", view.cuts().size());
        model.addAttribute("seat", seat);
        model.addAttribute("view", Drawn.across(width -> SideViewPicture.of(view, width)));
        List<Shot> shots = shots(answer, new Display(airframe.units()));
        model.addAttribute("shots", shots);
        model.addAttribute("strained", shots.isEmpty() ? null : shots.get(0).strained());
        model.addAttribute("photos", PhotoSheet.of(photos, List.of(id)));
        if (answer.next() != null && answer.ruler() != null) {
            advise(answer, answer.next(), answer.ruler(), airframe, model);
            if (answer.next().step() instanceof NextStep.Fire) {
                model.addAttribute("outlook", Outlook.of(fleet.ladder(id, Outlook.DEPTH)));
            }
        }
        return "page/plan";
    }

    private void advise(JointAnswer answer, NextAdvice next, ChargeRuler ruler, Airframe airframe, Model model) {
        UUID id = answer.standing().joint().id();
        Setup setup = airframes.currentSetup(answer.standing().joint());
        boolean pulled = setup.sheet().pins().stream().allMatch(pins -> pins.measured() != null);
        List<Known> known = new ArrayList<>(Known.of(answer, next, setup.revision()));
        known.add(Known.pins(next.physics().setup().pins(), pulled));
        model.addAttribute(
                "ruler", Drawn.across(width -> ChargeRulerPicture.of(ruler, width, ChargeRulerPicture.Size.LARGE)));
        model.addAttribute("films", FilmsSheet.of(films.own().isPresent(), next));
        model.addAttribute("then", then(next));
        model.addAttribute(
                "ways",
                next.changes().stream()
                        .map(change -> ChangeWords.of(change, next.measure(), new Display(airframe.units())))
                        .toList());
        model.addAttribute("known", known);
        model.addAttribute("needs", answer.standing().evidence().whatWouldRaiseIt());
        model.addAttribute("never", AnswerWords.limit(next.physics().ceiling().chargeKg(), next.measure()));
        model.addAttribute(
                "warnings",
                next.physics().warnings().stream().map(Warning::text).toList());
        model.addAttribute(
                "line", next.step() instanceof NextStep.Fire ? Caution.beforeFiring() : Caution.OTHERS_DECIDE.text());
        model.addAttribute(
                "story",
                JointStory.of(
                        answer,
                        ruler,
                        curves.of(id),
                        SetupColumns.of(lastTwo(id), physics::find, new Display(airframe.units()))));
        model.addAttribute("facts", facts(next.physics(), new Display(airframe.units()), next));
        model.addAttribute("revision", setup.revision());
        model.addAttribute("made", Words.of(setup.createdAt()));
    }

    /** The flyer says whether firings are filmed. */
    @PostMapping("/joints/{id}/films")
    String film(@PathVariable UUID id, @RequestParam boolean on) {
        airframes.getJoint(id);
        transactions.run(() -> films.choose(on ? Films.USUAL_PERCENT : null));
        return "redirect:/joints/" + id + "/plan#films";
    }

    private List<Setup> lastTwo(UUID joint) {
        List<Setup> all = airframes.setupsOf(joint);
        return all.subList(0, Math.min(2, all.size()));
    }

    private static List<Then> then(NextAdvice next) {
        if (!(next.step() instanceof NextStep.Fire fire)) {
            return List.of();
        }
        List<Then> all = new ArrayList<>(fire.then().stream()
                .map(branch -> new Then(
                        branch.outcome().toString(),
                        AnswerWords.inHundred(chance(fire.probabilities(), branch.outcome())),
                        AnswerWords.brief(branch.step(), next.measure()),
                        ReasonWords.inShort(branch.step().reason().code())))
                .toList());
        Collections.reverse(all); // what one hopes for comes first
        return all;
    }

    private static double chance(OutcomeProbabilities chances, Outcome outcome) {
        return switch (outcome) {
            case NONE -> chances.none();
            case PARTIAL -> chances.partial();
            case SEPARATED -> chances.separated();
        };
    }

    private List<Shot> shots(JointAnswer answer, Display display) {
        Map<UUID, PartingLoad> measured = answer.next() == null
                ? Map.of()
                : loads.at(answer.standing().joint().id()).partings().stream()
                        .collect(toMap(parting -> parting.test().id(), Loads.Parting::load));
        List<Shot> all = new ArrayList<>(answer.tests().stream()
                .map(test -> shot(answer, test, measured.get(test.id()), display))
                .toList());
        Collections.reverse(all);
        return all;
    }

    private static Shot shot(JointAnswer answer, GroundTest test, @Nullable PartingLoad load, Display display) {
        String did = (test.occasion() == Occasion.FLIGHT ? "in flight: " : "")
                + test.report().outcome()
                + (test.report().damaged() ? ", it broke something" : "")
                + (test.report().containment() == null
                        ? ""
                        : ", " + Words.held(test.report().containment()));
        String why = test.finding() != null
                ? test.finding()
                : test.voided()
                        ? "Void: " + test.marks().get(test.marks().size() - 1).reason()
                        : test.report().notes();
        return new Shot(
                test.id(),
                AnswerWords.loaded(answer, test.report().charge()),
                test.counted() ? test.report().outcome().toString() : "void",
                did,
                Words.of(test.report().firedAt()),
                test.loggedBy() == null ? null : Words.sender(test.loggedBy()),
                test.setupRevision(),
                test.voided(),
                why,
                load == null ? parted(test) : LoadWords.of(load, display),
                load == null ? null : LoadWords.warning(load, display));
    }

    /** The speed alone, of a test that does not count or whose setup predicts none. */
    private static @Nullable String parted(GroundTest test) {
        Speed speed = test.report().speed();
        return speed == null ? null : "Parted at " + Words.brief(speed) + ".";
    }

    /** A value of the setup in force; the slug is that of its term. */
    record Fact(
            String slug,
            String what,
            String value,
            @Nullable String more) {}

    private static List<Fact> facts(JointPhysics physics, Display display, NextAdvice next) {
        return List.of(
                new Fact(
                        "retention",
                        "Retention",
                        Words.brief(display.force(physics.retention().mean())),
                        "what pins and fit hold"),
                new Fact(
                        "free-volume",
                        "Free volume",
                        Words.brief(display.volume(physics.freeVolume())),
                        "that the gas fills"),
                new Fact(
                        "threshold-pressure",
                        "Threshold pressure",
                        Words.brief(display.pressure(physics.thresholdPressure())),
                        "on " + Words.brief(display.area(physics.area()))),
                new Fact(
                        "handbook-charge",
                        "Handbook charge",
                        AnswerWords.near(physics.handbookCharge(), next.measure()),
                        "± " + Math.round(100 * physics.uncertainty().total()) + " %"),
                new Fact("correction", "Correction learned", Words.of(next.correction()), "times the handbook charge"));
    }
}
