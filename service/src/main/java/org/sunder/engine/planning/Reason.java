package org.sunder.engine.planning;

import java.util.Map;
import java.util.TreeMap;

/**
 * Why a step of the plan is what it is: a code, and the planner's own figures behind it.
 *
 * @param code which reason
 * @param charges charges in it by name, kg
 * @param numbers chances, factors and counts in it by name
 */
public record Reason(Code code, Map<String, Double> charges, Map<String, Double> numbers) {

    public Reason {
        charges = Map.copyOf(charges);
        numbers = Map.copyOf(numbers);
    }

    /** Which reason. */
    public enum Code {
        /** No firing yet: a modest charge. */
        FIRST_TEST("first-test"),
        /** Another setup was fired before; this one has not been. */
        FIRST_TEST_OF_SETUP("first-test-of-setup"),
        /** It did not part: more. */
        UP_AFTER_NONE("up-after-none"),
        /** It parted partially: more. */
        UP_AFTER_PARTIAL("up-after-partial"),
        /** It separated: less may do. */
        DOWN_AFTER_SEPARATED("down-after-separated"),
        /** The same charge once more tells most. */
        SAME_AGAIN("same-again"),
        /** The outcome was hardly expected: the same charge once more. */
        SAME_AFTER_SURPRISE("same-after-surprise"),
        /** The charge to fly, to see it separate. */
        CONFIRM("confirm"),
        /** The largest step towards the charge to fly. */
        LARGEST_STEP("largest-step"),
        /** Enough is known. */
        STOP("stop"),
        /** Enough is known, and a charge a little above the smallest is flown as it was tested. */
        STOP_AS_TESTED("stop-as-tested"),
        /** A stated limit, damage or the model's domain is in the way. */
        CHANGE_SETUP("change-setup"),
        /** Only the ceiling taken for want of a limit is in the way. */
        STATE_LIMIT("state-limit"),
        /** The measure has no charge that would do. */
        FINER_MEASURE("finer-measure");

        private final String word;

        Code(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    static Reason of(Code code) {
        return new Reason(code, Map.of(), Map.of());
    }

    Reason charge(String name, double kilograms) {
        Map<String, Double> more = new TreeMap<>(charges);
        more.put(name, kilograms);
        return new Reason(code, more, numbers);
    }

    Reason number(String name, double value) {
        Map<String, Double> more = new TreeMap<>(numbers);
        more.put(name, value);
        return new Reason(code, charges, more);
    }

    /** This reason with a finer step of charges, in kg, that would do. */
    public Reason doneBySteps(double finer) {
        return charge("finer", finer);
    }

    /** This reason with where a first charge comes from: what the flyer's other airframes needed. */
    public Reason startingFrom(int airframes, double factor) {
        return number("otherAirframes", airframes).number("factor", factor);
    }

    /** This reason with where a first charge comes from: what other flyers' rockets needed. */
    public Reason startingFromOthers(int flyers, double factor) {
        return number("otherFlyers", flyers).number("factor", factor);
    }
}
