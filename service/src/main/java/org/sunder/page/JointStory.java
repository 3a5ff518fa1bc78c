package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.sunder.advice.Curve;
import org.sunder.advice.JointAnswer;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.Occasion;
import org.sunder.picture.ChargeRuler;
import org.sunder.picture.CurvePicture;
import org.sunder.picture.OutcomeMark;

/**
 * What a joint has been through.
 *
 * @param curve picture of chance against charge, drawn for some widths
 * @param correction picture of how the correction narrowed, the same way; empty before the first test
 * @param setups side by side
 */
record JointStory(Map<Integer, String> curve, Map<Integer, String> correction, SetupColumns setups) {

    static JointStory of(JointAnswer answer, ChargeRuler ruler, Curve curve, SetupColumns setups) {
        return new JointStory(
                Drawn.across(width -> CurvePicture.of(ruler, curve.drawn(), width)), correction(answer), setups);
    }

    /** How the correction narrowed, one row a firing as it stood then; empty before the first. */
    static Map<Integer, String> correction(JointAnswer answer) {
        List<CorrectionPicture.Row> rows = new ArrayList<>();
        for (GroundTest test : answer.tests()) {
            if (test.finding() == null) {
                rows.add(new CorrectionPicture.Row(
                        (rows.size() + 1) + ". "
                                + AnswerWords.loaded(answer, test.report().charge()),
                        new OutcomeMark(
                                test.report().outcome(), test.voided(), test.occasion() == Occasion.FLIGHT, false),
                        test.correctionAfter()));
            }
        }
        if (rows.isEmpty()) {
            return Map.of();
        }
        rows.add(new CorrectionPicture.Row("now", null, answer.standing().correction()));
        return CorrectionPicture.of("The correction as it narrowed", rows);
    }
}
