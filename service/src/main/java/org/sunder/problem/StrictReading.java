package org.sunder.problem;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.Validator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tools.jackson.core.JacksonException;
import tools.jackson.core.exc.InputCoercionException;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.json.JsonMapper;

/** Reads what is described in JSON by the rules of request bodies: every fault of reading and of validation, together. */
@Component
public class StrictReading {

    private final JsonMapper json;
    private final Validator validator;

    StrictReading(JsonMapper json, Validator validator) {
        this.json = json;
        this.validator = validator;
    }

    /**
     * Reads a document, within a request.
     *
     * @param document JSON
     * @param type what it describes
     * @throws ProblemException 400 naming every fault by its pointer in the document
     */
    public <T> T read(String document, Class<T> type) {
        List<Fault> faults = new ArrayList<>();
        T read = null;
        try {
            read = InputFaults.gathered(faults, () -> json.readValue(document, type));
        } catch (JacksonException e) {
            faults.add(fault(e));
        }
        addViolations(read, faults);
        if (read == null || !faults.isEmpty()) {
            List<Fault> named =
                    faults.isEmpty() ? List.of(new Fault("", "it is missing", "missing", "an object", null)) : faults;
            throw new ProblemException(ProblemType.INVALID_INPUT, ProblemAdvice.summary(named), named);
        }
        return read;
    }

    /**
     * Checks one value by the rules that a body has for a field of that name.
     *
     * @throws ProblemException 400 naming the field
     */
    public void check(Class<?> type, String field, @Nullable Object value) {
        List<Fault> faults = validator.validateValue(type, field, value).stream()
                .map(Violations::fault)
                .toList();
        if (!faults.isEmpty()) {
            throw new ProblemException(ProblemType.INVALID_INPUT, ProblemAdvice.summary(faults), faults);
        }
    }

    /** Adds what validation finds to what reading found; that a field is missing that could not be read is not said again. */
    void addViolations(@Nullable Object body, List<Fault> faults) {
        violations(body)
                .sorted(Comparator.comparing(
                        (ConstraintViolation<Object> v) -> v.getPropertyPath().toString()))
                .map(Violations::fault)
                .filter(fault -> faults.stream().noneMatch(known -> covers(known.pointer(), fault.pointer())))
                .forEach(faults::add);
    }

    private Stream<ConstraintViolation<Object>> violations(@Nullable Object body) {
        return body == null ? Stream.of() : validator.validate(body).stream();
    }

    private static boolean covers(String known, String pointer) {
        return known.equals(pointer) || known.startsWith(pointer + "/");
    }

    private static Fault fault(JacksonException e) {
        if (e instanceof InputCoercionException tooLarge) {
            return JsonFaults.tooLarge(tooLarge);
        }
        String pointer = e instanceof DatabindException bind ? JsonFaults.pointer(bind) : "";
        String allowed = e instanceof DatabindException bind ? JsonFaults.allowed(bind) : "JSON";
        return new Fault(pointer, JsonFaults.words(e), "wrong-form", allowed, null);
    }
}
