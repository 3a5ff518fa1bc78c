package org.sunder.problem;

import java.util.ArrayList;
import java.util.List;
import org.springframework.web.context.request.RequestAttributes;
import org.springframework.web.context.request.RequestContextHolder;

/** Faults met while a request body is read, gathered so that all are reported at once. */
public final class InputFaults {

    private static final String KEY = InputFaults.class.getName();

    private InputFaults() {}

    /** Notes a fault of the request being read. */
    public static void add(Fault fault) {
        RequestAttributes request = RequestContextHolder.currentRequestAttributes();
        List<Fault> known = new ArrayList<>(current());
        known.add(fault);
        request.setAttribute(KEY, known, RequestAttributes.SCOPE_REQUEST);
    }

    /** The faults noted so far. */
    public static List<Fault> current() {
        Object known =
                RequestContextHolder.currentRequestAttributes().getAttribute(KEY, RequestAttributes.SCOPE_REQUEST);
        if (known instanceof List<?> list) {
            return list.stream().map(Fault.class::cast).toList();
        }
        return List.of();
    }
}
