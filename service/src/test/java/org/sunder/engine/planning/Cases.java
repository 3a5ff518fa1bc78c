package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.sunder.engine.learning.FleetLog;
import org.sunder.engine.learning.FleetModel;
import org.sunder.engine.learning.Leaf;
import org.sunder.engine.learning.LeafPosterior;
import org.sunder.engine.learning.Outcome;
import org.sunder.engine.learning.Priors;
import org.sunder.engine.learning.Trial;

/** Planning cases for tests: a joint of an untested fleet with handbook charge 1 g and pressure 100 kPa. */
final class Cases {

    static final double HANDBOOK = 0.001;
    static final double PRESSURE = 100_000;
    static final LeafPosterior UNTESTED =
            FleetModel.of(FleetLog.empty(), Priors.standard()).leaf(new Leaf.NewAirframe(0.05));

    private Cases() {}

    static Firing firing(double ratio, Outcome outcome, boolean damaged) {
        return new Firing(HANDBOOK * ratio, StrictMath.log(ratio), PRESSURE * ratio, outcome, damaged, true, true);
    }

    /** A case with ceiling 3 g and a measure of 0.05 g. */
    static PlanningCase of(Firing... firings) {
        return of(3 * HANDBOOK, 0.00005, Arrays.asList(firings));
    }

    static PlanningCase of(double ceiling, double step, List<Firing> firings) {
        LeafPosterior posterior = UNTESTED;
        for (Firing firing : firings) {
            posterior = posterior.after(new Trial(firing.logRatio(), firing.outcome()));
        }
        return new PlanningCase(posterior, HANDBOOK, PRESSURE, ceiling, step, firings, false, false, Goal.standard());
    }

    /** A joint and a log drawn at random: any ceiling, any measure, up to 8 firings in any order, some damaging. */
    static PlanningCase random(Random random) {
        double c = 0.4 * random.nextGaussian();
        List<Firing> firings = new ArrayList<>();
        int count = random.nextInt(9);
        for (int i = 0; i < count; i++) {
            double ratio = StrictMath.exp(0.1 + 0.35 * random.nextGaussian());
            double strength = StrictMath.log(ratio) - c + 0.1 * random.nextGaussian();
            Outcome outcome = strength < 0 ? Outcome.NONE : strength < 0.15 ? Outcome.PARTIAL : Outcome.SEPARATED;
            firings.add(firing(ratio, outcome, random.nextInt(10) == 0));
        }
        double step = HANDBOOK * StrictMath.exp(-6 * random.nextDouble());
        return of(HANDBOOK * StrictMath.exp(2 * random.nextDouble() - 0.5), step, firings);
    }
}
