package org.sunder.airframe;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.springframework.stereotype.Component;
import org.sunder.engine.physics.charge.CoarseMeasure;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.problem.ProblemException;

/**
 * The engine's view of setups. What was computed for one is kept with its sheet and used for that sheet alone: an import
 * may bring another flyer the same id with another sheet.
 */
@Component
public class SetupPhysics {

    private static final int KEPT = 20_000;

    private final Cache<UUID, Known> known =
            Caffeine.newBuilder().maximumSize(KEPT).executor(Runnable::run).build();

    private record Known(SetupSheet sheet, JointPhysics physics) {}

    private final SheetResolution resolution;

    SetupPhysics(SheetResolution resolution) {
        this.resolution = resolution;
    }

    /**
     * A batch that pins of a setup name.
     *
     * @param path of the pins in the sheet
     * @param batch its id
     * @param thread of the pins
     */
    public record NamedBatch(String path, UUID batch, String thread) {}

    /**
     * The physics of a stored setup, or why there is none: a row of an older version, or a hand in the database, may describe
     * what cannot be.
     */
    public StoredPhysics find(Setup setup) {
        if (setup.finding() != null) {
            return new StoredPhysics.Unsound(setup.finding());
        }
        try {
            return new StoredPhysics.Sound(computed(setup));
        } catch (ProblemException e) {
            return new StoredPhysics.Unsound(
                    "Revision " + setup.revision() + " of this setup, as stored, cannot be: " + e.getMessage());
        }
    }

    /**
     * The physics of a stored setup.
     *
     * @throws ProblemException 422 where it cannot be; ask {@link #find} where others must not suffer from that
     */
    public JointPhysics of(Setup setup) {
        return find(setup).required();
    }

    private JointPhysics computed(Setup setup) {
        Known before = known.getIfPresent(setup.id());
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
        JointPhysics physics =
                EngineFaults.named(inSheet(base), () -> JointPhysics.of(SheetTranslation.translate(sheet)));
        return CoarseMeasure.warning(physics.handbookCharge(), Measure.of(sheet))
                .map(physics::warning)
                .orElse(physics);
    }

    /**
     * A sheet with what the stock says of its powder and pins, after it proved sound.
     *
     * @param base JSON pointer of the sheet in the request
     * @throws ProblemException 422 naming every item that is not sound
     */
    public SetupSheet resolve(SetupSheet sheet, String base) {
        return resolved(base, () -> resolution.resolve(sheet));
    }

    /**
     * The next sheet of a joint with what the stock says of its powder and pins, after it proved sound.
     *
     * @param inForce what the joint has now; its values may be repeated, and the stock's of today come into force
     * @throws ProblemException 422 naming every item that is not sound
     */
    public SetupSheet resolve(SetupSheet sheet, SetupSheet inForce) {
        return resolved("", () -> resolution.resolve(sheet, inForce));
    }

    /**
     * Refuses, by throwing, a resolved sheet that no call could have stored.
     *
     * @throws ProblemException 422 naming every item that is not sound
     */
    public void checkStored(SetupSheet sheet) {
        EngineFaults.named(inSheet(""), () -> SheetResolution.checkedAsStored(sheet));
        of(sheet, "");
    }

    /** The batches that a sheet names. */
    public static List<NamedBatch> batchesOf(SetupSheet sheet) {
        List<NamedBatch> named = new ArrayList<>();
        for (int i = 0; i < sheet.pins().size(); i++) {
            PinSheet pin = sheet.pins().get(i);
            if (pin.batch() != null) {
                named.add(new NamedBatch("pins[" + i + "]", pin.batch(), pin.thread()));
            }
        }
        return named;
    }

    /**
     * Refuses, by throwing, a batch that is not there or is of another thread.
     *
     * @throws ProblemException 422 naming it
     */
    public void checkBatch(NamedBatch named) {
        EngineFaults.named(inSheet(""), () -> resolution.checkedBatch(named));
    }

    private SetupSheet resolved(String base, Supplier<SetupSheet> work) {
        SetupSheet resolved = EngineFaults.named(inSheet(base), work);
        of(resolved, base);
        return resolved;
    }

    private static UnaryOperator<String> inSheet(String base) {
        String prefix = base.isEmpty() ? "" : base.substring(1).replace('/', '.') + ".";
        return path -> prefix + SheetTranslation.pathInSheet(path);
    }
}
