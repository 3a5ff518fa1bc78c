package org.sunder.engine.planning;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.sunder.engine.learning.model.Outcome;

/** The safeguards that every charge for a test or a flight passes. They are never traded away. */
public final class Safeguards {

    /** Largest step above the highest charge fired without damage. */
    public static final double LARGEST_STEP = 1.25;
    /** The first charge has at most this chance of separating. */
    public static final double FIRST_CHANCE = 0.60;
    /** Charges above 50 g are outside the model's domain, kg. */
    public static final double DOMAIN_LIMIT = 0.050;

    static final double LOG_STEP = StrictMath.log(LARGEST_STEP);
    private static final double ROUNDING = 1e-9;

    /** What bounds every charge, tested or flown, from above. */
    private static final List<Safeguard> LIMITS = List.of(Safeguards::ceiling, Safeguards::damage, Safeguards::domain);

    private static final List<Safeguard> FLIGHT =
            List.of(Safeguards::ceiling, Safeguards::damage, Safeguards::domain, Safeguards::step);

    private static final List<Safeguard> TEST = List.of(
            Safeguards::ceiling,
            Safeguards::damage,
            Safeguards::domain,
            Safeguards::first,
            Safeguards::step,
            Safeguards::nothing,
            PlainPlan::neverLess);

    private Safeguards() {}

    /** Whether a charge may be fired in a test: empty, or the first reason against it. */
    public static Optional<Rejection> checkTest(PlanningCase planningCase, int steps) {
        return first(TEST, planningCase, steps);
    }

    /** Whether a charge may be flown. */
    public static Optional<Rejection> checkFlight(PlanningCase planningCase, int steps) {
        return first(FLIGHT, planningCase, steps);
    }

    /** Whether a charge keeps to the limits that hold whatever was tested: ceiling, damage, domain. */
    public static Optional<Rejection> checkLimits(PlanningCase planningCase, int steps) {
        return first(LIMITS, planningCase, steps);
    }

    private static Optional<Rejection> first(List<Safeguard> safeguards, PlanningCase planningCase, int steps) {
        return safeguards.stream()
                .map(safeguard -> safeguard.check(planningCase, steps))
                .flatMap(Optional::stream)
                .findFirst();
    }

    static Optional<Rejection> ceiling(PlanningCase on, int steps) {
        return rejectIf(
                on.charge(steps) > on.ceiling() * (1 + ROUNDING),
                "ceiling",
                "It exceeds the ceiling of " + grams(on.ceiling()) + ".");
    }

    /** A damaging firing's charge, or the charge of the same gauge pressure in another setup, is out of bounds. */
    static Optional<Rejection> damage(PlanningCase on, int steps) {
        double bound = damageBound(on);
        return rejectIf(
                on.charge(steps) >= bound * (1 - ROUNDING),
                "damage",
                "It is not below " + grams(bound) + ", which did damage or gives the pressure that did.");
    }

    static double damageBound(PlanningCase on) {
        return on.firings().stream()
                .filter(Firing::damaged)
                .mapToDouble(firing -> {
                    double byPressure = on.handbookCharge() * firing.gaugePressure() / on.handbookPressure();
                    return firing.currentSetup() ? Math.min(firing.charge(), byPressure) : byPressure;
                })
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** What no charge may exceed, tested or flown, kg; what did damage not even reach. */
    static double bound(PlanningCase on) {
        return Math.min(Math.min(on.ceiling(), DOMAIN_LIMIT), damageBound(on));
    }

    static Optional<Rejection> domain(PlanningCase on, int steps) {
        return rejectIf(
                on.charge(steps) > DOMAIN_LIMIT * (1 + ROUNDING),
                "domain",
                "It exceeds " + grams(DOMAIN_LIMIT) + ", beyond which the model is not valid.");
    }

    static Optional<Rejection> first(PlanningCase on, int steps) {
        return rejectIf(
                highestUndamaged(on).isEmpty() && on.posterior().pSeparated(on.logRatio(steps)) > FIRST_CHANCE,
                "first-charge",
                "A first charge has at most a 60 % chance of separating.");
    }

    /** Steps are measured in charge ratio, so that firings of another setup count. */
    static Optional<Rejection> step(PlanningCase on, int steps) {
        OptionalDouble highest = highestUndamaged(on);
        return rejectIf(
                highest.isPresent() && on.logRatio(steps) > highest.getAsDouble() + LOG_STEP + ROUNDING,
                "step",
                "It is more than 1.25 times the highest charge fired so far without damage.");
    }

    /** Highest log ratio of the counted firings that did no damage. */
    static OptionalDouble highestUndamaged(PlanningCase on) {
        return on.counted().stream()
                .filter(firing -> !firing.damaged())
                .mapToDouble(Firing::logRatio)
                .max();
    }

    static Optional<Rejection> nothing(PlanningCase on, int steps) {
        return rejectIf(
                on.charge(steps) <= knownToDoNothing(on) * (1 + ROUNDING),
                "known-to-do-nothing",
                "A charge at least as large did nothing.");
    }

    /**
     * Highest charge that did nothing in the current setup and is below every charge that parted it; 0 if none. A surprise that
     * no further test has answered does not count as known.
     */
    static double knownToDoNothing(PlanningCase on) {
        double lowestParted = current(on)
                .filter(firing -> firing.outcome() != Outcome.NONE)
                .mapToDouble(Firing::charge)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        Firing doubted = on.surpriseUnanswered() ? on.last().orElse(null) : null;
        return current(on)
                .filter(firing -> firing.outcome() == Outcome.NONE && !firing.equals(doubted))
                .mapToDouble(Firing::charge)
                .filter(charge -> charge < lowestParted * (1 - ROUNDING))
                .max()
                .orElse(0);
    }

    private static Stream<Firing> current(PlanningCase on) {
        return on.firings().stream().filter(firing -> firing.counted() && firing.currentSetup());
    }

    private static Optional<Rejection> rejectIf(boolean rejected, String safeguard, String reason) {
        return rejected ? Optional.of(new Rejection(safeguard, reason)) : Optional.empty();
    }

    /** A charge in words; to 0.01 g, as a powder scale shows it. */
    static String grams(double kilograms) {
        return String.format(Locale.ROOT, "%.2f g", kilograms * 1000);
    }
}
