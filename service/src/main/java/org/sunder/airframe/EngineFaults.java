package org.sunder.airframe;

import java.util.List;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.problem.Fault;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** What the engine refuses, as a problem document that points into the request. */
public final class EngineFaults {

    private EngineFaults() {}

    /**
     * Runs work of the engine.
     *
     * @param inBody from the engine's path, such as {@code contents[1].depth}, to the path in the request's body
     * @param work what to compute
     * @throws ProblemException 422 naming every item that is not sound
     */
    public static <T> T named(UnaryOperator<String> inBody, Supplier<T> work) {
        try {
            return work.get();
        } catch (UnsoundSetupException e) {
            List<Fault> faults =
                    e.faults().stream().map(fault -> fault(inBody, fault)).toList();
            String first = faults.get(0).pointer() + ": " + faults.get(0).detail();
            throw new ProblemException(ProblemType.UNSOUND_SETUP, first, faults);
        }
    }

    /** JSON pointer of a path: {@code contents[1].depth} is {@code /contents/1/depth}. */
    static String pointer(String path) {
        return "/" + path.replace("[", "/").replace("]", "").replace('.', '/');
    }

    private static Fault fault(UnaryOperator<String> inBody, SetupFault fault) {
        return new Fault(
                pointer(inBody.apply(fault.path())), fault.detail(), "unsound", fault.allowed(), fault.value());
    }
}
