package org.sunder.engine.physics.flight;

import java.math.BigDecimal;
import java.util.List;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.Range;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;

/**
 * The standard atmosphere of ISO 2533:1975 and U.S. Standard Atmosphere 1976, from 1 km below to 32 km above sea level.
 *
 * <p>Layers of constant lapse rate L: p = p_b·(T/T_b)^(−g₀/(R·L)), or p = p_b·exp(−g₀·(H − H_b)/(R·T_b)) where L = 0.
 * Geopotential altitude H = r₀·z/(r₀ + z) of geometric altitude z; the two must not be mixed (0.24 % in p at 10 km).
 */
public final class StandardAtmosphere {

    /** Standard acceleration of gravity, m/s², defined. */
    public static final double GRAVITY = 9.80665;

    /** Specific gas constant of dry air, J/(kg·K): 8314.32/28.9644, USSA 1976. */
    public static final double GAS_CONSTANT = 8314.32 / 28.9644;

    /** Altitudes answered for, in metres. */
    public static final Range ALTITUDE = new Range(-1000, 32_000, "-1000 to 32000 m");

    private static final double EARTH_RADIUS = 6_356_766; // m, USSA 1976

    private static final Layer TROPOSPHERE = new Layer(0, 288.15, 101_325, -0.0065);
    private static final Layer TROPOPAUSE = TROPOSPHERE.next(11_000, 0);
    private static final Layer STRATOSPHERE = TROPOPAUSE.next(20_000, 0.001);
    private static final List<Layer> UPPER_FIRST = List.of(STRATOSPHERE, TROPOPAUSE);

    private StandardAtmosphere() {}

    /**
     * Air at a geopotential altitude in metres.
     *
     * @throws UnsoundSetupException outside {@link #ALTITUDE}
     */
    public static Air atGeopotential(double altitude) {
        check(altitude);
        return at(altitude);
    }

    private static void check(double altitude) {
        Faults faults = new Faults();
        faults.range("altitude", new Length(BigDecimal.valueOf(finite(altitude)), LengthUnit.METRE), ALTITUDE);
        faults.throwIfAny();
    }

    private static Air at(double altitude) {
        return UPPER_FIRST.stream()
                .filter(layer -> altitude >= layer.base())
                .findFirst()
                .orElse(TROPOSPHERE)
                .at(altitude);
    }

    /**
     * Air at a geometric altitude above sea level in metres.
     *
     * @throws UnsoundSetupException outside {@link #ALTITUDE}
     */
    public static Air atGeometric(double altitude) {
        check(altitude);
        return at(geopotential(altitude));
    }

    /** Geopotential altitude in metres of a geometric one. */
    public static double geopotential(double geometric) {
        return EARTH_RADIUS * geometric / (EARTH_RADIUS + geometric);
    }

    private static double finite(double altitude) {
        return Double.isFinite(altitude) ? altitude : Double.MAX_VALUE;
    }

    /** One layer: base altitude m, temperature K and pressure Pa there, lapse rate K/m. */
    private record Layer(double base, double temperature, double pressure, double lapse) {

        Air at(double altitude) {
            double t = temperature + lapse * (altitude - base);
            double p = lapse == 0
                    ? pressure * StrictMath.exp(-GRAVITY * (altitude - base) / (GAS_CONSTANT * temperature))
                    : pressure * StrictMath.pow(t / temperature, -GRAVITY / (GAS_CONSTANT * lapse));
            return new Air(t, p, p / (GAS_CONSTANT * t));
        }

        Layer next(double altitude, double nextLapse) {
            Air air = at(altitude);
            return new Layer(altitude, air.temperature(), air.pressure(), nextLapse);
        }
    }
}
