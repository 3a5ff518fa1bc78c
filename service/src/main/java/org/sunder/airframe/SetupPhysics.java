package org.sunder.airframe;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.springframework.stereotype.Component;
import org.sunder.engine.physics.JointPhysics;
import org.sunder.problem.ProblemException;

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

    private final SheetResolution resolution;

    SetupPhysics(SheetResolution resolution) {
        this.resolution = resolution;
    }

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
     * The physics of a sheet already resolved.
     *
     * @param sheet as described, with what the stock says filled in
     * @param base JSON pointer of the sheet in the request
     * @throws ProblemException 422 naming every item that is not sound
     */
    public JointPhysics of(SetupSheet sheet, String base) {
        return EngineFaults.named(inSheet(base), () -> JointPhysics.of(SheetTranslation.translate(sheet)));
    }

    /**
     * A sheet with what the stock says of its powder and pins, after it proved sound.
     *
     * @param base JSON pointer of the sheet in the request
     * @throws ProblemException 422 naming every item that is not sound
     */
    public SetupSheet resolve(SetupSheet sheet, String base) {
        SetupSheet resolved = EngineFaults.named(inSheet(base), () -> resolution.resolve(sheet));
        of(resolved, base);
        return resolved;
    }

    private static UnaryOperator<String> inSheet(String base) {
        String prefix = base.isEmpty() ? "" : base.substring(1).replace('/', '.') + ".";
        return path -> prefix + SheetTranslation.pathInSheet(path);
    }
}
