package org.sunder.caution;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What stands beside every charge. Common practice, and the general sense of published safety codes, in our words. */
public enum Caution {
    FIRE_REMOTELY("fire-remotely", "Fire from a distance by wire or radio, never by hand beside the rocket."),
    EYES_AND_EARS("eyes-and-ears", "Everyone near wears eye and ear protection."),
    CLEAR_BOTH_ENDS("clear-both-ends", "Nobody stands in line with either end of the airframe; sections fly far."),
    DISARMED_UNTIL_CLEAR(
            "disarmed-until-clear",
            "Flight electronics stay off and the firing leads shorted until everyone is clear; arm last."),
    WAIT_AFTER_MISFIRE(
            "wait-after-misfire", "After a misfire disconnect, and wait at least a minute before anyone walks up."),
    STATIC(
            "static",
            "Touch ground before you touch powder or igniters; no synthetic clothes over the bench, no phone on it."),
    POWDER_AWAY("powder-away", "Keep the powder closed and away from the work; load one charge at a time."),
    OTHERS_DECIDE(
            "others-decide",
            "The range safety officer, the law of the place and the powder maker decide, not this program.");

    private final String code;
    private final String text;

    Caution(String code, String text) {
        this.code = code;
        this.text = text;
    }

    /** What matters most before a charge is fired, in one line; the whole list stands one tap away. */
    public static String beforeFiring() {
        return "Fire from a distance · nobody in line with either end · disarmed until clear";
    }

    /** What matters most before a charge flies, in one line; the whole list stands one tap away, and on paper. */
    public static String beforeFlight() {
        return "The range safety officer decides, not this program · off until all are clear, arm last · nobody in line with either end";
    }

    /** All cautions in one text. */
    public static String texts() {
        return Arrays.stream(values()).map(Caution::text).collect(Collectors.joining(" "));
    }

    /** A stable word. */
    public String code() {
        return code;
    }

    /** The sentence people read. */
    public String text() {
        return text;
    }
}
