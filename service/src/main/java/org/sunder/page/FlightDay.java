package org.sunder.page;

import java.math.BigDecimal;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.flight.BayVents;
import org.sunder.engine.physics.flight.FlightCase;
import org.sunder.engine.physics.flight.StandardAtmosphere;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.Volume;
import org.sunder.engine.quantity.VolumeUnit;

/** What a flyer says of a flight day, as it was typed, and what is wrong with it, beside each field. */
final class FlightDay extends TypedForm {

    private static final Length SEA_LEVEL = new Length(BigDecimal.ZERO, LengthUnit.METRE);
    private static final int USUAL_HOLES = 3;
    private static final int SHOWN_DIGITS = 6;

    private final @Nullable Length site;

    FlightDay(UnitSystem units, Map<String, String> typed) {
        super(units, typed);
        this.site = far("site");
        if (site != null && !StandardAtmosphere.ALTITUDE.contains(site.metres())) {
            faulty("site", "The air is known from " + StandardAtmosphere.ALTITUDE.text() + " above the sea.");
        }
    }

    public String volumeUnit() {
        return metric() ? "L" : "in³";
    }

    /** Elevation of the site in words, or null where it is not given. */
    public @Nullable String siteWords() {
        return site == null ? null : Words.of(site) + " above the sea";
    }

    /** The climb to the event of a joint, or null where its altitude is not given or cannot be. */
    FlightCase.@Nullable Climb climb(UUID joint) {
        String name = "event-" + joint;
        Length event = far(name);
        if (event == null || fault("site") != null) {
            return null;
        }
        Length from = site == null ? SEA_LEVEL : site;
        double altitude = from.metres() + event.metres();
        if (event.metres() < 0 || !StandardAtmosphere.ALTITUDE.contains(altitude)) {
            faulty(name, "An event lies above the ground, and at most at 32000 m above the sea.");
            return null;
        }
        return new FlightCase.Climb(from, Length.ofMetres(altitude).in(LengthUnit.METRE, SHOWN_DIGITS), null);
    }

    /** Where a joint opens, in words, or null where it is not given. */
    @Nullable String eventWords(UUID joint) {
        Length event = far("event-" + joint);
        return event == null ? null : Words.of(event) + " above the ground";
    }

    /** The vents of the bay, or null where its volume or the speed is not given or cannot be. */
    @Nullable BayVents vents() {
        Volume bay = quantity("bay", (n, metric) -> new Volume(n, metric ? VolumeUnit.LITRE : VolumeUnit.CUBIC_INCH));
        Speed speed = speed("speed");
        Integer holes = count("holes");
        if (bay != null && speed == null) {
            faulty("speed", "The bay's vents need the fastest ascent too.");
        }
        if (bay == null || speed == null || fault("holes") != null || fault("site") != null) {
            return null;
        }
        try {
            return BayVents.of(bay, holes == null ? USUAL_HOLES : holes, speed, site == null ? SEA_LEVEL : site);
        } catch (UnsoundSetupException e) {
            faulty(e, path -> path);
            return null;
        }
    }
}
