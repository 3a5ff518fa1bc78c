package org.sunder.page;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.SpeedUnit;

/** A form that is worked out where it stands: what was typed, in the units of its airframe, and what is wrong beside each field. */
abstract class TypedForm {

    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,6}(?:\\.\\d{0,4})?");

    private final UnitSystem units;
    private final Map<String, String> typed;
    private final Map<String, String> faults = new LinkedHashMap<>();

    TypedForm(UnitSystem units, Map<String, String> typed) {
        this.units = units;
        this.typed = Map.copyOf(typed);
    }

    /** What stands in a field. */
    public String typed(String name) {
        return typed.getOrDefault(name, "");
    }

    /** What is wrong with a field, or null. */
    public @Nullable String fault(String name) {
        return faults.get(name);
    }

    /** Whether anything is wrong. */
    public boolean wrong() {
        return !faults.isEmpty();
    }

    public String lengthUnit() {
        return metric() ? "m" : "ft";
    }

    public String speedUnit() {
        return metric() ? "m/s" : "ft/s";
    }

    public String partUnit() {
        return metric() ? "mm" : "in";
    }

    Display display() {
        return new Display(units);
    }

    boolean metric() {
        return units == UnitSystem.METRIC;
    }

    /** Says what is wrong with a field; what was said of it first stays. */
    void faulty(String name, String words) {
        faults.putIfAbsent(name, words);
    }

    /**
     * Says what the engine found wrong.
     *
     * @param field the field of a path of the engine
     */
    void faulty(UnsoundSetupException found, Function<String, String> field) {
        found.faults().forEach(fault -> faulty(field.apply(fault.path()), "Allowed: " + fault.allowed() + "."));
    }

    /** A length outdoors. */
    @Nullable Length far(String name) {
        return quantity(name, (n, metric) -> new Length(n, metric ? LengthUnit.METRE : LengthUnit.FOOT));
    }

    /** A length of a part. */
    @Nullable Length part(String name) {
        return quantity(name, (n, metric) -> new Length(n, metric ? LengthUnit.MILLIMETRE : LengthUnit.INCH));
    }

    @Nullable Speed speed(String name) {
        return quantity(
                name, (n, metric) -> new Speed(n, metric ? SpeedUnit.METRE_PER_SECOND : SpeedUnit.FOOT_PER_SECOND));
    }

    /** A count, or null where none is typed or it is no whole number. */
    @Nullable Integer count(String name) {
        BigDecimal number = quantity(name, (n, metric) -> n);
        if (number == null) {
            return null;
        }
        if (number.stripTrailingZeros().scale() > 0) {
            faulty(name, "Type a whole number, such as 3.");
            return null;
        }
        return number.intValue();
    }

    /** What is typed in a field, or null where that is empty or no number. */
    <T> @Nullable T quantity(String name, BiFunction<BigDecimal, Boolean, T> make) {
        String text = typed(name).trim().replace(',', '.');
        Matcher number = NUMBER.matcher(text);
        if (text.isEmpty()) {
            return null;
        }
        if (!number.matches()) {
            faulty(name, "Type a number, such as 300.");
            return null;
        }
        return make.apply(new BigDecimal(text), metric());
    }
}
