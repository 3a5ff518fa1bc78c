package org.sunder.web;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.problem.ProblemException;

/** Quantities in query parameters: a number and a unit, such as {@code 1200 m}. */
public final class QuantityParameters {

    private static final Pattern FORM = Pattern.compile("\\s*(-?\\d{1,9}(?:\\.\\d{1,9})?)\\s*([a-z]+)\\s*");

    private QuantityParameters() {}

    /**
     * Reads a length.
     *
     * @param name of the parameter
     * @param text as sent, or null
     * @throws ProblemException 400 naming the parameter where it is not a length
     */
    public static Optional<Length> findLength(String name, @Nullable String text) {
        if (text == null) {
            return Optional.empty();
        }
        Matcher form = FORM.matcher(text);
        if (form.matches()) {
            for (LengthUnit unit : LengthUnit.values()) {
                if (unit.symbol().equals(form.group(2))) {
                    return Optional.of(new Length(new BigDecimal(form.group(1)), unit));
                }
            }
        }
        String units =
                Arrays.stream(LengthUnit.values()).map(LengthUnit::symbol).collect(Collectors.joining(", "));
        throw ProblemException.invalid(
                name,
                text,
                name + " must be a length",
                "a number and a unit, such as 1200 m or 4000 ft; units " + units);
    }
}
