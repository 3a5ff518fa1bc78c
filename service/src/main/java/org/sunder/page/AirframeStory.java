package org.sunder.page;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.History;
import org.sunder.advice.JointAnswer;
import org.sunder.airframe.Display;
import org.sunder.airframe.Setup;
import org.sunder.airframe.StoredPhysics;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.Occasion;

/**
 * What happened to an airframe, as people read it: counted in a line, then told day by day.
 *
 * @param count the line
 * @param kinds what can be looked at alone, of what there is
 * @param days the newest first
 */
record AirframeStory(String count, List<TimelineEntry.Kind> kinds, List<Day> days) {

    /**
     * A day.
     *
     * @param css the classes of all that happened on it
     */
    record Day(String name, String css, List<Told> entries) {}

    /**
     * One thing that happened.
     *
     * @param joint name of its joint where the airframe has several, else null
     * @param evidence where its joint stands, if this is the newest of that joint; else null
     */
    record Told(
            TimelineEntry entry,
            @Nullable String joint,
            @Nullable String evidence) {}

    /**
     * The story of a history.
     *
     * @param history oldest first
     * @param answers where each joint stands now
     */
    static AirframeStory of(
            List<History.Entry> history,
            List<JointAnswer> answers,
            Function<Setup, StoredPhysics> physics,
            Display display) {
        Map<UUID, JointAnswer> joints = answers.stream()
                .collect(Collectors.toMap(answer -> answer.standing().joint().id(), answer -> answer));
        List<TimelineEntry> entries = entries(history, physics, display);
        Set<UUID> seen = new HashSet<>();
        List<Day> days = new ArrayList<>();
        List<Told> day = new ArrayList<>();
        for (int i = entries.size() - 1; i >= 0; i--) {
            TimelineEntry entry = entries.get(i);
            if (!day.isEmpty() && !day.get(0).entry().day().equals(entry.day())) {
                days.add(day(day));
                day = new ArrayList<>();
            }
            day.add(told(entry, joints, seen));
        }
        days.add(day(day));
        Set<TimelineEntry.Kind> kinds = EnumSet.noneOf(TimelineEntry.Kind.class);
        entries.forEach(entry -> kinds.add(entry.kind()));
        kinds.remove(TimelineEntry.Kind.OTHER);
        return new AirframeStory(count(history), List.copyOf(kinds), days);
    }

    /** Of each joint only what is met first says where it stands. */
    private static Told told(TimelineEntry entry, Map<UUID, JointAnswer> joints, Set<UUID> seen) {
        UUID joint = entry.joint();
        JointAnswer answer = joint == null ? null : joints.get(joint);
        if (joint == null || answer == null) {
            return new Told(entry, null, null);
        }
        JointSheet sheet = JointSheet.of(answer.standing());
        return new Told(entry, joints.size() == 1 ? null : sheet.name(), seen.add(joint) ? sheet.evidence() : null);
    }

    private static List<TimelineEntry> entries(
            List<History.Entry> history, Function<Setup, StoredPhysics> physics, Display display) {
        Map<Revision, Setup> setups = history.stream()
                .map(History.Entry::setup)
                .filter(Objects::nonNull)
                .collect(Collectors.toMap(
                        setup -> new Revision(setup.jointId(), setup.revision()), setup -> setup, (one, same) -> one));
        return history.stream()
                .map(entry -> {
                    Setup setup = entry.test() == null ? entry.setup() : null;
                    return TimelineEntry.of(
                            entry,
                            setup == null ? null : SetupColumns.of(sinceBefore(setup, setups), physics, display));
                })
                .toList();
    }

    private record Revision(UUID joint, int number) {}

    /** A setup, and the one before it where there is one. */
    private static List<Setup> sinceBefore(Setup setup, Map<Revision, Setup> setups) {
        Setup before = setups.get(new Revision(setup.jointId(), setup.revision() - 1));
        return before == null ? List.of(setup) : List.of(setup, before);
    }

    private static Day day(List<Told> entries) {
        String css = entries.stream()
                .map(told -> told.entry().kind().css())
                .distinct()
                .collect(Collectors.joining(" "));
        return new Day(entries.get(0).entry().day(), css, List.copyOf(entries));
    }

    /** "Four tests and one flight count, one firing is void; two setups since 13 March 2026." */
    private static String count(List<History.Entry> history) {
        List<GroundTest> fired = history.stream()
                .filter(entry -> entry.test() != null && entry.mark() == null)
                .map(History.Entry::test)
                .toList();
        List<History.Entry> setups = history.stream()
                .filter(entry -> entry.test() == null && entry.setup() != null)
                .toList();
        if (setups.isEmpty()) {
            return "No joint is described yet.";
        }
        String since = Words.counted(setups.size(), "setup") + " since "
                + Words.day(setups.get(0).at().atOffset(ZoneOffset.UTC)) + ".";
        return sentence((fired.isEmpty() ? "nothing was fired yet" : fired(fired)) + "; " + since);
    }

    private static String fired(List<GroundTest> fired) {
        int flights = (int) fired.stream()
                .filter(test -> test.counted() && test.occasion() == Occasion.FLIGHT)
                .count();
        int tests = (int) fired.stream().filter(GroundTest::counted).count() - flights;
        int left = fired.size() - tests - flights;
        String counted = tests == 0 && flights == 0
                ? "no firing counts"
                : (tests == 0 ? "" : Words.counted(tests, "test"))
                        + (tests > 0 && flights > 0 ? " and " : "")
                        + (flights == 0 ? "" : Words.counted(flights, "flight"))
                        + (tests + flights == 1 ? " counts" : " count");
        return counted
                + (left == 0 ? "" : ", " + Words.counted(left, "firing") + (left == 1 ? " does not" : " do not"));
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
