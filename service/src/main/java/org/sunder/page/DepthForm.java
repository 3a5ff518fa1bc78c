package org.sunder.page;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.charge.InsertionTable;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;

/** From where to where a bay is pushed in, as a flyer types it. */
final class DepthForm extends TypedForm {

    private static final int STEPS = 11;
    private static final int DIGITS = 9;
    private static final Length NOT_AT_ALL = Length.ofMetres(0);

    private final @Nullable Length from;
    private final @Nullable Length to;
    private final @Nullable Length at;

    DepthForm(UnitSystem units, Map<String, String> typed) {
        super(units, typed);
        this.from = depth("from");
        this.to = depth("to");
        this.at = depth("at");
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

    /**
     * The depth to look at closely: what is typed, kept between the ends of the depths, or the present one.
     *
     * @param depths of which there is one at least
     * @param present how deep it is now, m
     */
    Length at(List<Length> depths, double present) {
        double asked = at == null ? present : at.metres();
        double least = depths.get(0).metres();
        double greatest = depths.get(depths.size() - 1).metres();
        return Length.ofMetres(Math.max(least, Math.min(greatest, asked))).in(LengthUnit.MILLIMETRE, DIGITS);
    }

    /**
     * The slider over depths.
     *
     * @param least the value of its left end, in the unit of parts
     * @param greatest the value of its right end
     * @param step of it
     * @param value where it stands
     */
    record Slider(String least, String greatest, String step, String value) {}

    /** The slider over some depths, on one of them; its steps are those in which depths are told. */
    Slider slider(List<Length> depths, Length on) {
        return new Slider(
                shown(depths.get(0)), shown(depths.get(depths.size() - 1)), metric() ? "1" : "0.0625", shown(on));
    }

    private String shown(Length depth) {
        return depth.in(metric() ? LengthUnit.MILLIMETRE : LengthUnit.INCH, DIGITS)
                .value()
                .setScale(metric() ? 1 : 4, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    private @Nullable Length depth(String name) {
        Length depth = part(name);
        if (depth != null && !SetupBounds.DEPTH.contains(depth.metres())) {
            faulty(name, "Allowed: 0 to 5 m.");
        }
        return depth;
    }
}
