package org.sunder.engine.planning;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.Filming;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.SpeedCurve;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.learning.posterior.LeafPosterior;
import org.sunder.engine.physics.cavity.CavitySegment;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.charge.Powder;
import org.sunder.engine.physics.retention.Fit;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.physics.retention.PinThread;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.ForceUnit;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;

/** The planner at a joint where the speed of every separation is measured, in simulations. */
final class MeasuredSpeeds {

    private static final SpeedCurve CURVE = curve();

    private MeasuredSpeeds() {}

    /** A compartment of 1.5 L behind 92 mm, held by three M2.5 pins, over a shoulder of 45 mm. */
    private static SpeedCurve curve() {
        JointPhysics physics = JointPhysics.of(new JointSetup(
                mm(92),
                List.of(new CavitySegment.Cylinder(mm(92), mm(226))),
                List.of(),
                List.of(PinSet.ofNylon(PinThread.M2_5, 3)),
                Fit.of(new Force(BigDecimal.valueOf(15), ForceUnit.NEWTON)),
                Powder.FINE_BLACK_POWDER,
                mm(45),
                new Mass(BigDecimal.valueOf(900), MassUnit.GRAM),
                new Mass(BigDecimal.valueOf(4100), MassUnit.GRAM),
                null));
        return new SpeedCurve(
                -1,
                0.05,
                IntStream.range(0, 61)
                        .mapToObj(i -> physics.separationSpeed(physics.handbookCharge() * StrictMath.exp(-1 + 0.05 * i))
                                .orElseThrow())
                        .map(speed -> StrictMath.log(Math.max(speed, 0.1)))
                        .toList());
    }

    private static Length mm(double value) {
        return new Length(BigDecimal.valueOf(value), LengthUnit.MILLIMETRE);
    }

    /** How firings are filmed with readings of that standard deviation, in ln. */
    static Filming filming(double sd) {
        return new Filming(sd, CURVE);
    }

    /** Tests a joint of a first airframe until the planner stops, every separation measured as well as is usual. */
    static PlanTree.Result run(PlanTree start, TrueFleet fleet, TrueJoint joint, Random random) {
        return run(start.on(), List.of(), SpeedReading.USUAL_SD, fleet, joint, random);
    }

    /**
     * Tests a joint of a new airframe until the planner stops, every separation measured.
     *
     * @param start what is asked for at the start
     * @param before the flyer's other airframes
     * @param sd standard deviation of a reading, in ln
     */
    static PlanTree.Result run(
            PlanningCase start, List<AirframeLog> before, double sd, TrueFleet fleet, TrueJoint joint, Random random) {
        PlanningCase on = start;
        Optional<FleetModel> model = Optional.empty();
        List<Trial> trials = new ArrayList<>();
        double highest = 0;
        int violations = 0;
        NextStep step = Planner.ladder(on, 0);
        while (step instanceof NextStep.Fire fire && trials.size() < PlanTree.MOST_TESTS) {
            violations += PlanTree.violations(fire, on.ceiling(), highest);
            highest = Math.max(highest, fire.charge());
            Outcome outcome = joint.fire(fire.charge(), random);
            trials.add(read(new Trial(on.logRatio(fire.steps()), outcome), sd, fleet, joint, random));
            Trial last = trials.get(trials.size() - 1);
            LeafPosterior known = on.posterior().after(last);
            if (readings(before, trials)
                    > 1) { // the first reading alone leaves the bias as unknown as it was: then that is exact
                FleetLog log = with(before, trials);
                model = Optional.of(model.map(found -> found.changedTo(log))
                        .orElseGet(() -> FleetModel.of(log, Priors.standard())));
                known = model.get().leaf(new Leaf.Logged(before.size(), 0, 0));
            }
            on = with(known, on.after(fire.steps(), outcome));
            step = Planner.ladder(on, 0);
        }
        return PlanTree.Result.of(trials, step, on.ceiling(), highest, violations);
    }

    private static long readings(List<AirframeLog> before, List<Trial> trials) {
        return trials.stream().filter(trial -> trial.speed() != null).count()
                + (before.isEmpty() ? 0 : 2); // others' readings too have to be summed with the bias that all share
    }

    /** A trial with its speed, where it separated the joint. */
    static Trial read(Trial trial, double sd, TrueFleet fleet, TrueJoint joint, Random random) {
        if (trial.outcome() != Outcome.SEPARATED) {
            return trial;
        }
        double logSpeed = CURVE.logSpeed(trial.logRatio() - joint.middle()) + fleet.bias + sd * random.nextGaussian();
        return new Trial(trial.logRatio(), trial.outcome(), new SpeedReading(logSpeed, sd, CURVE));
    }

    private static FleetLog with(List<AirframeLog> before, List<Trial> trials) {
        List<AirframeLog> all = new ArrayList<>(before);
        all.add(new AirframeLog(List.of(new JointLog(List.of(new SetupLog(TrueFleet.INPUT_SD, trials))))));
        return new FleetLog(all);
    }

    /** A case with what is known of its setup replaced. */
    static PlanningCase with(LeafPosterior posterior, PlanningCase on) {
        return new PlanningCase(
                        posterior,
                        on.handbookCharge(),
                        on.handbookPressure(),
                        on.ceiling(),
                        on.measureStep(),
                        on.firings(),
                        on.surpriseUnanswered(),
                        on.setupChanged(),
                        on.goal())
                .filmed(on.filming());
    }
}
