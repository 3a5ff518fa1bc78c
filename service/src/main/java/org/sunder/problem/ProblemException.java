package org.sunder.problem;

import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A failure that the caller can understand; the answer is a problem document and nothing has changed. */
public class ProblemException extends RuntimeException {

    private final ProblemType type;
    private final transient List<Fault> faults;

    /**
     * A problem.
     *
     * @param type its kind
     * @param detail this occurrence, for a person
     * @param faults the fields at fault, possibly none
     */
    public ProblemException(ProblemType type, String detail, List<Fault> faults) {
        super(detail);
        this.type = type;
        this.faults = List.copyOf(faults);
    }

    /** A problem that no field is to blame for. */
    public ProblemException(ProblemType type, String detail) {
        this(type, detail, List.of());
    }

    /** Nothing of that kind has that id, or it is not the caller's: the two answer alike. */
    public static ProblemException notFound(String kind, UUID id) {
        return new ProblemException(ProblemType.NOT_FOUND, "There is no " + kind + " " + id + ".");
    }

    /** One field or parameter is wrong. */
    public static ProblemException invalid(String pointer, Object value, String detail, String allowed) {
        return new ProblemException(
                ProblemType.INVALID_INPUT,
                detail,
                List.of(new Fault(pointer, detail, "not-allowed", allowed, String.valueOf(value))));
    }

    /**
     * The same problem of a part of something larger.
     *
     * @param place from the pointer of a fault in the part to its pointer in the whole
     */
    public ProblemException at(UnaryOperator<String> place) {
        List<Fault> placed = faults.stream()
                .map(fault -> new Fault(
                        place.apply(fault.pointer()), fault.detail(), fault.code(), fault.allowed(), fault.value()))
                .toList();
        return new ProblemException(type, ProblemAdvice.summary(placed), placed);
    }

    /** Its kind. */
    public ProblemType type() {
        return type;
    }

    /** The fields at fault. */
    public List<Fault> faults() {
        return faults;
    }
}
