package org.sunder.advice.web;

import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.flight.FlightCase;
import org.sunder.engine.physics.flight.StandardAtmosphere;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.problem.ProblemException;
import org.sunder.web.QuantityParameters;

/** The climb of a flight from query parameters; a closed compartment is assumed, which lowers the ceiling most. */
final class ClimbParameters {

    private static final String SITE = "siteElevation";
    private static final String EVENT = "eventAltitude";
    private static final Length SEA_LEVEL = new Length(BigDecimal.ZERO, LengthUnit.METRE);

    private ClimbParameters() {}

    /** The climb, or null where neither altitude is given. */
    static FlightCase.@Nullable Climb climb(@Nullable String siteText, @Nullable String eventText) {
        Optional<Length> site = length(SITE, siteText);
        Optional<Length> event = length(EVENT, eventText);
        if (site.isEmpty() && event.isEmpty()) {
            return null;
        }
        Length from = site.orElse(SEA_LEVEL);
        Length to = event.orElse(from);
        if (to.metres() < from.metres()) {
            throw ProblemException.invalid(
                    EVENT,
                    String.valueOf(eventText),
                    EVENT + " lies below the site; both are above sea level",
                    "at least siteElevation");
        }
        return new FlightCase.Climb(from, to, null);
    }

    private static Optional<Length> length(String name, @Nullable String text) {
        Optional<Length> length = QuantityParameters.findLength(name, text);
        if (length.filter(l -> !StandardAtmosphere.ALTITUDE.contains(l.metres()))
                .isPresent()) {
            throw ProblemException.invalid(
                    name, String.valueOf(text), name + " is out of bounds", StandardAtmosphere.ALTITUDE.text());
        }
        return length;
    }
}
