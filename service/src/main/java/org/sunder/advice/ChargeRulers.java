package org.sunder.advice;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.sunder.airframe.Display;
import org.sunder.engine.learning.posterior.LeafPosterior;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.planning.FlightCharge;
import org.sunder.engine.planning.NextStep;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.Occasion;
import org.sunder.picture.ChargeRuler;
import org.sunder.picture.OutcomeMark;

/** What stands on the charge ruler of a joint, from what the log and the plan say of it. */
@Service
public class ChargeRulers {

    private static final double SELDOM = 0.05;
    private static final double EVEN = 0.5;
    private static final double MOSTLY = 0.95;

    private final FleetSnapshots fleets;
    private final Advising advising;
    private final Findings findings;

    ChargeRulers(FleetSnapshots fleets, Advising advising, Findings findings) {
        this.fleets = fleets;
        this.advising = advising;
        this.findings = findings;
    }

    /**
     * The ruler of the setup in force. The next charge stands on it where one is to be fired, flight charge and backup where
     * testing is done.
     */
    public ChargeRuler of(UUID jointId) {
        return of(fleets.current(), jointId);
    }

    /** The ruler of a joint of a fleet. */
    ChargeRuler of(FleetSnapshot fleet, UUID jointId) {
        return findings.answer(fleet, new RulerOf(jointId), () -> find(fleet, jointId));
    }

    private record RulerOf(UUID joint) {}

    private ChargeRuler find(FleetSnapshot fleet, UUID jointId) {
        return of(advising.joint(fleet, jointId), advising.next(fleet, jointId).step());
    }

    /** The ruler of a case, whether its setup is stored or not. */
    static ChargeRuler of(JointCase joint, NextStep step) {
        FlightCharge flight = step instanceof NextStep.Stop stop ? stop.flightCharge() : null;
        Mass measure = joint.measure();
        return new ChargeRuler(
                joint.logged().airframe().name() + ", " + joint.logged().joint().name(),
                firings(joint),
                likely(joint),
                step instanceof NextStep.Fire fire ? Display.onMeasure(fire.charge(), measure) : null,
                onMeasure(flight == null ? null : flight.charge(), measure),
                onMeasure(flight == null ? null : flight.backup().charge(), measure),
                Display.charge(joint.physics().handbookCharge(), measure),
                Display.limit(joint.physics().ceiling().chargeKg(), measure),
                measure);
    }

    private static @Nullable Mass onMeasure(@Nullable Double kilograms, Mass measure) {
        return kilograms == null ? null : Display.onMeasure(kilograms, measure);
    }

    private static ChargeRuler.Band likely(JointCase joint) {
        LeafPosterior posterior = joint.posterior();
        Mass measure = joint.measure();
        return new ChargeRuler.Band(
                Display.charge(joint.charge(posterior.logRatioFor(SELDOM)), measure),
                Display.charge(joint.charge(posterior.logRatioFor(EVEN)), measure),
                Display.charge(joint.charge(posterior.logRatioFor(MOSTLY)), measure));
    }

    private static List<ChargeRuler.Firing> firings(JointCase joint) {
        LoggedJoint logged = joint.logged();
        return logged.sound().stream()
                .flatMap(test -> logged.physicsOf(test).map(then -> firing(test, then, joint)).stream())
                .toList();
    }

    private static ChargeRuler.Firing firing(GroundTest test, JointPhysics then, JointCase joint) {
        boolean earlier = !JointCase.equivalent(then, joint.physics());
        Mass loaded = Display.loaded(test.report().charge(), joint.measure());
        double same = loaded.kilograms() * joint.physics().handbookCharge() / then.handbookCharge();
        return new ChargeRuler.Firing(
                loaded,
                earlier ? Display.charge(same, joint.measure()) : loaded,
                new OutcomeMark(test.report().outcome(), test.voided(), test.occasion() == Occasion.FLIGHT, earlier));
    }
}
