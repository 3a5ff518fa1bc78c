package org.sunder.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.sunder.advice.JointAnswer;
import org.sunder.advice.TriedChanges;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Display;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.picture.ChargeRuler;
import org.sunder.picture.ChargeRulerPicture;

/** Setups side by side: of one joint, earlier ones too, and of other joints; their rulers on one scale. */
@Controller
class ComparePages extends Pages {

    private static final int MOST = 4;

    private final Airframes airframes;
    private final TriedChanges setups;
    private final SetupPhysics physics;

    ComparePages(Airframes airframes, TriedChanges setups, SetupPhysics physics) {
        this.airframes = airframes;
        this.setups = setups;
        this.physics = physics;
    }

    /** What may be chosen; the key names a joint and a revision of its setup. */
    record Choice(String key, String words, boolean chosen) {}

    /** A column: what stands at its head, and the charges. */
    record Column(
            String title, String about, String evidence, String headline, String because, Map<Integer, String> ruler) {}

    /** A cell; it differs where it is not as in the first column. */
    record Cell(String text, boolean differs) {}

    record Line(String label, List<Cell> cells) {}

    private record Possible(Setup setup, String title, String about) {}

    private record Compared(Possible of, JointAnswer answer) {}

    @GetMapping(path = "/joints/{id}/compare", produces = MediaType.TEXT_HTML_VALUE)
    String compare(
            @PathVariable UUID id, @RequestParam(name = "with", defaultValue = "") List<String> with, Model model) {
        Joint joint = airframes.getJoint(id);
        Airframe airframe = airframes.get(joint.airframeId());
        Map<String, Possible> possible = possible(id);
        List<String> keys = with.stream()
                .filter(possible::containsKey)
                .distinct()
                .limit(MOST)
                .toList();
        List<String> shown =
                keys.isEmpty() ? possible.keySet().stream().limit(2).toList() : keys;
        List<Compared> compared = shown.stream()
                .map(possible::get)
                .filter(Objects::nonNull)
                .map(each -> new Compared(
                        each, setups.under(each.setup().jointId(), each.setup().revision())))
                .toList();
        model.addAttribute("airframe", airframe);
        model.addAttribute("joint", joint);
        model.addAttribute("columns", columns(compared));
        model.addAttribute("lines", lines(compared, new Display(airframe.units())));
        model.addAttribute(
                "choices",
                possible.entrySet().stream()
                        .map(entry -> new Choice(
                                entry.getKey(),
                                entry.getValue().title() + ", "
                                        + entry.getValue().about(),
                                shown.contains(entry.getKey())))
                        .toList());
        model.addAttribute("tooMany", with.size() > MOST);
        return "page/compare";
    }

    /** By what names each in an address. */
    private Map<String, Possible> possible(UUID joint) {
        Map<String, Possible> possible = new LinkedHashMap<>();
        for (TriedChanges.Candidate candidate : setups.candidates(joint)) {
            possible.put(candidate.joint().id() + "@" + candidate.setup().revision(), possible(candidate, joint));
        }
        return possible;
    }

    private static Possible possible(TriedChanges.Candidate candidate, UUID joint) {
        Setup setup = candidate.setup();
        if (!candidate.joint().id().equals(joint)) {
            return new Possible(
                    setup, candidate.airframe().name(), candidate.joint().name());
        }
        return candidate.inForce()
                ? new Possible(setup, "Setup in force", "revision " + setup.revision())
                : new Possible(
                        setup, "Revision " + setup.revision(), "not in force, made " + Words.of(setup.createdAt()));
    }

    private static List<Column> columns(List<Compared> compared) {
        List<ChargeRuler> rulers = compared.stream()
                .map(each -> Objects.requireNonNull(each.answer().ruler()))
                .toList();
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < compared.size(); i++) {
            int at = i;
            columns.add(column(
                    compared.get(i),
                    Drawn.across(width -> ChargeRulerPicture.onOneScale(rulers, width, ChargeRulerPicture.Size.SMALL)
                            .get(at))));
        }
        return columns;
    }

    private static Column column(Compared compared, Map<Integer, String> ruler) {
        return new Column(
                compared.of().title(),
                compared.of().about(),
                compared.answer().standing().evidence().evidence().toString(),
                AnswerWords.headline(compared.answer()),
                AnswerWords.because(compared.answer()),
                ruler);
    }

    private List<Line> lines(List<Compared> compared, Display display) {
        List<Line> lines = new ArrayList<>();
        lines.add(line(
                "what now",
                compared.stream()
                        .map(each -> AnswerWords.headline(each.answer()))
                        .toList()));
        lines.add(line(
                "ceiling",
                compared.stream()
                        .map(each -> Objects.requireNonNull(each.answer().next()))
                        .map(next -> AnswerWords.limit(next.physics().ceiling().chargeKg(), next.measure()))
                        .toList()));
        SetupColumns.of(compared.stream().map(each -> each.of().setup()).toList(), physics::find, display)
                .rows()
                .forEach(row -> lines.add(line(row.label(), row.cells())));
        return lines;
    }

    private static Line line(String label, List<String> cells) {
        return new Line(
                label,
                cells.stream()
                        .map(cell -> new Cell(cell, !cell.equals(cells.get(0))))
                        .toList());
    }
}
