package org.sunder.advice;

import java.util.Locale;
import org.sunder.airframe.Display;
import org.sunder.engine.planning.Reason;
import org.sunder.engine.quantity.Mass;

/** The reason of a step in the builder's words, with its numbers: a sentence or two, and a few words for a branch of a plan. */
public final class ReasonWords {

    private static final double SURE = 1e4;
    private static final double SAME = 1e-6;
    private static final int FEW_DIGITS = 2;

    private final Reason reason;
    private final Mass measure;

    private ReasonWords(Reason reason, Mass measure) {
        this.reason = reason;
        this.measure = measure;
    }

    /**
     * One or two sentences.
     *
     * @param measure step of charges, whose unit and digits the charges get
     */
    public static String of(Reason reason, Mass measure) {
        return new ReasonWords(reason, measure).sentences();
    }

    /** A few words, for a branch. */
    public static String inShort(Reason.Code code) {
        return switch (code) {
            case FIRST_TEST, FIRST_TEST_OF_SETUP -> "first shot";
            case UP_AFTER_NONE, UP_AFTER_PARTIAL -> "more";
            case DOWN_AFTER_SEPARATED -> "will less do?";
            case SAME_AGAIN -> "the same again";
            case SAME_AFTER_SURPRISE -> "a surprise: the same again";
            case CONFIRM -> "confirms the charge to fly";
            case LARGEST_STEP -> "largest step";
            case STOP -> "enough is known";
            case STOP_AS_TESTED -> "as it was tested";
            case CHANGE_SETUP -> "out of reach";
            case STATE_LIMIT -> "no limit stated";
            case FINER_MEASURE -> "finer measure";
        };
    }

    private String sentences() {
        return switch (reason.code()) {
            case FIRST_TEST ->
                "A first shot: " + charge("charge") + " separates this joint with a chance of " + percent("chance")
                        + ", and a first charge may have at most " + percent("most") + "." + start();
            case FIRST_TEST_OF_SETUP ->
                "The first shot of this setup: what earlier tests taught is carried over, " + factor("factor")
                        + " times the handbook charge. " + charge("charge") + " separates it with a chance of "
                        + percent("chance") + ".";
            case UP_AFTER_NONE -> charge("fired") + " did nothing, so more: " + up();
            case UP_AFTER_PARTIAL -> charge("fired") + " parted it only partially, so more: " + up();
            case DOWN_AFTER_SEPARATED ->
                charge("fired") + " separated it; will less do? " + charge("charge") + " is " + percent("saves")
                        + " less and separates it with a chance of " + percent("chance") + ".";
            case SAME_AGAIN ->
                charge("charge") + " once more: it separates with a chance of " + percent("chance")
                        + ", and whether it does tells most about what this joint needs.";
            case SAME_AFTER_SURPRISE ->
                "What " + charge("fired") + " did had less than a " + percent("limit")
                        + " chance. Look at pins, powder and igniter, then fire the same again before anything is"
                        + " concluded from it.";
            case CONFIRM -> confirm();
            case LARGEST_STEP ->
                "The charge to fly is likely to be " + charge("target") + "; " + charge("charge")
                        + " is the largest step towards it, " + factor("largestStep")
                        + " times the highest charge fired without damage.";
            case STOP ->
                "It separated at " + charge("separated") + " on the ground, and " + charge("charge")
                        + " fails about 1 flight in " + oneIn(1 - number("chance")) + ". " + left();
            case STOP_AS_TESTED ->
                charge("smallest") + " might do, but " + charge("charge")
                        + " was seen to separate and lies close above it: fly what was tested. " + left();
            case CHANGE_SETUP ->
                "This joint needs about " + charge("needed") + " and may get at most " + charge("highest")
                        + ", which separates it with a chance of " + percent("chanceAtHighest")
                        + ". Fewer pins or less volume would have to bring the handbook charge to "
                        + factor("scale") + " of what it is.";
            case STATE_LIMIT ->
                "This joint needs about " + charge("needed") + ". The ceiling of " + charge("highest")
                        + " is only a guard, taken because no limit was stated: state what the airframe withstands.";
            case FINER_MEASURE ->
                "No charge in steps of " + charge("step") + " is both allowed and of use"
                        + (reason.charges().containsKey("finer")
                                ? "; with steps of " + fine("finer") + " there is one."
                                : ", nor is one in finer steps: change the setup.");
        };
    }

    private String up() {
        boolean largest = Math.abs(kilograms("charge") - kilograms("largest")) <= SAME * kilograms("largest");
        return charge("charge") + " separates it with a chance of " + percent("chance")
                + (largest
                        ? "; it is the largest step allowed."
                        : "; the largest step allowed is to " + charge("largest") + ".");
    }

    private String confirm() {
        String target = charge("charge") + " is the charge for 1 flight in " + oneIn(1 - number("target"));
        if (!reason.charges().containsKey("separated") || kilograms("separated") >= kilograms("charge") * (1 - SAME)) {
            return target + ", and this shot confirms it.";
        }
        return "It separated at " + charge("separated") + ", but with what is known " + charge("separated")
                + " would fail about 1 flight in " + oneIn(number("separatedFails")) + "; " + target
                + ", and this shot confirms it.";
    }

    private String left() {
        return "Left uncertain: it may be " + factor("excess") + " times what this joint itself needs.";
    }

    private String start() {
        if (!reason.numbers().containsKey("otherAirframes")) {
            return startFromFlyers();
        }
        long others = Math.round(number("otherAirframes"));
        return " It starts from your " + (others == 1 ? "other airframe" : others + " other airframes")
                + ", which needed " + factor("factor") + " times the handbook charge.";
    }

    private String startFromFlyers() {
        return reason.numbers().containsKey("otherFlyers")
                ? " It starts from what the rockets of " + Math.round(number("otherFlyers")) + " other flyers showed, "
                        + factor("factor") + " times the handbook charge."
                : "";
    }

    private static String oneIn(double fails) {
        double count = 1 / Math.max(fails, 1 / SURE);
        String number =
                count >= SURE ? "10000 or more" : String.format(Locale.ROOT, count < 9.5 ? "%.1f" : "%.0f", count);
        return number.replaceFirst("\\.0$", "");
    }

    private double kilograms(String name) {
        return reason.charges().getOrDefault(name, Double.NaN);
    }

    private double number(String name) {
        return reason.numbers().getOrDefault(name, Double.NaN);
    }

    private String charge(String name) {
        return charge(kilograms(name), measure);
    }

    /** With the digits of the measure. */
    static String charge(double kilograms, Mass measure) {
        return Display.words(Display.near(kilograms, measure));
    }

    /** With the digits it has itself. */
    private String fine(String name) {
        return Mass.ofKilograms(kilograms(name))
                        .in(measure.unit(), FEW_DIGITS)
                        .value()
                        .toPlainString()
                + " " + measure.unit();
    }

    private String percent(String name) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * number(name));
    }

    private String factor(String name) {
        return String.format(Locale.ROOT, "%.2f", number(name)).replaceFirst("0$", "");
    }
}
