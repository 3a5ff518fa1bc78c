package org.sunder.problem;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.Validator;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.http.HttpInputMessage;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.servlet.mvc.method.annotation.RequestBodyAdviceAdapter;

/** After a body is read: every fault of reading and every fault of validation, together. */
@RestControllerAdvice
class FaultyBodies extends RequestBodyAdviceAdapter {

    private final Validator validator;

    FaultyBodies(Validator validator) {
        this.validator = validator;
    }

    @Override
    public boolean supports(MethodParameter parameter, Type type, Class<? extends HttpMessageConverter<?>> converter) {
        return true;
    }

    @Override
    public Object afterBodyRead(
            @Nullable Object body,
            HttpInputMessage message,
            MethodParameter parameter,
            Type type,
            Class<? extends HttpMessageConverter<?>> converter) {
        List<Fault> faults = new ArrayList<>(InputFaults.current());
        if (body == null && faults.isEmpty()) {
            throw new ProblemException(ProblemType.MALFORMED_JSON, "A JSON object is needed as the body.");
        }
        violations(body)
                .sorted(Comparator.comparing(
                        (ConstraintViolation<Object> v) -> v.getPropertyPath().toString()))
                .map(Violations::fault)
                .filter(fault -> faults.stream().noneMatch(known -> covers(known.pointer(), fault.pointer())))
                .forEach(faults::add);
        if (body == null || !faults.isEmpty()) {
            throw new ProblemException(ProblemType.INVALID_INPUT, ProblemAdvice.summary(faults), faults);
        }
        return body;
    }

    private Stream<ConstraintViolation<Object>> violations(@Nullable Object body) {
        return body == null ? Stream.of() : validator.validate(body).stream();
    }

    @Override
    public @Nullable Object handleEmptyBody(
            @Nullable Object body,
            HttpInputMessage message,
            MethodParameter parameter,
            Type type,
            Class<? extends HttpMessageConverter<?>> converter) {
        return body;
    }

    /** A field that could not be read is null afterwards; that it is missing need not be said again. */
    private static boolean covers(String known, String pointer) {
        return known.equals(pointer) || known.startsWith(pointer + "/");
    }
}
