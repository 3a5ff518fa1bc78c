package org.sunder.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.sunder.advice.ChangeWords;
import org.sunder.advice.JointAnswer;
import org.sunder.advice.TriedChange;
import org.sunder.advice.TriedChanges;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Display;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.airframe.SetupSheet;
import org.sunder.picture.ChargeRuler;
import org.sunder.picture.ChargeRulerPicture;

/**
 * Setups side by side: in force, earlier, tried and not stored, ways on that an answer names, and those of other joints; their
 * rulers on one scale.
 */
@Component
class Comparison {

    /** What names a tried change in an address; the setup itself stands in no address. */
    static final String TRIED = "tried";

    private static final int MOST = 4;
    private static final int AT_FIRST = 2;

    private final Airframes airframes;
    private final TriedChanges setups;
    private final SetupPhysics physics;

    Comparison(Airframes airframes, TriedChanges setups, SetupPhysics physics) {
        this.airframes = airframes;
        this.setups = setups;
        this.physics = physics;
    }

    /** What may be chosen; the key names a joint and a revision of its setup, a way on, or the tried change. */
    record Choice(String key, String words, boolean chosen) {}

    /** A column: what stands at its head, and the charges. */
    record Column(
            String title, String about, String evidence, String headline, String because, Map<Integer, String> ruler) {}

    /** A cell; it differs where it is not as in the first column. */
    record Cell(String text, boolean differs) {}

    record Line(String label, List<Cell> cells) {}

    /** What may be looked at; it is worked out only where it is. */
    private record Possible(String title, String about, Supplier<Seen> seen) {}

    private record Seen(Setup setup, JointAnswer answer) {}

    private record Compared(String title, String about, Setup setup, JointAnswer answer) {}

    /**
     * Puts setups beside each other into a model.
     *
     * @param id of the joint
     * @param with keys of what is asked for; those of nothing are passed over, and with none the joint's own come first
     * @param tried a setup looked at and not stored, or null
     * @throws org.sunder.problem.ProblemException 404 where there is no such joint, 422 naming all that is not sound in the tried
     *     setup
     */
    void show(UUID id, List<String> with, @Nullable SetupSheet tried, Model model) {
        Joint joint = airframes.getJoint(id);
        Airframe airframe = airframes.get(joint.airframeId());
        Display display = new Display(airframe.units());
        Map<String, Possible> possible = possible(id, tried, display);
        List<String> shown = shown(possible, with);
        List<Compared> compared = shown.stream()
                .map(possible::get)
                .filter(Objects::nonNull)
                .map(Comparison::compared)
                .toList();
        model.addAttribute("airframe", airframe);
        model.addAttribute("joint", joint);
        model.addAttribute("columns", columns(compared));
        model.addAttribute("lines", lines(compared, display));
        model.addAttribute(
                "choices",
                possible.entrySet().stream()
                        .filter(entry -> !entry.getKey().equals(TRIED))
                        .map(entry -> new Choice(
                                entry.getKey(),
                                entry.getValue().title() + ", "
                                        + entry.getValue().about(),
                                shown.contains(entry.getKey())))
                        .toList());
        model.addAttribute("triedAsked", with.contains(TRIED));
        model.addAttribute("tooMany", with.size() > MOST);
    }

    private static List<String> shown(Map<String, Possible> possible, List<String> with) {
        List<String> asked = with.stream()
                .filter(possible::containsKey)
                .distinct()
                .limit(MOST)
                .toList();
        if (!asked.isEmpty()) {
            return asked;
        }
        long notStored =
                possible.keySet().stream().filter(key -> !key.contains("@")).count();
        return possible.keySet().stream()
                .limit(Math.min(MOST, Math.max(AT_FIRST, 1 + notStored)))
                .toList();
    }

    private static Compared compared(Possible possible) {
        Seen seen = possible.seen().get();
        return new Compared(possible.title(), possible.about(), seen.setup(), seen.answer());
    }

    /** By what names each in an address: the setup in force, what would change it, those before it, those of other joints. */
    private Map<String, Possible> possible(UUID joint, @Nullable SetupSheet tried, Display display) {
        Map<String, Possible> possible = new LinkedHashMap<>();
        List<TriedChanges.Candidate> candidates = setups.candidates(joint);
        candidates.stream().filter(one -> own(one, joint) && one.inForce()).forEach(one -> put(one, joint, possible));
        if (tried != null) {
            possible.put(TRIED, new Possible("Tried, not stored", "as it is typed", () -> tried(joint, tried)));
        }
        for (TriedChanges.WayOn way : setups.waysOn(joint)) {
            possible.put(
                    way.change().kind().toString(),
                    new Possible(
                            "A way on, not stored",
                            uncapitalised(ChangeWords.inShort(way.change(), display)),
                            () -> tried(joint, way.sheet())));
        }
        candidates.forEach(one -> put(one, joint, possible));
        return possible;
    }

    private static String uncapitalised(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    private Seen tried(UUID joint, SetupSheet sheet) {
        TriedChange change = setups.of(joint, sheet);
        return new Seen(change.setup(), change.after());
    }

    private void put(TriedChanges.Candidate candidate, UUID joint, Map<String, Possible> possible) {
        Setup setup = candidate.setup();
        String title = own(candidate, joint)
                ? candidate.inForce() ? "Setup in force" : "Revision " + setup.revision()
                : candidate.airframe().name();
        String about = own(candidate, joint)
                ? candidate.inForce()
                        ? "revision " + setup.revision()
                        : "not in force, made " + Words.of(setup.createdAt())
                : candidate.joint().name();
        possible.putIfAbsent(
                candidate.joint().id() + "@" + setup.revision(),
                new Possible(title, about, () -> new Seen(setup, setups.under(setup.jointId(), setup.revision()))));
    }

    private static boolean own(TriedChanges.Candidate candidate, UUID joint) {
        return candidate.joint().id().equals(joint);
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
                compared.title(),
                compared.about(),
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
        SetupColumns.of(compared.stream().map(each -> each.setup()).toList(), physics::find, display)
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
