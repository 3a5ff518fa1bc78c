package org.sunder.problem;

import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.InputCoercionException;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.exc.MismatchedInputException;

/** Says what was wrong with JSON without showing class names. */
final class JsonFaults {

    private JsonFaults() {}

    static String pointer(DatabindException e) {
        StringBuilder pointer = new StringBuilder();
        for (JacksonException.Reference step : e.getPath()) {
            String name = step.getPropertyName();
            pointer.append('/').append(name == null ? String.valueOf(step.getIndex()) : name);
        }
        return pointer.toString();
    }

    /** A whole number that no field of ours could hold, e.g. twenty digits where a word is needed. */
    static Fault tooLarge(InputCoercionException e) {
        String pointer = e.processor() == null
                ? ""
                : e.processor().streamReadContext().pathAsPointer().toString();
        return new Fault(pointer, "the number is too large", "wrong-form", AllowedForms.of(e.getTargetType()), null);
    }

    static String words(JacksonException e) {
        if (e instanceof MismatchedInputException mismatched) {
            return "the value is not " + AllowedForms.of(mismatched.getTargetType());
        }
        TokenStreamLocation at = e.getLocation();
        String where = at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
        String said = String.valueOf(e.getOriginalMessage());
        if (said.startsWith("Duplicate")) {
            return "A field stands twice" + where + ".";
        }
        return e instanceof DatabindException ? "the value has the wrong form" : "Reading stopped" + where + ".";
    }

    static String allowed(DatabindException e) {
        return AllowedForms.of(e instanceof MismatchedInputException mismatched ? mismatched.getTargetType() : null);
    }
}
