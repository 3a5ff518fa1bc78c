package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.Curve;
import org.sunder.advice.CurvePicture;
import org.sunder.advice.JointAnswer;
import org.sunder.airframe.Display;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.groundtest.GroundTest;

/**
 * What a joint has been through.
 *
 * @param sheet where it stands
 * @param headline what to do next
 * @param unproved that the backup named was not fired before, or empty
 * @param curve picture of chance against charge, empty where the setup cannot be
 * @param correction picture of how the correction narrowed, empty before the first test
 * @param setups side by side
 */
record JointStory(
        JointSheet sheet, String headline, String unproved, String curve, String correction, SetupColumns setups) {

    static JointStory of(JointAnswer answer, @Nullable Curve curve, SetupColumns setups) {
        JointSheet sheet = JointSheet.of(answer.standing());
        List<CorrectionPicture.Row> rows = new ArrayList<>();
        for (int i = 0; curve != null && i < curve.marks().size(); i++) {
            GroundTest test = curve.marks().get(i).test();
            rows.add(new CorrectionPicture.Row(
                    (i + 1) + ". " + Words.of(Display.loaded(test.report().charge(), curve.measure())),
                    test.report().outcome(),
                    test.counted(),
                    test.correctionAfter()));
        }
        CorrectionFactor now = sheet.factor();
        rows.add(new CorrectionPicture.Row("now", null, true, now));
        return new JointStory(
                sheet,
                AnswerWords.headline(answer),
                AnswerWords.unproved(answer),
                curve == null ? "" : CurvePicture.of(curve),
                rows.size() == 1 ? "" : CorrectionPicture.of("The correction as it narrowed", rows),
                setups);
    }
}
