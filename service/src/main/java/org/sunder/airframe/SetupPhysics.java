package org.sunder.airframe;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.sunder.engine.physics.JointPhysics;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.problem.Fault;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** The engine's view of setups. Revisions never change, so what was computed for one is kept. */
@Component
public class SetupPhysics {

    private static final int KEPT = 20_000;

    private final Map<UUID, JointPhysics> known = Collections.synchronizedMap(new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<UUID, JointPhysics> eldest) {
            return size() > KEPT;
        }
    });

    /** The physics of a stored setup. */
    public JointPhysics of(Setup setup) {
        JointPhysics physics = known.get(setup.id());
        if (physics == null) {
            physics = of(setup.sheet(), "");
            known.put(setup.id(), physics);
        }
        return physics;
    }

    /**
     * The physics of a sheet.
     *
     * @param sheet as described
     * @param base JSON pointer of the sheet in the request
     * @throws ProblemException 422 naming every item that is not sound
     */
    public JointPhysics of(SetupSheet sheet, String base) {
        try {
            return JointPhysics.of(SheetTranslation.translate(sheet));
        } catch (UnsoundSetupException e) {
            List<Fault> faults =
                    e.faults().stream().map(fault -> fault(base, fault)).toList();
            String first = faults.get(0).pointer() + ": " + faults.get(0).detail();
            throw new ProblemException(ProblemType.UNSOUND_SETUP, first, faults);
        }
    }

    private static Fault fault(String base, SetupFault fault) {
        String pointer = base + "/"
                + SheetTranslation.pathInSheet(fault.path())
                        .replace("[", "/")
                        .replace("]", "")
                        .replace('.', '/');
        return new Fault(pointer, fault.detail(), "unsound", fault.allowed(), fault.value());
    }
}
