package org.sunder.page;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.BayVents;
import org.sunder.engine.physics.FlightCase;
import org.sunder.engine.physics.StandardAtmosphere;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.SpeedUnit;
import org.sunder.engine.quantity.Volume;
import org.sunder.engine.quantity.VolumeUnit;

/** What a flyer says of a flight day, as it was typed, and what is wrong with it, beside each field. */
final class FlightDay {

    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,6}(?:\\.\\d{0,4})?");
    private static final Length SEA_LEVEL = new Length(BigDecimal.ZERO, LengthUnit.METRE);
    private static final BigDecimal USUAL_HOLES = new BigDecimal(3);
    private static final int SHOWN_DIGITS = 6;

    private final UnitSystem units;
    private final Map<String, String> typed;
    private final Map<String, String> faults = new LinkedHashMap<>();
    private final @Nullable Length site;

    FlightDay(UnitSystem units, Map<String, String> typed) {
        this.units = units;
        this.typed = Map.copyOf(typed);
        this.site = quantity("site", this::length);
        if (site != null && !StandardAtmosphere.ALTITUDE.contains(site.metres())) {
            faults.put("site", "The air is known from " + StandardAtmosphere.ALTITUDE.text() + " above the sea.");
        }
    }

    /** What stands in a field. */
    public String typed(String name) {
        return typed.getOrDefault(name, "");
    }

    /** What is wrong with a field, or null. */
    public @Nullable String fault(String name) {
        return faults.get(name);
    }

    /** Whether anything is wrong. */
    public boolean wrong() {
        return !faults.isEmpty();
    }

    public String lengthUnit() {
        return metric() ? "m" : "ft";
    }

    public String volumeUnit() {
        return metric() ? "L" : "in³";
    }

    public String speedUnit() {
        return metric() ? "m/s" : "ft/s";
    }

    /** Elevation of the site in words, or null where it is not given. */
    public @Nullable String siteWords() {
        return site == null ? null : Words.of(site) + " above the sea";
    }

    /** The climb to the event of a joint, or null where its altitude is not given or cannot be. */
    FlightCase.@Nullable Climb climb(UUID joint) {
        String name = "event-" + joint;
        Length event = quantity(name, this::length);
        if (event == null || faults.containsKey("site")) {
            return null;
        }
        Length from = site == null ? SEA_LEVEL : site;
        double altitude = from.metres() + event.metres();
        if (event.metres() < 0 || !StandardAtmosphere.ALTITUDE.contains(altitude)) {
            faults.put(name, "An event lies above the ground, and at most at 32000 m above the sea.");
            return null;
        }
        return new FlightCase.Climb(from, Length.ofMetres(altitude).in(LengthUnit.METRE, SHOWN_DIGITS), null);
    }

    /** Where a joint opens, in words, or null where it is not given. */
    @Nullable String eventWords(UUID joint) {
        Length event = quantity("event-" + joint, this::length);
        return event == null ? null : Words.of(event) + " above the ground";
    }

    /** The vents of the bay, or null where its volume or the speed is not given or cannot be. */
    @Nullable BayVents vents() {
        Volume bay = quantity("bay", (n, m) -> new Volume(n, m ? VolumeUnit.LITRE : VolumeUnit.CUBIC_INCH));
        Speed speed =
                quantity("speed", (n, m) -> new Speed(n, m ? SpeedUnit.METRE_PER_SECOND : SpeedUnit.FOOT_PER_SECOND));
        BigDecimal holes = quantity("holes", (n, m) -> n);
        if (bay != null && speed == null && !faults.containsKey("speed")) {
            faults.put("speed", "The bay's vents need the fastest ascent too.");
        }
        if (bay == null || speed == null || faults.containsKey("holes") || faults.containsKey("site")) {
            return null;
        }
        try {
            int count = (holes == null ? USUAL_HOLES : holes).intValue();
            return BayVents.of(bay, count, speed, site == null ? SEA_LEVEL : site);
        } catch (UnsoundSetupException e) {
            e.faults().forEach(fault -> faults.put(fault.path(), "Allowed: " + fault.allowed() + "."));
            return null;
        }
    }

    private boolean metric() {
        return units == UnitSystem.METRIC;
    }

    Display display() {
        return new Display(units);
    }

    private Length length(BigDecimal number, boolean metric) {
        return new Length(number, metric ? LengthUnit.METRE : LengthUnit.FOOT);
    }

    private <T> @Nullable T quantity(String name, BiFunction<BigDecimal, Boolean, T> make) {
        String text = typed(name).trim().replace(',', '.');
        Matcher number = NUMBER.matcher(text);
        if (text.isEmpty()) {
            return null;
        }
        if (!number.matches()) {
            faults.put(name, "Type a number, such as 300.");
            return null;
        }
        return make.apply(new BigDecimal(text), metric());
    }
}
