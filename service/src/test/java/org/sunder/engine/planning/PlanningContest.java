package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.learning.posterior.LeafPosterior;

/** The planner against habits on simulated joints. Arguments: joints (5000), joints of later airframes (300), seed (1). */
public final class PlanningContest {

    private static final Priors PRIORS = Priors.standard();
    /** The goal that the habits are tuned to, with knowledge of the truth. */
    private static final double RISK = 0.005;

    private static final LeafPosterior UNTESTED =
            FleetModel.of(FleetLog.empty(), PRIORS).leaf(new Leaf.NewAirframe(TrueFleet.INPUT_SD));

    private final int joints;
    private final long seed;

    private PlanningContest(int joints, long seed) {
        this.joints = joints;
        this.seed = seed;
    }

    /** Prints the tables of service/docs/planning-contest.md. */
    public static void main(String[] args) {
        int joints = args.length > 0 ? Integer.parseInt(args[0]) : 5000;
        int later = args.length > 1 ? Integer.parseInt(args[1]) : 300;
        long seed = args.length > 2 ? Long.parseLong(args[2]) : 1;
        PlanningContest contest = new PlanningContest(joints, seed);
        List<PlanTree> standard = contest.trees(UNTESTED, goal(0.99, 1.20), 0.00005);
        for (TrueJoint.Truth truth : TrueJoint.Truth.values()) {
            title("First airframe of a flyer, %s, %d joints".formatted(truth.words, joints));
            contest.planner("planner", standard, truth);
            if (truth == TrueJoint.Truth.AS_ASSUMED) {
                contest.planner(
                        "planner, order of outcomes not asked for",
                        standard.stream().map(PlanTree::unordered).toList(),
                        truth);
            }
            contest.habits(truth);
        }
        title("Frontier of the planner, first airframe, %d joints".formatted(joints));
        for (double reliability : new double[] {0.99, 0.995}) {
            for (double limit : new double[] {1.20, 1.25, 1.35}) {
                String name = String.format(Locale.ROOT, "reliability %.3f, excess ×%.2f", reliability, limit);
                contest.planner(
                        name, contest.trees(UNTESTED, goal(reliability, limit), 0.00005), TrueJoint.Truth.AS_ASSUMED);
            }
        }
        contest.planner(
                "reliability 0.990, excess ×1.20, measure 0.01 g",
                contest.trees(UNTESTED, goal(0.99, 1.20), 0.00001),
                TrueJoint.Truth.AS_ASSUMED);
        contest.known();
        title("Later joints of a flyer, %d joints".formatted(later));
        for (double limit : new double[] {1.20, 1.25, 1.35}) {
            new PlanningContest(later, seed).later(standard, goal(0.99, limit));
        }
        title("With the speed of every separation measured, first airframe, %d joints".formatted(later));
        new PlanningContest(later, seed).measured(standard);
    }

    private static void title(String title) {
        System.out.printf("%n## %s%n%n%s%n", title, Tally.HEADER);
    }

    private static Goal goal(double reliability, double limit) {
        return new Goal(reliability, Goal.standard().pricePerTest(), StrictMath.log(limit));
    }

    private List<PlanTree> trees(LeafPosterior start, Goal goal, double measure) {
        List<PlanTree> trees = new ArrayList<>();
        for (int which = 0; which < TrueFleet.CLASSES; which++) {
            trees.add(PlanTree.start(start, TrueFleet.handbookCharge(which), measure, List.of(), goal));
        }
        return trees;
    }

    private interface Test {
        void run(TrueFleet fleet, TrueJoint joint, int which, Random random);
    }

    /** Every way of testing meets the same joints; each joint has a random source of its own. */
    private void each(TrueJoint.Truth truth, Priors priors, Test test) {
        Random seeds = new Random(seed);
        for (int i = 0; i < joints; i++) {
            Random random = new Random(seeds.nextLong());
            TrueFleet fleet = new TrueFleet(priors, random);
            int which = i % TrueFleet.CLASSES;
            test.run(fleet, fleet.setup(fleet.joint(random), which, truth, random), which, random);
        }
    }

    private void planner(String name, List<PlanTree> trees, TrueJoint.Truth truth) {
        Tally tally = new Tally();
        each(
                truth,
                PRIORS,
                (fleet, joint, which, random) ->
                        tally.add(joint, trees.get(which).run(joint, random)));
        System.out.println(tally.row(name, 1));
    }

    /** With scatter and band known to the planner, as they never are: what not knowing them costs. */
    private void known() {
        Priors known = new Priors(0.30, 0.25, 0.15, 0.10, 0.10, 0, 0.15, 0, 0.02);
        LeafPosterior start = FleetModel.of(FleetLog.empty(), known).leaf(new Leaf.NewAirframe(TrueFleet.INPUT_SD));
        for (double reliability : new double[] {0.99, 0.995}) {
            List<PlanTree> trees = trees(start, goal(reliability, 1.20), 0.00005);
            Tally tally = new Tally();
            each(
                    TrueJoint.Truth.AS_ASSUMED,
                    known,
                    (fleet, joint, which, random) ->
                            tally.add(joint, trees.get(which).run(joint, random)));
            System.out.println(tally.row(
                    String.format(
                            Locale.ROOT, "reliability %.3f, scatter and band the same for all and known", reliability),
                    1));
        }
    }

    private void habits(TrueJoint.Truth truth) {
        for (int inARow = 1; inARow <= 2; inARow++) {
            for (double share : new double[] {0.10, 0.20, 0.25}) {
                int run = inARow;
                Tally tally = new Tally();
                each(truth, PRIORS, (fleet, joint, which, random) -> Habits.ladder(joint, share, run, random, tally));
                String name = String.format(Locale.ROOT, "ladder +%.0f %%, %d in a row", 100 * share, run);
                System.out.println(tally.row(name, 1));
                double margin = tally.marginFor(RISK);
                System.out.println(tally.row(
                        String.format(Locale.ROOT, "%s, flown ×%.2f (tuned to 0.5 %%)", name, margin), margin));
            }
        }
        for (int tests : new int[] {6, 10, 15}) {
            Tally tally = new Tally();
            each(truth, PRIORS, (fleet, joint, which, random) -> Habits.upAndDown(joint, tests, random, tally));
            System.out.println(tally.row("up-and-down, %d tests".formatted(tests), 1));
        }
    }

    /** Joints of a flyer who has tested before, by the planner. */
    private void later(List<PlanTree> first, Goal goal) {
        Tally tenth = new Tally();
        Tally changed = new Tally();
        each(TrueJoint.Truth.AS_ASSUMED, PRIORS, (fleet, joint, which, random) -> {
            List<AirframeLog> logs = new ArrayList<>();
            for (int i = 0; i < 9; i++) {
                TrueJoint before = fleet.setup(fleet.joint(random), i % 8, joint.truth(), random);
                logs.add(log(first.get(i % 8).run(before, random).trials()));
            }
            LeafPosterior start =
                    FleetModel.of(new FleetLog(logs), PRIORS).leaf(new Leaf.NewAirframe(TrueFleet.INPUT_SD));
            tenth.add(joint, start(start, which, List.of(), goal).run(joint, random));
        });
        String excess = String.format(Locale.ROOT, ", excess ×%.2f", StrictMath.exp(goal.excessLimit()));
        System.out.println(tenth.row("planner, a tenth airframe" + excess, 1));
        each(TrueJoint.Truth.AS_ASSUMED, PRIORS, (fleet, ignored, which, random) -> {
            double own = fleet.joint(random);
            TrueJoint before = fleet.setup(own, which, ignored.truth(), random);
            List<Trial> trials = first.get(which).run(before, random).trials();
            TrueJoint after = fleet.setup(own, which, ignored.truth(), random);
            LeafPosterior start = FleetModel.of(new FleetLog(List.of(log(trials))), PRIORS)
                    .leaf(new Leaf.NewSetup(0, 0, TrueFleet.INPUT_SD));
            List<Firing> firings = trials.stream()
                    .map(trial -> firing(trial, after.handbookCharge()))
                    .toList();
            changed.add(after, start(start, which, firings, goal).run(after, random));
        });
        System.out.println(changed.row("planner, a changed setup of a tested joint" + excess, 1));
    }

    /** The same joints with and without measured speeds. */
    private void measured(List<PlanTree> first) {
        planner("planner, no speed measured", first, TrueJoint.Truth.AS_ASSUMED);
        Tally tally = new Tally();
        each(
                TrueJoint.Truth.AS_ASSUMED,
                PRIORS,
                (fleet, joint, which, random) ->
                        tally.add(joint, MeasuredSpeeds.run(first.get(which), fleet, joint, random)));
        System.out.println(tally.row("planner, every speed measured", 1));
    }

    private static PlanTree start(LeafPosterior posterior, int which, List<Firing> before, Goal goal) {
        return PlanTree.start(posterior, TrueFleet.handbookCharge(which), 0.00005, before, goal);
    }

    private static AirframeLog log(List<Trial> trials) {
        return new AirframeLog(List.of(new JointLog(List.of(new SetupLog(TrueFleet.INPUT_SD, trials)))));
    }

    private static Firing firing(Trial trial, double handbookCharge) {
        double ratio = StrictMath.exp(trial.logRatio());
        Outcome outcome = trial.outcome();
        return new Firing(handbookCharge * ratio, trial.logRatio(), 1e5 * ratio, outcome, false, true, false);
    }
}
