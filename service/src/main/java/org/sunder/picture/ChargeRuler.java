package org.sunder.picture;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.engine.quantity.Mass;

/**
 * What stands on the charge ruler of a joint. Masses may come in any unit; the ruler is in that of the measure.
 *
 * @param subject whose ruler it is, for its title
 * @param firings in the order fired
 * @param likely where this joint is likely to part, or null where that is not known
 * @param next the charge to fire next, or null where none is to be fired
 * @param flight the flight charge, or null where none is supported
 * @param backup the second charge of a flight, or null
 * @param handbook what the formula asks for
 * @param ceiling the charge never to be exceeded
 * @param measure step of charges
 */
public record ChargeRuler(
        String subject,
        List<Firing> firings,
        @Nullable Band likely,
        @Nullable Mass next,
        @Nullable Mass flight,
        @Nullable Mass backup,
        Mass handbook,
        Mass ceiling,
        Mass measure) {

    private static final double SHOWN_BEYOND = 1.25; // of the ceiling, where a band runs on above it

    /** Copies the list. */
    public ChargeRuler {
        firings = List.copyOf(firings);
    }

    /**
     * A firing.
     *
     * @param loaded the charge as it was loaded
     * @param charge the charge that would have done the same in the setup in force; the one loaded where it is the same
     * @param mark what it did, and on which occasion
     */
    public record Firing(Mass loaded, Mass charge, OutcomeMark mark) {}

    /**
     * Charges between which the chance of separating rises from 5 to 95 %.
     *
     * @param low 5 %
     * @param middle as likely as not
     * @param high 95 %
     */
    public record Band(Mass low, Mass middle, Mass high) {}

    /** The largest charge that a scale has to show for this ruler, its ceiling aside, in the unit of the measure. */
    public double reach() {
        double most = Stream.of(next, flight, backup, handbook)
                .flatMap(Stream::ofNullable)
                .mapToDouble(this::inUnit)
                .max()
                .orElse(0);
        double fired = firings.stream()
                .mapToDouble(firing -> inUnit(firing.charge()))
                .max()
                .orElse(0);
        return DoubleStream.of(most, fired, bandReach()).max().orElse(most);
    }

    private double bandReach() {
        return likely == null
                ? 0
                : Math.max(inUnit(likely.middle()), Math.min(inUnit(likely.high()), SHOWN_BEYOND * inUnit(ceiling)));
    }

    /** A firing in words, and how many that were all alike. */
    String told(Firing firing, int count) {
        String moved = firing.mark().earlierSetup()
                ? ", drawn at " + Display.words(Display.near(firing.charge(), measure))
                        + ", which would do the same now"
                : "";
        return (count == 1 ? "" : count + " times ") + Display.words(firing.loaded()) + " "
                + firing.mark().words() + moved;
    }

    /** A charge in the unit of the measure. */
    double inUnit(Mass charge) {
        return (charge.unit() == measure.unit() ? charge.value() : charge.valueIn(measure.unit())).doubleValue();
    }
}
