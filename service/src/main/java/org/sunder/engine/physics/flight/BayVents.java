package org.sunder.engine.physics.flight;

import java.util.ArrayList;
import java.util.List;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.Range;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.Volume;

/**
 * Vent holes of an electronics bay: by the rule of practice, and what physics says of them.
 *
 * @param totalArea area of all holes by the rule, m²
 * @param holes how many equal holes
 * @param diameter of each, m
 * @param drills nearest drills: fraction of an inch, number, metric
 * @param lag the lag of exactly that area at the ascent speed
 * @param cautions what to know
 */
public record BayVents(
        double totalArea, int holes, double diameter, List<DrillSize> drills, VentLag lag, List<Warning> cautions) {

    /** One 1/4 in hole per 100 in³ of bay: common practice, no source. Area per volume in 1/m. */
    static final double RULE = Math.PI / 4 * 0.25 * 0.25 / 100 / 0.0254;

    private static final Range BAY = new Range(1e-6, 0.2, "0.001 to 200 L");
    private static final Range HOLES = new Range(1, 24, "1, or 3 to 24");
    private static final Range ASCENT = new Range(0, 1500, "0 to 1500 m/s");
    private static final double TOLERABLE_ERROR = 1; // m of altitude, this project's choice

    /** Copies the lists. */
    public BayVents {
        drills = List.copyOf(drills);
        cautions = List.copyOf(cautions);
    }

    /**
     * Vents of a bay.
     *
     * @param bay free volume of the bay
     * @param holes how many equal holes: 1, or 3 and more (two holes pass a crosswind through)
     * @param speed fastest ascent
     * @param altitude of the site above sea level
     * @throws UnsoundSetupException with every fault
     */
    public static BayVents of(Volume bay, int holes, Speed speed, Length altitude) {
        Faults faults = new Faults();
        faults.range("bay", bay, BAY);
        faults.range("holes", holes == 2 ? 0 : holes, HOLES);
        faults.range("speed", speed, ASCENT);
        faults.range("altitude", altitude, StandardAtmosphere.ALTITUDE);
        faults.throwIfAny();
        double area = RULE * bay.cubicMetres();
        double diameter = Math.sqrt(4 / Math.PI * area / holes);
        Air outside = StandardAtmosphere.atGeometric(altitude.metres());
        VentLag lag = VentLag.of(bay.cubicMetres(), Orifice.ofHoles(holes, diameter), outside, speed.metresPerSecond());
        return new BayVents(area, holes, diameter, DrillSizes.nearest(diameter), lag, cautions(holes, lag));
    }

    private static List<Warning> cautions(int holes, VentLag lag) {
        List<Warning> cautions = new ArrayList<>();
        if (holes == 1) {
            cautions.add(new Warning(
                    "single-vent",
                    "A single hole feels wind and angle of attack; three or more equal ones even it out."));
        }
        if (lag.altitudeError() > TOLERABLE_ERROR) {
            cautions.add(new Warning(
                    "vent-lag", "At this speed the pressure inside lags by more than a metre of altitude."));
        }
        return cautions;
    }
}
