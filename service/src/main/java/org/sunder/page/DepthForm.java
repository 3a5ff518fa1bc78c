package org.sunder.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.charge.InsertionTable;
import org.sunder.engine.quantity.Length;

/** From where to where a bay is pushed in, as a flyer types it. */
final class DepthForm extends TypedForm {

    private static final int STEPS = 11;
    private static final Length NOT_AT_ALL = Length.ofMetres(0);

    private final @Nullable Length from;
    private final @Nullable Length to;

    DepthForm(UnitSystem units, Map<String, String> typed) {
        super(units, typed);
        this.from = depth("from");
        this.to = depth("to");
    }

    /**
     * Depths to look at, the present one among them; none where something is wrong.
     *
     * @param present how deep it is now, m
     * @param farthest how deep it is looked at where nothing is typed, m
     */
    List<Length> depths(double present, double farthest) {
        Length least = from == null ? NOT_AT_ALL : from;
        Length greatest = to == null ? Length.ofMetres(Math.max(farthest, 2 * least.metres())) : to;
        if (!wrong() && greatest.metres() <= least.metres()) {
            faulty("to", "It has to be more than the least depth.");
        }
        if (wrong()) {
            return List.of();
        }
        List<Length> depths = new ArrayList<>(InsertionTable.steps(least, greatest, STEPS));
        if (least.metres() < present && present < greatest.metres()) {
            depths.removeIf(depth -> Math.abs(depth.metres() - present) < 1e-6);
            depths.add(Length.ofMetres(present));
            depths.sort(Comparator.comparingDouble(Length::metres));
        }
        return depths;
    }

    private @Nullable Length depth(String name) {
        Length depth = part(name);
        if (depth != null && !SetupBounds.DEPTH.contains(depth.metres())) {
            faulty(name, "Allowed: 0 to 5 m.");
        }
        return depth;
    }
}
