package org.sunder.airframe;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.springframework.stereotype.Component;
import org.sunder.engine.physics.JointPhysics;
import org.sunder.problem.ProblemException;

/**
 * The engine's view of setups. What was computed for one is kept with its sheet and used for that sheet alone: an import
 * may bring another flyer the same id with another sheet.
 */
@Component
public class SetupPhysics {

    private static final int KEPT = 20_000;

    private final Map<UUID, Known> known = Collections.synchronizedMap(new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<UUID, Known> eldest) {
            return size() > KEPT;
        }
    });

    private record Known(SetupSheet sheet, JointPhysics physics) {}

    private final SheetResolution resolution;

    SetupPhysics(SheetResolution resolution) {
        this.resolution = resolution;
    }

    /** The physics of a stored setup. */
    public JointPhysics of(Setup setup) {
        Known before = known.get(setup.id());
        if (before != null && before.sheet().equals(setup.sheet())) {
            return before.physics();
        }
        JointPhysics physics = of(setup.sheet(), "");
        known.put(setup.id(), new Known(setup.sheet(), physics));
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
