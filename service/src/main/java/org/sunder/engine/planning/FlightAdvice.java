package org.sunder.engine.planning;

/** A flight charge, or why there is none. */
public sealed interface FlightAdvice permits FlightCharge, NoFlightCharge {

    /** The flight charge that the tests of a case support, or the reason why they support none. */
    static FlightAdvice of(PlanningCase on) {
        return of(on, Target.of(on));
    }

    /** As {@link #of(PlanningCase)}, with the target known. */
    private static FlightAdvice of(PlanningCase on, Target target) {
        if (on.firings().stream().noneMatch(Firing::confirms)) {
            return new NoFlightCharge("No counted ground test of this setup has separated yet without damage.");
        }
        return Safeguards.checkFlight(on, target.steps())
                .<FlightAdvice>map(rejection -> new NoFlightCharge("The charge for the target reliability is "
                        + Safeguards.grams(on.charge(target.steps())) + ". " + rejection.reason()))
                .orElseGet(() -> FlightCharge.of(on, target));
    }
}
