package org.sunder.page;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.JointAnswer;
import org.sunder.advice.NextAdvice;
import org.sunder.engine.planning.NextStep;
import org.sunder.picture.ChargeRuler;
import org.sunder.picture.ChargeRulerPicture;
import org.sunder.picture.SideView;

/**
 * A joint on the first page: the answer before anything else.
 *
 * @param letter which cut of the side view it is
 * @param headline what to do
 * @param because why
 * @param ruler its charges, drawn for some widths; empty where its setup cannot be read
 * @param doing what the main action says
 * @param address where the main action leads
 */
record SeatSheet(
        UUID id,
        String letter,
        String name,
        String event,
        String evidence,
        String headline,
        String because,
        Map<Integer, String> ruler,
        String doing,
        String address) {

    /** The joints of an airframe fore to aft, each with its ruler drawn for a column. */
    static List<SeatSheet> of(SideView view, List<JointAnswer> answers) {
        Map<String, JointAnswer> byId = answers.stream()
                .collect(Collectors.toMap(
                        answer -> answer.standing().joint().id().toString(), answer -> answer));
        List<SideView.Cut> cuts = view.cuts();
        return IntStream.range(0, cuts.size())
                .mapToObj(i ->
                        drawn(i, Objects.requireNonNull(byId.get(cuts.get(i).id()))))
                .toList();
    }

    private static SeatSheet drawn(int place, JointAnswer answer) {
        ChargeRuler ruler = answer.ruler();
        return of(
                place,
                answer,
                ruler == null
                        ? Map.of()
                        : Drawn.inASeat(width -> ChargeRulerPicture.of(ruler, width, ChargeRulerPicture.Size.SMALL)));
    }

    static SeatSheet of(int place, JointAnswer answer, Map<Integer, String> ruler) {
        JointSheet joint = JointSheet.of(answer.standing());
        NextStep step = step(answer.next());
        return new SeatSheet(
                joint.id(),
                String.valueOf((char) ('A' + place % 26)),
                joint.name(),
                joint.event(),
                joint.evidence(),
                AnswerWords.headline(answer),
                AnswerWords.because(answer),
                ruler,
                doing(step),
                address(step, answer));
    }

    private static @Nullable NextStep step(@Nullable NextAdvice next) {
        return next == null ? null : next.step();
    }

    private static String doing(@Nullable NextStep step) {
        if (step instanceof NextStep.Fire) {
            return "Log a test";
        }
        if (step instanceof NextStep.Stop) {
            return "Flight sheet";
        }
        return step instanceof NextStep.StateLimit ? "State the limit" : "Change the setup";
    }

    private static String address(@Nullable NextStep step, JointAnswer answer) {
        var joint = answer.standing().joint();
        if (step instanceof NextStep.Fire) {
            return "/field/" + joint.id();
        }
        if (step instanceof NextStep.Stop) {
            return "/airframes/" + joint.airframeId() + "/flight-day";
        }
        return "/joints/" + joint.id() + (step instanceof NextStep.StateLimit ? "#limit" : "");
    }
}
