package org.sunder.problem;

import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.http.HttpInputMessage;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.servlet.mvc.method.annotation.RequestBodyAdviceAdapter;

/** After a body is read: every fault of reading and every fault of validation, together. */
@RestControllerAdvice
class FaultyBodies extends RequestBodyAdviceAdapter {

    private final StrictReading reading;

    FaultyBodies(StrictReading reading) {
        this.reading = reading;
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
        reading.addViolations(body, faults);
        if (body == null || !faults.isEmpty()) {
            throw new ProblemException(ProblemType.INVALID_INPUT, ProblemAdvice.summary(faults), faults);
        }
        return body;
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
}
