package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.sunder.engine.learning.AirframeLog;
import org.sunder.engine.learning.FleetLog;
import org.sunder.engine.learning.JointLog;
import org.sunder.engine.learning.Outcome;
import org.sunder.engine.learning.Priors;
import org.sunder.engine.learning.SetupLog;
import org.sunder.engine.learning.Trial;

/** A flyer whose fleet's parameters are drawn from the priors and known, for simulations only. */
final class TrueFleet {

    static final double INPUT_SD = 0.05;

    private final double mean;
    private final double spread;
    private final double sigma;
    private final double delta;

    TrueFleet(Priors priors, Random random) {
        mean = priors.meanSd() * random.nextGaussian();
        double ta = priors.airframeScale() * random.nextGaussian();
        double tj = priors.jointScale() * random.nextGaussian();
        double ts = priors.setupScale() * random.nextGaussian();
        spread = StrictMath.sqrt(ta * ta + tj * tj + ts * ts + INPUT_SD * INPUT_SD);
        sigma = priors.scatterMedian() * StrictMath.exp(priors.scatterLogSd() * random.nextGaussian());
        delta = priors.bandMedian() * StrictMath.exp(priors.bandLogSd() * random.nextGaussian());
    }

    /** A joint of a further airframe; handbook charge log-uniform from 0.5 to 3 g. */
    TrueJoint joint(Random random) {
        double c = mean + spread * random.nextGaussian();
        return new TrueJoint(0.0005 * StrictMath.exp(StrictMath.log(6) * random.nextDouble()), c, sigma, delta);
    }

    /** A log of so many airframes, one joint each, four tests each at charges near what separates. */
    FleetLog log(int airframes, Random random) {
        List<AirframeLog> logs = new ArrayList<>();
        for (int i = 0; i < airframes; i++) {
            TrueJoint joint = joint(random);
            List<Trial> trials = new ArrayList<>();
            for (int k = 0; k < 4; k++) {
                double x = joint.c() + 0.1 + 0.2 * random.nextGaussian();
                Outcome outcome = joint.fire(joint.handbookCharge() * StrictMath.exp(x), random);
                trials.add(new Trial(x, outcome));
            }
            logs.add(new AirframeLog(List.of(new JointLog(List.of(new SetupLog(INPUT_SD, trials))))));
        }
        return new FleetLog(logs);
    }
}
