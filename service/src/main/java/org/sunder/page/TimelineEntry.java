package org.sunder.page;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.Advising;
import org.sunder.advice.History;
import org.sunder.airframe.Display;
import org.sunder.airframe.Measure;
import org.sunder.airframe.Setup;
import org.sunder.groundtest.Beyond;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.Report;
import org.sunder.groundtest.VoidMark;

/**
 * One thing that happened, in words.
 *
 * @param kind what it is, so that one can look at some kinds only
 * @param at when, for machines
 * @param day the day it happened on, by its own clock
 * @param time the time of that day
 * @param joint the joint it happened at, or null
 * @param what what happened
 * @param mark which mark stands beside it, or null
 * @param details more of it, sentence by sentence
 * @param quote what the flyer wrote of it, or null
 * @param changes of a setup: what differs from the one before it
 * @param lift the void test whose void can be lifted, or null
 * @param fired the firing that it tells of, or null
 */
record TimelineEntry(
        Kind kind,
        String at,
        String day,
        String time,
        @Nullable UUID joint,
        String what,
        @Nullable String mark,
        List<String> details,
        @Nullable String quote,
        List<SetupColumns.Change> changes,
        @Nullable UUID lift,
        @Nullable UUID fired) {

    /** What one may want to look at alone. */
    enum Kind {
        TESTS("Tests"),
        SETUPS("Setups"),
        FLIGHTS("Flights"),
        VOID("Void"),
        OTHER("");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The class of its entries, and the end of the id of its box. */
        public String css() {
            return "of-" + name().toLowerCase(Locale.ROOT);
        }

        public String words() {
            return words;
        }
    }

    /**
     * An entry of a history.
     *
     * @param setup the setup that came into force beside the one before it; null where none did
     */
    static TimelineEntry of(History.Entry entry, @Nullable SetupColumns setup) {
        GroundTest test = entry.test();
        if (test != null) {
            return entry.mark() == null ? fired(entry, test) : marked(entry, entry.mark(), test);
        }
        if (entry.setup() != null && setup != null) {
            return described(entry, entry.setup(), setup);
        }
        String what = entry.kind() == History.Kind.AIRFRAME_ARCHIVED ? "Put away" : "Rocket entered";
        return of(entry, utc(entry), Kind.OTHER, what, null, List.of(), null, List.of(), null);
    }

    private static TimelineEntry marked(History.Entry entry, VoidMark mark, GroundTest test) {
        String what = words(entry, test) + (mark.voided() ? ", made void" : ", counted again");
        return of(entry, utc(entry), Kind.VOID, what, null, List.of(), mark.reason(), List.of(), null);
    }

    private static TimelineEntry described(History.Entry entry, Setup stored, SetupColumns setup) {
        boolean first = setup.heads().size() == 1;
        List<SetupColumns.Change> changes = first ? List.of() : setup.changes();
        String words = first ? setup.inShort() : changes.isEmpty() ? "Nothing differs from the revision before." : "";
        return of(
                entry,
                utc(entry),
                Kind.SETUPS,
                "Setup, revision " + stored.revision(),
                "setup",
                words.isEmpty() ? List.of() : List.of(words),
                stored.sheet().note(),
                changes,
                null);
    }

    private static TimelineEntry fired(History.Entry entry, GroundTest test) {
        boolean flight = test.occasion() == Occasion.FLIGHT;
        String outcome = test.report().outcome().toString();
        return of(
                entry,
                test.report().firedAt(),
                !test.counted() ? Kind.VOID : flight ? Kind.FLIGHTS : Kind.TESTS,
                words(entry, test),
                !test.counted() ? "void" : flight ? "flight-" + outcome : outcome,
                details(test),
                test.report().notes(),
                List.of(),
                test.voided() ? test.id() : null);
    }

    private static TimelineEntry of(
            History.Entry entry,
            OffsetDateTime clock,
            Kind kind,
            String what,
            @Nullable String mark,
            List<String> details,
            @Nullable String quote,
            List<SetupColumns.Change> changes,
            @Nullable UUID lift) {
        return new TimelineEntry(
                kind,
                entry.at().toString(),
                Words.day(clock),
                Words.clock(clock),
                entry.joint() == null ? null : entry.joint().id(),
                what,
                mark,
                details,
                quote,
                changes,
                lift,
                entry.test() == null || entry.mark() != null
                        ? null
                        : entry.test().id());
    }

    private static OffsetDateTime utc(History.Entry entry) {
        return entry.at().atOffset(ZoneOffset.UTC);
    }

    /** "0.85 g: partial". */
    private static String words(History.Entry entry, GroundTest test) {
        Report report = test.report();
        String charge = Words.of(
                entry.setup() == null
                        ? report.charge()
                        : Display.loaded(
                                report.charge(), Measure.of(entry.setup().sheet())));
        return (test.occasion() == Occasion.FLIGHT ? "Flight, " : "") + charge + ": " + report.outcome();
    }

    private static List<String> details(GroundTest test) {
        Report report = test.report();
        List<String> details = new ArrayList<>();
        if (test.finding() != null) {
            details.add(test.finding());
        } else if (test.voided()) {
            details.add("Void: " + test.marks().get(test.marks().size() - 1).reason());
        } else {
            details.add(forecast(test));
            details.add("Correction after it " + Words.of(test.correctionAfter()) + ".");
        }
        if (report.damaged()) {
            details.add("It broke something.");
        }
        test.beyond().forEach(beyond -> details.add(told(beyond)));
        if (report.speed() != null) {
            details.add("Parted at " + Words.of(report.speed()) + within(report.speedUncertaintyPercent()) + ".");
        }
        if (report.containment() != null) {
            details.add("Fired with " + Words.held(report.containment()) + ".");
        }
        String by = test.loggedBy();
        if (by != null && by.startsWith(PhonePages.PHONE)) {
            details.add("Logged " + Words.sender(by) + ".");
        }
        return details;
    }

    private static String within(@Nullable BigDecimal percent) {
        return percent == null
                ? ""
                : ", good to " + percent.stripTrailingZeros().toPlainString() + " %";
    }

    private static String forecast(GroundTest test) {
        String chance = AnswerWords.inHundred(test.forecast().of(test.report().outcome()));
        return Advising.surprising(test)
                ? "A surprise: it had been given " + chance + "."
                : "It had been given " + chance + ".";
    }

    private static String told(Beyond beyond) {
        return switch (beyond) {
            case CEILING -> "That is above the ceiling.";
            case STEP -> "That is more than the largest step.";
            case SPEED -> "That is faster than was stated that they may: look over harness, bulkheads and fittings.";
        };
    }
}
