package org.sunder.page;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.History;
import org.sunder.airframe.Display;
import org.sunder.airframe.Measure;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.Report;

/**
 * One thing that happened, in words.
 *
 * @param at when, for machines
 * @param time when, for people
 * @param what what happened
 * @param mark which outcome's mark stands beside it, if any
 * @param detail more of it
 * @param reason why a test was voided or restored
 */
record TimelineEntry(
        String at,
        String time,
        String what,
        @Nullable String mark,
        @Nullable String detail,
        @Nullable String reason) {

    static TimelineEntry of(History.Entry entry) {
        String at = entry.at().toString();
        String what = (entry.joint() == null ? "" : entry.joint().name() + ": ") + what(entry);
        GroundTest test = entry.test();
        if (entry.mark() != null) {
            return new TimelineEntry(
                    at, Words.of(entry.at()), what, null, null, entry.mark().reason());
        }
        if (test == null) {
            return new TimelineEntry(at, Words.of(entry.at()), what, null, note(entry), null);
        }
        String mark = test.counted() ? test.report().outcome().toString() : "void";
        return new TimelineEntry(at, Words.of(test.report().firedAt()), what, mark, detail(test), null);
    }

    private static String what(History.Entry entry) {
        GroundTest test = entry.test();
        int revision = entry.setup() == null ? 0 : entry.setup().revision();
        return switch (entry.kind()) {
            case AIRFRAME_ENTERED -> "Airframe entered";
            case AIRFRAME_ARCHIVED -> "Airframe put away";
            case JOINT_ADDED -> "joint added, setup revision 1";
            case SETUP_CHANGED -> "setup changed, revision " + revision;
            case TEST_FIRED, FLOWN -> test == null ? "" : fired(entry, test);
            case TEST_VOIDED -> test == null ? "" : told(entry, test) + " made void";
            case TEST_RESTORED -> test == null ? "" : told(entry, test) + " counted again";
        };
    }

    private static String told(History.Entry entry, GroundTest test) {
        String what = test.occasion() == Occasion.FLIGHT ? "flight with " : "test of ";
        return what + charge(entry, test);
    }

    private static String fired(History.Entry entry, GroundTest test) {
        Report report = test.report();
        return String.format(
                Locale.ROOT,
                "%s%s, %s%s%s",
                entry.kind() == History.Kind.FLOWN ? "flown with " : "fired ",
                charge(entry, test),
                report.outcome(),
                report.damaged() ? ", it broke something" : "",
                test.counted() ? "" : ", not counted");
    }

    private static String charge(History.Entry entry, GroundTest test) {
        Mass charge = test.report().charge();
        return Words.of(
                entry.setup() == null
                        ? charge
                        : Display.loaded(charge, Measure.of(entry.setup().sheet())));
    }

    private static String detail(GroundTest test) {
        String speed = test.report().speed() == null
                ? ""
                : " Parted at " + Words.of(test.report().speed()) + ".";
        String held = test.report().containment() == null
                ? ""
                : " Fired with " + Words.held(test.report().containment()) + ".";
        String notes = test.report().notes() == null ? "" : " " + test.report().notes();
        String finding = test.finding() == null ? "" : test.finding() + " ";
        return finding + "Correction after it " + Words.of(test.correctionAfter()) + "." + speed + held + notes;
    }

    private static @Nullable String note(History.Entry entry) {
        return entry.setup() == null || entry.mark() != null
                ? null
                : entry.setup().sheet().note();
    }
}
