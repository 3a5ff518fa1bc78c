package org.sunder.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
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

    /**
     * Reads something beside the body of the request.
     *
     * @param faults takes the faults met meanwhile, which are not noted for the request
     */
    static <T> T gathered(List<Fault> faults, Supplier<T> read) {
        RequestAttributes request = RequestContextHolder.currentRequestAttributes();
        List<Fault> before = current();
        request.setAttribute(KEY, List.of(), RequestAttributes.SCOPE_REQUEST);
        try {
            return read.get();
        } finally {
            faults.addAll(current());
            request.setAttribute(KEY, before, RequestAttributes.SCOPE_REQUEST);
        }
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
