package org.sunder.engine.physics.flight;

import java.util.List;
import java.util.Optional;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.Range;
import org.sunder.engine.physics.SetupBounds;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.charge.Ceiling;
import org.sunder.engine.physics.charge.Ceilings;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.physics.retention.PinStrength;

/**
 * Whether the pins hold in flight until the charge breaks them.
 *
 * <p>Holding counts weak pins (95 % are stronger) and no friction; breaking counts strong pins (95 % are weaker) and strong
 * friction. Smallest count = ceil(margin·F_max/f_low). The charge is the formula's: tests correct it.
 *
 * @param holdingForce what the setup's pins surely hold, N
 * @param loads what pulls
 * @param worst the largest load, N
 * @param margin holding over the largest load; infinite where nothing pulls
 * @param holds whether that reaches the margin asked for
 * @param smallest the smallest count of the first kind of pin that holds, and its charge
 */
public record PinsInFlight(
        double holdingForce, List<FlightLoad> loads, double worst, double margin, boolean holds, PinChoice smallest) {

    /** Margin asked for where none is stated, this project's choice; 1.5 to 2 is sensible. */
    public static final double DEFAULT_MARGIN = 2;

    private static final Range MARGIN = new Range(1, 10, "1 to 10");

    /** Standard normal quantile: the uncertainty of the fit is stated, not estimated from few pulls. */
    private static final double FIT_95 = 1.6448536269514722;

    /** Copies the list. */
    public PinsInFlight {
        loads = List.copyOf(loads);
    }

    /**
     * The pins of a setup against a flight.
     *
     * @throws UnsoundSetupException with every fault; a setup without pins has nothing to count
     */
    public static PinsInFlight of(JointSetup setup, FlightCase flight, double requiredMargin) {
        JointPhysics joint = JointPhysics.of(setup);
        Faults faults = new Faults();
        faults.range("margin", requiredMargin, MARGIN);
        FlightCheck.check(faults, setup, flight);
        faults.throwIfAny();
        List<FlightLoad> loads = FlightLoads.of(flight, setup, joint.area(), joint.freeVolume());
        double worst = loads.stream().mapToDouble(FlightLoad::force).max().orElse(0);
        double holding =
                setup.pins().stream().mapToDouble(set -> set.count() * low(set)).sum();
        double margin = new FlightLoad(LoadKind.TRAPPED_PRESSURE, worst).margin(holding);
        PinChoice smallest = choose(joint, worst * requiredMargin);
        return new PinsInFlight(holding, loads, worst, margin, margin >= requiredMargin, smallest);
    }

    /** The load that a kind puts on the joint, if it was stated. */
    public Optional<FlightLoad> find(LoadKind kind) {
        return loads.stream().filter(load -> load.kind() == kind).findFirst();
    }

    private static PinChoice choose(JointPhysics joint, double needed) {
        JointSetup setup = joint.setup();
        PinSet kind = setup.pins().get(0);
        double low = low(kind);
        int count = (int) Math.min(1_000_000, Math.max(1, Math.ceil(needed / low)));
        double breaking = count * high(kind)
                + setup.fit().force().newtons()
                + FIT_95 * setup.fit().sd();
        double charge = breaking / joint.area() * joint.freeVolume() / JointPhysics.powderForce(setup);
        double threshold = (count * kind.strength().forceOfOne(kind.thread())
                        + setup.fit().force().newtons())
                / joint.area();
        Ceiling ceiling = Ceilings.of(setup, joint.freeVolume(), joint.area(), threshold);
        return charge <= ceiling.chargeKg() && SetupBounds.PIN_COUNT.contains(count)
                ? new PinChoice.Holds(count, count * low, breaking, charge, ceiling)
                : new PinChoice.NoCountDoesBoth(count, breaking, charge, ceiling);
    }

    private static double low(PinSet set) {
        PinStrength strength = set.strength();
        // A batch so uncertain that its weak pin holds nothing still counts a hundredth, so that the count stays
        // finite.
        double mean = strength.forceOfOne(set.thread());
        return Math.max(0.01 * mean, mean - strength.oneSided95() * strength.sdOf(1, set.thread()));
    }

    private static double high(PinSet set) {
        PinStrength strength = set.strength();
        return strength.forceOfOne(set.thread()) + strength.oneSided95() * strength.sdOf(1, set.thread());
    }
}
