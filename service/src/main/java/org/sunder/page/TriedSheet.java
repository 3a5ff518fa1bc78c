package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.JointAnswer;
import org.sunder.advice.NextAdvice;
import org.sunder.advice.TriedChange;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.picture.ChargeRuler;
import org.sunder.picture.ChargeRulerPicture;

/**
 * A tried change as a page shows it: what it leads to, and beside each result the difference to the setup in force.
 *
 * @param evidence that the tests would then be
 * @param headline what to do then
 * @param because why
 * @param instead what to do in the setup in force, or null where it is the same
 * @param ruler the charges of the tried setup, drawn for some widths
 * @param rows the results
 * @param inForce the revision in force
 */
record TriedSheet(
        boolean changed,
        String evidence,
        String headline,
        String because,
        @Nullable String instead,
        Map<Integer, String> ruler,
        List<Row> rows,
        List<Warning> warnings,
        int inForce) {

    /**
     * One result.
     *
     * @param slug of the term
     * @param before in the setup in force, or null
     * @param after in the tried one
     * @param difference "▲ 12 %", "▲ under 1 %", "same", or empty where there is nothing to compare
     */
    record Row(String slug, String name, @Nullable String before, String after, String difference) {

        /** Whether it is another than before. */
        public boolean differs() {
            return before != null && !difference.equals("same");
        }
    }

    static TriedSheet of(TriedChange tried, NextAdvice next, ChargeRuler ruler, Display display) {
        JointAnswer before = tried.before();
        String headline = AnswerWords.headline(tried.after());
        String instead = before == null ? null : AnswerWords.headline(before);
        return new TriedSheet(
                tried.changed(),
                next.evidence().evidence().toString(),
                headline,
                AnswerWords.because(tried.after()),
                headline.equals(instead) ? null : instead,
                Drawn.inAColumn(width -> ChargeRulerPicture.of(ruler, width, ChargeRulerPicture.Size.SMALL)),
                rows(before == null ? null : before.next(), next, display),
                next.physics().warnings(),
                tried.changed() ? tried.setup().revision() - 1 : tried.setup().revision());
    }

    private static List<Row> rows(@Nullable NextAdvice before, NextAdvice after, Display display) {
        JointPhysics was = before == null ? null : before.physics();
        JointPhysics now = after.physics();
        List<Row> rows = new ArrayList<>();
        rows.add(row(
                "free-volume", "Free volume", was, now, JointPhysics::freeVolume, v -> Words.brief(display.volume(v))));
        rows.add(row(
                "retention",
                "Retention",
                was,
                now,
                physics -> physics.retention().mean(),
                f -> Words.brief(display.force(f))));
        rows.add(row(
                "threshold-pressure",
                "Threshold pressure",
                was,
                now,
                JointPhysics::thresholdPressure,
                p -> Words.brief(display.pressure(p))));
        Row handbook = row(
                "handbook-charge",
                "Handbook charge",
                was,
                now,
                JointPhysics::handbookCharge,
                kg -> AnswerWords.near(kg, after.measure()));
        rows.add(new Row(
                handbook.slug(),
                handbook.name(),
                handbook.before(),
                handbook.after() + " ± " + Math.round(100 * now.uncertainty().total()) + " %",
                handbook.difference()));
        rows.add(row(
                "ceiling",
                "Ceiling",
                was,
                now,
                physics -> physics.ceiling().chargeKg(),
                kg -> AnswerWords.limit(kg, after.measure())));
        rows.add(new Row(
                "evidence",
                "Evidence",
                before == null ? null : before.evidence().evidence().toString(),
                after.evidence().evidence().toString(),
                before == null
                                || before.evidence().evidence()
                                        == after.evidence().evidence()
                        ? "same"
                        : "changes"));
        return rows;
    }

    private static Row row(
            String slug,
            String name,
            @Nullable JointPhysics was,
            JointPhysics now,
            ToDoubleFunction<JointPhysics> value,
            DoubleFunction<String> words) {
        double after = value.applyAsDouble(now);
        if (was == null) {
            return new Row(slug, name, null, words.apply(after), "");
        }
        double before = value.applyAsDouble(was);
        return row(slug, name, words.apply(before), words.apply(after), 100 * (after / before - 1));
    }

    /** With "▲ 12 %"; what rounds to nothing is the same, unless two different values are shown. */
    private static Row row(String slug, String name, String before, String after, double percent) {
        long whole = Math.round(Math.abs(percent));
        boolean same = whole == 0 && before.equals(after);
        String much = whole == 0 ? "under 1 %" : whole + " %";
        return new Row(slug, name, before, after, same ? "same" : (percent > 0 ? "▲ " : "▼ ") + much);
    }
}
