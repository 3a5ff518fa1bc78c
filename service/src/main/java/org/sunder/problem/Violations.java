package org.sunder.problem;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.Path;
import java.lang.annotation.Annotation;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Turns Bean Validation's words into faults. */
final class Violations {

    private Violations() {}

    static Fault fault(ConstraintViolation<?> violation) {
        Object value = violation.getInvalidValue();
        boolean scalar = value instanceof CharSequence || value instanceof Number || value instanceof Enum<?>;
        return new Fault(
                pointer(violation.getPropertyPath()),
                violation.getMessage(),
                code(violation.getConstraintDescriptor().getAnnotation()),
                allowed(violation),
                scalar ? String.valueOf(value) : null);
    }

    static String pointer(Path path) {
        StringBuilder pointer = new StringBuilder();
        for (Path.Node node : path) {
            if (node.isInIterable() && node.getIndex() != null) {
                pointer.append('/').append(node.getIndex());
            }
            if (node.getName() != null && !node.getName().startsWith("<")) {
                pointer.append('/').append(node.getName().replace("~", "~0").replace("/", "~1"));
            }
        }
        return pointer.toString();
    }

    private static String code(Annotation constraint) {
        return switch (constraint.annotationType().getSimpleName()) {
            case "NotNull", "NotBlank", "NotEmpty" -> "missing";
            case "Size" -> "wrong-size";
            case "Min", "Max", "Positive", "PositiveOrZero", "DecimalMin", "DecimalMax" -> "out-of-range";
            case "Pattern" -> "wrong-form";
            default -> "not-allowed";
        };
    }

    private static @Nullable String allowed(ConstraintViolation<?> violation) {
        Map<String, Object> attributes = violation.getConstraintDescriptor().getAttributes();
        if (code(violation.getConstraintDescriptor().getAnnotation()).equals("missing")) {
            return "a value";
        }
        if (attributes.containsKey("min") && attributes.containsKey("max")) {
            return attributes.get("min") + " to " + attributes.get("max");
        }
        if (attributes.get("regexp") instanceof String regexp) {
            return regexp;
        }
        return violation.getMessage();
    }
}
