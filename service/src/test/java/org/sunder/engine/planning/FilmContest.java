package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.JointLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.learning.posterior.LeafPosterior;

/** What films of the tests are worth, on simulated joints. Arguments: joints (300), seed (1). */
public final class FilmContest {

    private static final Priors PRIORS = Priors.standard();
    private static final double MEASURE = 0.00005;
    private static final int EARLIER = 5;

    private static final LeafPosterior UNTESTED =
            FleetModel.of(FleetLog.empty(), PRIORS).leaf(new Leaf.NewAirframe(TrueFleet.INPUT_SD));

    private final int joints;
    private final long seed;
    private final List<PlanTree> first = new ArrayList<>();

    private FilmContest(int joints, long seed) {
        this.joints = joints;
        this.seed = seed;
        for (int which = 0; which < TrueFleet.CLASSES; which++) {
            first.add(tree(UNTESTED, which));
        }
    }

    /** Prints the table of films in service/docs/planning-contest.md. */
    public static void main(String[] args) {
        FilmContest contest = new FilmContest(
                args.length > 0 ? Integer.parseInt(args[0]) : 300, args.length > 1 ? Long.parseLong(args[1]) : 1);
        System.out.println(Tally.HEADER);
        contest.row(
                "no film",
                (fleet, joint, which, random) -> contest.first.get(which).run(joint, random));
        for (double sd : new double[] {0.10, 0.05}) {
            contest.row(
                    percent(sd) + ", not counted on",
                    (fleet, joint, which, random) ->
                            MeasuredSpeeds.run(contest.first.get(which).on(), List.of(), sd, fleet, joint, random));
            contest.row(
                    percent(sd),
                    (fleet, joint, which, random) -> MeasuredSpeeds.run(
                            contest.first.get(which).on().filmed(MeasuredSpeeds.filming(sd)),
                            List.of(),
                            sd,
                            fleet,
                            joint,
                            random));
        }
        contest.row(
                "no film, after five joints not filmed",
                (fleet, joint, which, random) -> contest.later(null, fleet, joint, which, random));
        contest.row(
                percent(0.05) + ", after five joints filmed so",
                (fleet, joint, which, random) -> contest.later(0.05, fleet, joint, which, random));
    }

    private static String percent(double sd) {
        return "film at " + Math.round(100 * sd) + " %";
    }

    private interface Way {
        PlanTree.Result run(TrueFleet fleet, TrueJoint joint, int which, Random random);
    }

    /** Every way meets the same joints; each joint has a random source of its own. */
    private void row(String name, Way way) {
        Random seeds = new Random(seed);
        Tally tally = new Tally();
        for (int i = 0; i < joints; i++) {
            Random random = new Random(seeds.nextLong());
            TrueFleet fleet = new TrueFleet(PRIORS, random);
            int which = i % TrueFleet.CLASSES;
            TrueJoint joint = fleet.setup(fleet.joint(random), which, TrueJoint.Truth.AS_ASSUMED, random);
            tally.add(joint, way.run(fleet, joint, which, random));
        }
        System.out.println(tally.row(name, 1));
    }

    private PlanTree.Result later(@Nullable Double sd, TrueFleet fleet, TrueJoint joint, int which, Random random) {
        List<AirframeLog> before = new ArrayList<>();
        for (int i = 0; i < EARLIER; i++) {
            TrueJoint earlier = fleet.setup(fleet.joint(random), i, joint.truth(), random);
            List<Trial> trials = first.get(i).run(earlier, random).trials();
            List<Trial> told = sd == null
                    ? trials
                    : trials.stream()
                            .map(trial -> MeasuredSpeeds.read(trial, sd, fleet, earlier, random))
                            .toList();
            before.add(new AirframeLog(List.of(new JointLog(List.of(new SetupLog(TrueFleet.INPUT_SD, told))))));
        }
        PlanTree start =
                tree(FleetModel.of(new FleetLog(before), PRIORS).leaf(new Leaf.NewAirframe(TrueFleet.INPUT_SD)), which);
        return sd == null
                ? start.run(joint, random)
                : MeasuredSpeeds.run(start.on().filmed(MeasuredSpeeds.filming(sd)), before, sd, fleet, joint, random);
    }

    private static PlanTree tree(LeafPosterior posterior, int which) {
        return PlanTree.start(posterior, TrueFleet.handbookCharge(which), MEASURE, List.of(), Goal.standard());
    }
}
