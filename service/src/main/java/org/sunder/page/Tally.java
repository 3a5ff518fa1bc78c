package org.sunder.page;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.sunder.advice.JointAnswer;
import org.sunder.engine.planning.Evidence;
import org.sunder.engine.planning.NextStep;

/** How many joints are ready and how many want something. */
final class Tally {

    private enum Want {
        FLY("ready to fly"),
        FIRE("to test"),
        CHECK("to check"),
        CHANGE("to change");

        private final String words;

        Want(String words) {
            this.words = words;
        }
    }

    private Tally() {}

    /** "One joint ready to fly, two to test."; empty where there is no joint. */
    static String of(List<JointAnswer> answers) {
        Map<Want, Integer> counts = new EnumMap<>(Want.class);
        answers.forEach(answer -> counts.merge(want(answer), 1, Integer::sum));
        String words = counts.entrySet().stream()
                .map(entry -> Words.number(entry.getValue()) + " " + entry.getKey().words)
                .collect(Collectors.joining(", "));
        if (words.isEmpty()) {
            return "";
        }
        int first = words.indexOf(' ');
        String joints = words.startsWith("one ") ? " joint" : " joints";
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1, first) + joints
                + words.substring(first) + ".";
    }

    private static Want want(JointAnswer answer) {
        NextStep step = answer.next() == null ? null : answer.next().step();
        if (step instanceof NextStep.Stop) {
            return Want.FLY;
        }
        if (!(step instanceof NextStep.Fire)) {
            return Want.CHANGE;
        }
        return answer.standing().evidence().evidence() == Evidence.CONFLICTING ? Want.CHECK : Want.FIRE;
    }
}
