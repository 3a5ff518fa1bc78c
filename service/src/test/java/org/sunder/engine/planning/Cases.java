package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.learning.posterior.LeafPosterior;

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
        return of(ceiling, step, firings, false);
    }

    private static PlanningCase of(double ceiling, double step, List<Firing> firings, boolean setupChanged) {
        LeafPosterior posterior = UNTESTED;
        for (Firing firing : firings) {
            posterior = firing.counted() ? posterior.after(new Trial(firing.logRatio(), firing.outcome())) : posterior;
        }
        return new PlanningCase(
                posterior, HANDBOOK, PRESSURE, ceiling, step, firings, false, setupChanged, Goal.standard());
    }

    /** What a history has in it that a plan must mind. */
    enum Kind {
        /** Up to 8 firings in any order, some damaging; any ceiling, any measure. */
        ANY,
        /** Fired from below until it separates, and there again. */
        CONFIRMED,
        /** Half of the firings are void, the damaging ones too. */
        VOIDED,
        /** Half of the firings are of another setup, with another handbook charge and pressure. */
        OTHER_SETUP,
        /** All separated tests are of the setup before. */
        CHANGED,
        /** The last firing did nothing at more than what had separated. */
        SURPRISED,
        /** The ceiling is below what the handbook asks for. */
        LOW_CEILING
    }

    /** A joint and a log of a kind, drawn at random. */
    static PlanningCase random(Kind kind, Random random) {
        double c = 0.4 * random.nextGaussian();
        double step = HANDBOOK * StrictMath.exp(-2 - 4 * random.nextDouble());
        return switch (kind) {
            case ANY -> random(random);
            case CONFIRMED -> of(4 * HANDBOOK * StrictMath.exp(c), step, confirmed(c, 1 + random.nextInt(4)));
            case VOIDED -> {
                List<Firing> firings = firings(c, 2 + random.nextInt(7), random);
                firings.replaceAll(firing -> random.nextBoolean() ? firing : voided(firing));
                firings.set(0, voided(firings.get(0)));
                yield of(ceiling(random), step, firings);
            }
            case OTHER_SETUP -> {
                List<Firing> firings = firings(c, 2 + random.nextInt(7), random);
                double charge = StrictMath.exp(0.5 * random.nextGaussian());
                double pressure = StrictMath.exp(0.5 * random.nextGaussian());
                firings.replaceAll(firing -> random.nextBoolean() ? firing : elsewhere(firing, charge, pressure));
                firings.set(0, elsewhere(firings.get(0), charge, pressure));
                yield of(ceiling(random), step, firings);
            }
            case CHANGED -> {
                double charge = StrictMath.exp(0.5 * random.nextGaussian());
                double pressure = StrictMath.exp(0.5 * random.nextGaussian());
                List<Firing> firings = confirmed(c, 1 + random.nextInt(3));
                firings.replaceAll(firing -> elsewhere(firing, charge, pressure));
                yield of(ceiling(random), step, firings, true);
            }
            case SURPRISED -> {
                PlanningCase calm = of(4 * HANDBOOK * StrictMath.exp(c), step, confirmed(c, 3));
                yield calm.after(calm.stepsReaching(c + 0.6), Outcome.NONE);
            }
            case LOW_CEILING ->
                of(HANDBOOK * (0.3 + 0.5 * random.nextDouble()), step / 4, firings(c - 0.5, random.nextInt(3), random));
        };
    }

    private static Firing voided(Firing firing) {
        return new Firing(
                firing.charge(),
                firing.logRatio(),
                firing.gaugePressure(),
                firing.outcome(),
                firing.damaged(),
                false,
                firing.currentSetup());
    }

    /** The same ratio in another setup, whose handbook charge and pressure are so many times ours. */
    private static Firing elsewhere(Firing firing, double charge, double pressure) {
        return new Firing(
                firing.charge() * charge,
                firing.logRatio(),
                firing.gaugePressure() * pressure,
                firing.outcome(),
                firing.damaged(),
                firing.counted(),
                false);
    }

    private static List<Firing> confirmed(double c, int separated) {
        List<Firing> firings = new ArrayList<>();
        firings.add(firing(0.90 * StrictMath.exp(c), Outcome.NONE, false));
        firings.add(firing(1.08 * StrictMath.exp(c), Outcome.PARTIAL, false));
        for (int i = 0; i < separated; i++) {
            firings.add(firing(1.35 * StrictMath.exp(c), Outcome.SEPARATED, false));
        }
        return firings;
    }

    private static double ceiling(Random random) {
        return HANDBOOK * StrictMath.exp(2 * random.nextDouble() - 0.5);
    }

    /** A joint and a log drawn at random: any ceiling, any measure, up to 8 firings in any order, some damaging. */
    static PlanningCase random(Random random) {
        double c = 0.4 * random.nextGaussian();
        List<Firing> firings = firings(c, random.nextInt(9), random);
        double step = HANDBOOK * StrictMath.exp(-6 * random.nextDouble());
        return of(ceiling(random), step, firings);
    }

    private static List<Firing> firings(double c, int count, Random random) {
        List<Firing> firings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double ratio = StrictMath.exp(0.1 + 0.35 * random.nextGaussian());
            double strength = StrictMath.log(ratio) - c + 0.1 * random.nextGaussian();
            Outcome outcome = strength < 0 ? Outcome.NONE : strength < 0.15 ? Outcome.PARTIAL : Outcome.SEPARATED;
            firings.add(firing(ratio, outcome, random.nextInt(10) == 0));
        }
        return firings;
    }
}
