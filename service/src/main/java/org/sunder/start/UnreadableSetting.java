package org.sunder.start;

import java.net.InetAddress;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.bind.BindException;
import org.springframework.boot.context.properties.bind.validation.BindValidationException;
import org.springframework.boot.context.properties.source.ConfigurationProperty;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.core.annotation.Order;
import org.springframework.util.ClassUtils;
import org.springframework.util.unit.DataSize;
import org.springframework.validation.FieldError;

/** A setting of the wrong kind: its name, what was given, what is wanted. */
@Order(0) // before the one of Spring Boot, which takes a paragraph
class UnreadableSetting extends AbstractFailureAnalyzer<BindException> {

    @Override
    protected @Nullable FailureAnalysis analyze(Throwable failure, BindException cause) {
        if (cause.getCause() instanceof BindValidationException invalid) {
            String faults = invalid.getValidationErrors().getAllErrors().stream()
                    .filter(FieldError.class::isInstance)
                    .map(FieldError.class::cast)
                    .map(error -> words(
                            invalid.getValidationErrors().getName() + "." + dashed(error.getField()),
                            error.getRejectedValue(),
                            error.getDefaultMessage()))
                    .collect(Collectors.joining("; "));
            return new FailureAnalysis(faults, null, failure);
        }
        ConfigurationProperty property = cause.getProperty();
        if (property == null) {
            return null;
        }
        Class<?> type = ClassUtils.resolvePrimitiveIfNecessary(
                cause.getTarget().getType().resolve(Object.class));
        return new FailureAnalysis(
                words(property.getName().toString(), property.getValue(), "is not " + wanted(type)), null, failure);
    }

    private static String words(String name, @Nullable Object value, @Nullable String fault) {
        return "setting " + name + ": '" + value + "' " + fault;
    }

    private static String dashed(String field) {
        return field.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }

    private static String wanted(Class<?> type) {
        if (type.isEnum()) {
            return "one of "
                    + Arrays.stream(type.getEnumConstants())
                            .map(word -> String.valueOf(word).toLowerCase(Locale.ROOT))
                            .collect(Collectors.joining(", "));
        } else if (type == Boolean.class) {
            return "true or false";
        } else if (type == Integer.class || type == Long.class) {
            return "a whole number";
        } else if (type == Duration.class) {
            return "a duration such as 20s";
        } else if (type == DataSize.class) {
            return "a size such as 256KB";
        } else if (type == InetAddress.class) {
            return "an address of this machine such as 127.0.0.1";
        }
        return "readable as " + type.getSimpleName();
    }
}
