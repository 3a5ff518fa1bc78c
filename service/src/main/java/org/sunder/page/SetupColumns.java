package org.sunder.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.CavitySheet;
import org.sunder.airframe.CeilingSheet;
import org.sunder.airframe.ContentSheet;
import org.sunder.airframe.Display;
import org.sunder.airframe.Measure;
import org.sunder.airframe.PinSheet;
import org.sunder.airframe.ProfileSheet;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupSheet;
import org.sunder.airframe.StoredPhysics;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.quantity.Quantity;

/**
 * Setups of a joint side by side.
 *
 * @param heads one a setup, newest first
 * @param rows what is compared
 * @param contents what is in each, by name and size
 */
record SetupColumns(List<String> heads, List<Row> rows, List<Map<String, String>> contents) {

    private static final String IN_IT = "in it";

    /**
     * One thing compared.
     *
     * @param cells one a setup
     * @param differs whether the setups are not all alike in it
     */
    record Row(String label, List<String> cells, boolean differs) {}

    /**
     * What differs between two.
     *
     * @param before how it was, empty where it was not
     * @param now how it is, empty where it is no more
     */
    record Change(String label, String before, String now) {}

    private record Column(SetupSheet sheet, StoredPhysics stored, Display display) {

        /** Something the physics says; nothing where the setup cannot be. */
        String says(Function<JointPhysics, String> words) {
            return stored instanceof StoredPhysics.Sound sound ? words.apply(sound.physics()) : "";
        }
    }

    static SetupColumns of(List<Setup> setups, Function<Setup, StoredPhysics> physics, Display display) {
        List<Column> columns = setups.stream()
                .map(setup -> new Column(setup.sheet(), physics.apply(setup), display))
                .toList();
        Map<String, Function<Column, String>> lines = new LinkedHashMap<>();
        lines.put("what is wrong", c -> c.stored().finding().orElse(""));
        lines.put("free volume", c -> c.says(p -> Words.brief(c.display().volume(p.freeVolume()))));
        lines.put(
                "retention",
                c -> c.says(p -> Words.brief(c.display().force(p.retention().mean()))));
        lines.put("threshold pressure", c -> c.says(p -> Words.brief(c.display().pressure(p.thresholdPressure()))));
        lines.put(
                "handbook charge", c -> c.says(p -> Words.of(Display.near(p.handbookCharge(), Measure.of(c.sheet())))));
        lines.put("pins", c -> pins(c.sheet()));
        lines.put("fit force", c -> or(c.sheet().fitForce(), "none"));
        lines.put("cavity", c -> cavity(c.sheet()));
        lines.put(IN_IT, c -> contents(c.sheet()));
        lines.put(
                "powder",
                c -> String.valueOf(
                        c.sheet().powder() == null
                                ? "fine-grain black powder"
                                : c.sheet().powder()));
        lines.put("limit of the structure", c -> ceiling(c.sheet().ceiling()));
        lines.put("measure", c -> Words.of(Measure.of(c.sheet())));
        lines.put(
                "note",
                c -> String.valueOf(c.sheet().note() == null ? "" : c.sheet().note()));
        List<Row> rows = new ArrayList<>();
        lines.forEach((label, line) -> {
            List<String> cells = columns.stream().map(line).toList();
            if (!cells.stream().allMatch(String::isEmpty)) {
                rows.add(new Row(label, cells, cells.stream().distinct().count() > 1));
            }
        });
        return new SetupColumns(
                setups.stream().map(setup -> "revision " + setup.revision()).toList(),
                rows,
                setups.stream().map(setup -> sizes(setup.sheet())).toList());
    }

    /** What differs between the newest and the one after it, their notes aside; of what is in it, item by item. */
    public List<Change> changes() {
        return rows.stream()
                .filter(row -> row.differs() && !row.label().equals("note"))
                .flatMap(row -> row.label().equals(IN_IT)
                        ? items()
                        : Stream.of(new Change(
                                row.label(), row.cells().get(1), row.cells().get(0))))
                .toList();
    }

    private Stream<Change> items() {
        Map<String, String> now = contents.get(0);
        Map<String, String> before = contents.get(1);
        return Stream.concat(now.keySet().stream(), before.keySet().stream())
                .distinct()
                .filter(name -> !now.getOrDefault(name, "").equals(before.getOrDefault(name, "")))
                .map(name -> new Change(name, before.getOrDefault(name, ""), now.getOrDefault(name, "")));
    }

    /** The newest in a few words. */
    String inShort() {
        String wrong = newest("what is wrong");
        return wrong.isEmpty()
                ? newest("pins") + ", fit " + newest("fit force") + "; " + newest("cavity") + ". Handbook charge "
                        + newest("handbook charge") + "."
                : wrong;
    }

    private String newest(String label) {
        return rows.stream()
                .filter(row -> row.label().equals(label))
                .map(row -> row.cells().get(0))
                .findFirst()
                .orElse("");
    }

    static String pins(SetupSheet sheet) {
        return sheet.pins().isEmpty()
                ? "none, friction fit"
                : sheet.pins().stream().map(SetupColumns::pins).collect(Collectors.joining(", "));
    }

    private static String pins(PinSheet pins) {
        return pins.count() + " × " + pins.thread() + (pins.measured() == null ? "" : " (pulled)");
    }

    private static String cavity(SetupSheet sheet) {
        return sheet.cavity().stream()
                .map(segment -> segment.kind() == CavitySheet.Kind.NOSE && segment.profile() != null
                        ? shape(segment.profile()) + " nose, " + Words.of(segment.length())
                        : "tube, " + Words.of(segment.length()))
                .collect(Collectors.joining("; "));
    }

    private static String contents(SetupSheet sheet) {
        return sheet.contents().stream().map(SetupColumns::content).collect(Collectors.joining("; "));
    }

    private static String content(ContentSheet content) {
        Quantity<?> size = size(content);
        return content.name() + (size == null ? "" : " " + Words.of(size));
    }

    private static @Nullable Quantity<?> size(ContentSheet content) {
        return switch (content.kind()) {
            case INTRUSION -> content.depth();
            case SOLID -> content.volume();
            case FABRIC -> content.mass();
        };
    }

    /** Sizes by name; things of one name together. */
    private static Map<String, String> sizes(SetupSheet sheet) {
        return sheet.contents().stream()
                .collect(Collectors.toMap(
                        content -> String.valueOf(content.name()),
                        content -> or(size(content), "in it"),
                        (one, other) -> one + " + " + other,
                        LinkedHashMap::new));
    }

    /** The plain name of a profile, as the tiles of a setup have it. */
    private static String shape(ProfileSheet profile) {
        ProfileSheet.Shape shape = profile.shape();
        return switch (shape) {
            case TANGENT_OGIVE -> "ogive";
            case SECANT_OGIVE -> "secant ogive";
            case CONE -> "conical";
            case ELLIPSOID -> "elliptical";
            case PARABOLOID -> "parabola (power ½)";
            case PARABOLIC_SERIES -> "parabolic series";
            case POWER_SERIES -> "power series";
            case HAACK_SERIES ->
                profile.parameter() != null && profile.parameter().signum() == 0 ? "von Kármán" : "Haack";
        };
    }

    static String ceiling(@Nullable CeilingSheet ceiling) {
        if (ceiling == null) {
            return "none given: three times the threshold pressure";
        }
        return ceiling.gaugePressure() != null
                ? Words.of(ceiling.gaugePressure())
                : or(ceiling.separationSpeed(), "none given");
    }

    private static String or(@Nullable Quantity<?> quantity, String otherwise) {
        return quantity == null ? otherwise : Words.of(quantity);
    }
}
