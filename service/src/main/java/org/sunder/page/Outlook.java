package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.sunder.advice.LadderAdvice;
import org.sunder.airframe.Display;
import org.sunder.engine.planning.Ladder;

/**
 * What further tests of a joint would buy, and cost.
 *
 * @param done how likely testing is done after one more test, after two, and so on
 * @param pack what to take along
 */
record Outlook(String done, String pack) {

    /** Tests looked ahead. */
    static final int DEPTH = 3;

    static Outlook of(LadderAdvice advice) {
        return new Outlook(done(advice.ladder().doneAfter()), pack(advice));
    }

    /** "Done after one more test: 85 in 100; after two: 97 in 100"; a further test that adds nothing is left out. */
    static String done(List<Double> doneAfter) {
        List<String> words = new ArrayList<>();
        String last = AnswerWords.inHundred(0);
        for (int tests = 1; tests < doneAfter.size(); tests++) {
            String chance = AnswerWords.inHundred(doneAfter.get(tests));
            if (!chance.equals(last)) {
                words.add(Words.counted(tests, words.isEmpty() ? "more test" : "test") + ": " + chance);
            }
            last = chance;
        }
        return words.isEmpty()
                ? "Most likely not done within " + Words.counted(doneAfter.size() - 1, "more test")
                : "Done after " + String.join("; after ", words);
    }

    private static String pack(LadderAdvice advice) {
        Ladder.Packing packing = advice.ladder().packing();
        String powder = Words.of(Display.onMeasure(packing.powder(), advice.measure())) + " of powder";
        String pins = advice.sheet().pins().stream()
                .map(set -> ", " + set.count() * (packing.tests() + 1) + " pins " + set.thread())
                .collect(Collectors.joining());
        return powder + ", " + packing.igniters() + " igniters" + pins;
    }
}
