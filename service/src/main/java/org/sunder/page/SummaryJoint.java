package org.sunder.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.JointAnswer;
import org.sunder.advice.NextAdvice;
import org.sunder.airframe.DeploymentEvent;
import org.sunder.airframe.Display;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupSheet;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.retention.Retention;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.GroundTest;

/**
 * A joint on the summary for the range safety officer, in words. Nothing of it is ever empty: what is not known is said.
 *
 * @param opens what it is there for
 * @param facts what is known of it
 * @param revision which setup this is said of, and since when that is in force
 * @param fired what was fired at it, and what that did
 * @param warnings what to know of the setup
 * @param flight what to fly, or why nothing
 */
record SummaryJoint(
        JointSheet sheet,
        String opens,
        List<Fact> facts,
        String revision,
        String fired,
        List<String> warnings,
        FlightAnswer flight) {

    private static final String NOT_WORKED_OUT = "cannot be worked out from the setup as stored";

    /** A thing known, or said not to be. */
    record Fact(String what, String words) {}

    static SummaryJoint of(JointSheet sheet, JointAnswer answer, Setup setup, FlightAnswer flight, Display display) {
        NextAdvice next = answer.next();
        return new SummaryJoint(
                sheet,
                opens(answer.standing().joint().event()),
                facts(setup.sheet(), next, display),
                "Setup revision " + setup.revision() + ", in force since " + Words.of(setup.createdAt()) + ".",
                fired(answer),
                next == null
                        ? List.of()
                        : next.physics().warnings().stream().map(Warning::text).toList(),
                flight);
    }

    private static String opens(DeploymentEvent event) {
        return event == DeploymentEvent.OTHER
                ? "Parts the airframe; for what is not stated."
                : "Parts the airframe for the " + event + ".";
    }

    private static List<Fact> facts(SetupSheet sheet, @Nullable NextAdvice next, Display display) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Masses", masses(sheet)));
        facts.add(new Fact("Pins", SetupColumns.pins(sheet)));
        facts.add(new Fact("Held by", next == null ? NOT_WORKED_OUT : holds(next.physics(), sheet, display)));
        facts.add(new Fact(
                "Free volume",
                next == null
                        ? NOT_WORKED_OUT
                        : Words.brief(display.volume(next.physics().freeVolume()))));
        facts.add(new Fact("Powder", sheet.powder() == null ? "fine-grain black powder" : sheet.powder()));
        facts.add(new Fact("Limit stated", SetupColumns.ceiling(sheet.ceiling())));
        facts.add(new Fact(
                "Never above",
                next == null
                        ? "no charge at all"
                        : AnswerWords.limit(next.physics().ceiling().chargeKg(), next.measure())));
        return facts;
    }

    private static String masses(SetupSheet sheet) {
        return mass(sheet.forwardMass()) + " ahead of it, " + mass(sheet.aftMass()) + " behind it, as the owner states";
    }

    private static String mass(@Nullable Mass mass) {
        return mass == null ? "not stated" : Words.of(mass);
    }

    private static String holds(JointPhysics physics, SetupSheet sheet, Display display) {
        Retention retention = physics.retention();
        String all = Words.brief(display.force(retention.mean())) + ", give or take "
                + Display.rough(display.force(retention.sd()));
        if (sheet.pins().isEmpty()) {
            return all + ": the fit alone";
        }
        boolean pulled = sheet.pins().stream().allMatch(pins -> pins.measured() != null);
        return all + "; " + Words.brief(display.force(retention.fit())) + " of it the fit; pins by "
                + (pulled ? "pulled pins of the batch" : "a handbook strength");
    }

    private static String fired(JointAnswer answer) {
        List<GroundTest> tests = answer.tests();
        long counted = tests.stream().filter(GroundTest::counted).count();
        if (tests.isEmpty()) {
            return "Nothing has been fired at this joint.";
        }
        String all = tests.size() == 1 ? "1 firing logged" : tests.size() + " firings logged";
        String left = counted == tests.size() ? "" : ", " + (tests.size() - counted) + " not counted";
        return all + left + ". Of those that count, "
                + String.join(
                        ", ",
                        Stream.of(Outcome.SEPARATED, Outcome.PARTIAL, Outcome.NONE)
                                .map(outcome -> did(tests, outcome))
                                .toList())
                + "." + broke(tests);
    }

    private static String did(List<GroundTest> tests, Outcome outcome) {
        long count = tests.stream()
                .filter(test -> test.counted() && test.report().outcome() == outcome)
                .count();
        return switch (outcome) {
            case SEPARATED -> count + " separated it";
            case PARTIAL -> count + " parted it in part";
            case NONE -> count + " did not part it";
        };
    }

    private static String broke(List<GroundTest> tests) {
        long broke = tests.stream().filter(test -> test.report().damaged()).count();
        return broke == 0 ? " None broke anything." : " " + broke + " broke something.";
    }
}
