package org.sunder.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import org.sunder.airframe.Display;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.engine.physics.packing.Containment;
import org.sunder.engine.quantity.Quantity;

/** Values as people read them. */
final class Words {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final List<String> NUMBERS =
            List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");
    private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_EVEN);

    private Words() {}

    /** "0.85 g". */
    static String of(Quantity<?> quantity) {
        return Display.words(quantity);
    }

    /** Who logged a test, by what the key was called, as {@code kept.js} says it. */
    static String sender(String key) {
        return key.startsWith(PhonePages.PHONE)
                ? "by the phone of " + key.substring(PhonePages.PHONE.length())
                : "with the key " + key;
    }

    /** Three digits at most: "0.381 m". */
    static String brief(Quantity<?> quantity) {
        return Display.brief(quantity);
    }

    /** The clock of the place where it was. */
    static String of(OffsetDateTime time) {
        return TIME.format(time);
    }

    /** In UTC, which its page says once. */
    static String of(Instant time) {
        return TIME.format(time.atOffset(ZoneOffset.UTC));
    }

    /** "3 May 2026", by its own clock. */
    static String day(OffsetDateTime time) {
        return DAY.format(time);
    }

    /** "3 May 2026", from "2026-05-03"; what is no such date stays as it is. */
    static String day(String date) {
        try {
            return DAY.format(LocalDate.parse(date));
        } catch (DateTimeParseException e) {
            return date;
        }
    }

    /** "10:20", by its own clock. */
    static String clock(OffsetDateTime time) {
        return CLOCK.format(time);
    }

    /** "three tests"; figures from eleven on. */
    static String counted(int count, String what) {
        return number(count) + " " + what + (count == 1 ? "" : "s");
    }

    /** "three"; figures from eleven on. */
    static String number(int count) {
        return count < NUMBERS.size() ? NUMBERS.get(count) : String.valueOf(count);
    }

    /** "1.03 (0.81 – 1.23)". */
    static String of(CorrectionFactor factor) {
        return two(factor.median()) + " (" + two(factor.low()) + " – " + two(factor.high()) + ")";
    }

    /** Three digits at most. */
    static String digits(double value) {
        return BigDecimal.valueOf(value).round(THREE).toPlainString();
    }

    /** "99.1 %", never rounded up to certainty. */
    static String percent(double chance) {
        BigDecimal percent = BigDecimal.valueOf(100 * chance).setScale(1, RoundingMode.DOWN);
        return percent.toPlainString() + " %";
    }

    /** A part in whole hundredths: "12 %". */
    static String inPercent(double part) {
        return Math.round(100 * part) + " %";
    }

    /** "powder in a vial". */
    static String held(Containment containment) {
        return "powder in a " + containment;
    }

    /** "×1.22". */
    static String times(double factor) {
        return "×" + two(factor);
    }

    private static String two(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }
}
