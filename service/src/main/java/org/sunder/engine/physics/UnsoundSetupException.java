package org.sunder.engine.physics;

import java.util.List;
import java.util.stream.Collectors;

/** A setup that cannot be, or that lies outside the model's domain; holds every fault found. */
public final class UnsoundSetupException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<SetupFault> faults;

    /** With at least one fault. */
    public UnsoundSetupException(List<SetupFault> faults) {
        super(faults.stream().map(f -> f.path() + ": " + f.detail()).collect(Collectors.joining("; ")));
        this.faults = List.copyOf(faults);
    }

    /** Every fault, in the order of the setup's components. */
    public List<SetupFault> faults() {
        return faults;
    }
}
