package org.sunder.engine.physics.flight;

/**
 * How far the pressure in a vented space stays behind the air outside while climbing.
 *
 * <p>Quasi-steady and isothermal: the holes must pass ṁ = V/(R·T)·dp/dt with hydrostatic dp/dt = ρ·g·v, and pass it at Δp =
 * ṁ²/(2ρ·(C_d·A)²). Valid while Δp is small against p (the lag grows as v²).
 *
 * @param pressure Δp, Pa
 * @param altitudeError the altitude that Δp is worth, m: what a barometer inside reads too low while climbing
 */
public record VentLag(double pressure, double altitudeError) {

    /** Lag of a volume in m³ behind air, climbing at a speed in m/s. */
    public static VentLag of(double volume, Orifice vent, Air outside, double speed) {
        double rho = outside.density();
        double flow = volume * rho * rho * StandardAtmosphere.GRAVITY * speed / outside.pressure();
        double passing = vent.discharge() * vent.area();
        double lag = flow * flow / (2 * rho * passing * passing);
        return new VentLag(lag, lag / (rho * StandardAtmosphere.GRAVITY));
    }
}
