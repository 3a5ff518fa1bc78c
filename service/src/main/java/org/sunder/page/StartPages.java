package org.sunder.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.sunder.advice.FleetCorrections;
import org.sunder.advice.JointAnswer;
import org.sunder.advice.Overview;
import org.sunder.advice.Overviews;
import org.sunder.advice.Standing;
import org.sunder.advice.Standings;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.groundtest.GroundTest;
import org.sunder.picture.SideView;
import org.sunder.picture.SideViewPicture;

/** Where one begins: what every joint needs; and the whole fleet at a glance. */
@Controller
class StartPages extends Pages {

    private final Airframes airframes;
    private final Standings standings;
    private final FleetCorrections corrections;
    private final Overviews overviews;

    StartPages(Airframes airframes, Standings standings, FleetCorrections corrections, Overviews overviews) {
        this.airframes = airframes;
        this.standings = standings;
        this.corrections = corrections;
        this.overviews = overviews;
    }

    /** An airframe with its joints. */
    record AirframeSheet(UUID id, String name, List<JointSheet> joints) {}

    /**
     * An airframe on the first page.
     *
     * @param last what happened last, or null
     * @param view the airframe from the side, drawn for some widths
     * @param seats its joints
     * @param wide whether it stands across the page
     * @param example whether it is the invented rocket
     */
    record CraftSheet(
            UUID id,
            String name,
            String about,
            @Nullable String last,
            Map<Integer, String> view,
            List<SeatSheet> seats,
            boolean wide,
            boolean example) {}

    @GetMapping(path = "/", produces = MediaType.TEXT_HTML_VALUE)
    String start(
            @RequestParam(defaultValue = "") String find,
            @RequestParam(defaultValue = "last") String sort,
            @RequestParam(defaultValue = "1") int page,
            Model model) {
        Overview fleet = overviews.now();
        HomePage home = HomePage.of(fleet.airframes(), fleet.lastFired(), find, sort.equals("name"), page);
        List<Boolean> wide = wide(home.shown().stream()
                .map(airframe -> fleet.joints(airframe.id()).size())
                .toList());
        List<CraftSheet> crafts = IntStream.range(0, wide.size())
                .mapToObj(i -> craft(fleet, home.shown().get(i), wide.get(i)))
                .toList();
        if (home.all() == 0) {
            model.addAttribute("welcome", WelcomePictures.ALL);
        }
        model.addAttribute("home", home);
        model.addAttribute("crafts", crafts);
        model.addAttribute(
                "tally",
                Tally.of(home.shown().stream()
                        .flatMap(airframe -> fleet.joints(airframe.id()).stream())
                        .toList()));
        return "page/start";
    }

    /**
     * Which rockets stand across the page: those of several joints, and of the others whichever would stand alone in its row.
     *
     * @param joints how many each has
     */
    static List<Boolean> wide(List<Integer> joints) {
        List<Boolean> wide = new ArrayList<>();
        boolean waiting = false; // one that has no neighbour yet
        for (int count : joints) {
            if (count > 1 && waiting) {
                wide.set(wide.size() - 1, true);
            }
            waiting = count <= 1 && !waiting;
            wide.add(count > 1);
        }
        if (waiting) {
            wide.set(wide.size() - 1, true);
        }
        return wide;
    }

    private static CraftSheet craft(Overview fleet, Airframe airframe, boolean wide) {
        List<JointAnswer> answers = fleet.joints(airframe.id());
        SideView view = fleet.view(airframe.id()).linked(joint -> "/joints/" + joint + "/plan");
        List<SeatSheet> seats = SeatSheet.of(view, answers);
        return new CraftSheet(
                airframe.id(),
                airframe.name(),
                about(airframe, answers),
                last(answers),
                view(view, seats.size(), wide),
                seats,
                wide,
                airframe.example());
    }

    private static Map<Integer, String> view(SideView view, int joints, boolean wide) {
        IntFunction<String> picture = width -> SideViewPicture.of(view, width);
        if (joints == 0) {
            return Map.of();
        }
        return wide ? Drawn.across(picture) : Drawn.inASeat(picture);
    }

    private static String about(Airframe airframe, List<JointAnswer> answers) {
        String joints = switch (answers.size()) {
            case 0 -> "no joint yet";
            case 1 -> "one joint";
            default -> answers.size() + " joints";
        };
        return airframe.outerDiameter() == null ? joints : Words.of(airframe.outerDiameter()) + ", " + joints;
    }

    private static @Nullable String last(List<JointAnswer> answers) {
        String words = null;
        Instant newest = Instant.MIN;
        for (JointAnswer answer : answers) {
            GroundTest last = answer.last();
            if (last != null && last.report().firedAt().toInstant().isAfter(newest)) {
                newest = last.report().firedAt().toInstant();
                words = words(answer, last);
            }
        }
        return words;
    }

    private static String words(JointAnswer answer, GroundTest test) {
        return "last " + AnswerWords.loaded(answer, test.report().charge()) + ": "
                + (test.counted() ? test.report().outcome().toString() : "void") + ", "
                + Words.of(test.report().firedAt());
    }

    @GetMapping(path = "/fleet", produces = MediaType.TEXT_HTML_VALUE)
    String fleet(@RequestParam(defaultValue = "1") int page, Model model) {
        HomePage newest = HomePage.of(airframes.all(), Map.of(), "", false, page);
        var fleet = corrections.now();
        List<CorrectionPicture.Row> rows = new ArrayList<>();
        rows.add(new CorrectionPicture.Row("before any test", null, fleet.beforeAnyTest()));
        rows.add(new CorrectionPicture.Row("a new airframe", null, fleet.newAirframe()));
        model.addAttribute("home", newest);
        model.addAttribute("airframes", sheets(newest.shown()));
        model.addAttribute("tests", fleet.tests());
        model.addAttribute("newAirframe", Words.of(fleet.newAirframe()));
        model.addAttribute("beforeAnyTest", Words.of(fleet.beforeAnyTest()));
        model.addAttribute("scatter", Words.percent(fleet.scatter()));
        model.addAttribute("taught", CorrectionPicture.of("Where a new airframe starts", rows));
        return "page/fleet";
    }

    private List<AirframeSheet> sheets(List<Airframe> shown) {
        Map<UUID, List<Standing>> joints =
                standings.of(shown.stream().map(Airframe::id).toList());
        return shown.stream()
                .map(airframe -> new AirframeSheet(
                        airframe.id(), airframe.name(), JointSheet.of(joints.getOrDefault(airframe.id(), List.of()))))
                .toList();
    }
}
