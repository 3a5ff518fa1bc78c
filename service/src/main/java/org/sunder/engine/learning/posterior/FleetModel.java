package org.sunder.engine.learning.posterior;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.quadrature.Node;

/**
 * The posterior of a fleet's corrections, exact on the tree fleet → airframe → joint → setup → trials.
 *
 * <p>Problem: find what all trials say about one setup's log correction c, scatter σ and band δ. Model: {@link Priors}
 * and the ordered probit of {@link ProbitNode}. Method: for each node of the hyperparameters (σ, δ, τₛ, τⱼ, τₐ) messages are
 * passed up and down the tree on a grid of c and of the fleet's mean μ (sum-product algorithm; J. Pearl, Probabilistic
 * Reasoning in Intelligent Systems, 1988, ch. 4); nodes are weighted by their prior and the marginal likelihood that
 * falls out at the root. No random numbers: the same log gives the same bits, whatever the order of its trials.
 *
 * <p>Valid for |c| up to 2.4. Cost: linear in trials for a new fleet, one airframe's part for a new trial.
 */
public final class FleetModel {

    /** Where more airframes than this differ, a model is made anew. */
    private static final int FEW = 8;

    private final Hierarchy levels;
    private final FleetLog log;
    private final MeanLogLikelihood evidence;
    private final Optional<Recent> recent;

    private FleetModel(Hierarchy levels, FleetLog log, MeanLogLikelihood evidence, Optional<Recent> recent) {
        this.levels = levels;
        this.log = log;
        this.evidence = evidence;
        this.recent = recent;
    }

    /** The airframe changed last and the evidence of all others: the next change is likely to be of the same one. */
    private record Recent(int airframe, MeanLogLikelihood others) {}

    /** The posterior of a log under given priors, on the standard design. */
    public static FleetModel of(FleetLog log, Priors priors) {
        return of(log, priors, Design.standard(priors, log));
    }

    static FleetModel of(FleetLog log, Priors priors, Design design) {
        return of(log, new Hierarchy(priors, design, BiasNodes.kept(log)));
    }

    static FleetModel of(FleetLog log, Hierarchy levels) {
        MeanLogLikelihood evidence = MeanLogLikelihood.of(log.airframes(), levels);
        return new FleetModel(levels, log, evidence, Optional.empty());
    }

    /** Memory that it holds, in kilobytes, about: with measured speeds it is five or eleven times as much. */
    public int kilobytes() {
        return evidence.kilobytes()
                + recent.map(last -> last.others().kilobytes()).orElse(0);
    }

    /** What was believed before any test. */
    public Priors priors() {
        return levels.priors();
    }

    /** The log this posterior is of. */
    public FleetLog log() {
        return log;
    }

    /**
     * This fleet, on the standard design, with one airframe's log replaced; the same to the last bit as a model made anew
     * from that log.
     */
    public FleetModel with(int airframe, AirframeLog changed) {
        FleetLog next = log.with(airframe, changed);
        if (designChanges(next, airframe) || speedsChange(next, airframe)) {
            return of(next, levels.priors());
        }
        MeanLogLikelihood rest = recent.filter(last -> last.airframe() == airframe)
                .map(Recent::others)
                .orElseGet(() -> evidence.minus(log.airframes().get(airframe), levels));
        return new FleetModel(levels, next, rest.plus(changed, levels), Optional.of(new Recent(airframe, rest)));
    }

    /**
     * The posterior of another log of the fleet, the same to the last bit as one made anew; quick where few airframes
     * differ from this one's.
     */
    public FleetModel changedTo(FleetLog next) {
        int airframes = next.airframes().size();
        if (log.airframes().size() != airframes) {
            return of(next, levels.priors());
        }
        List<Integer> differing = IntStream.range(0, airframes)
                .filter(i -> !log.airframes().get(i).equals(next.airframes().get(i)))
                .boxed()
                .toList();
        if (differing.size() > FEW) {
            return of(next, levels.priors());
        }
        FleetModel model = this;
        for (int i : differing) {
            model = model.with(i, next.airframes().get(i));
        }
        return model;
    }

    /** Whether the fleet gets its first, or loses its last, pair of joints or setups to compare. */
    private boolean designChanges(FleetLog next, int airframe) {
        AirframeLog had = log.airframes().get(airframe);
        AirframeLog has = next.airframes().get(airframe);
        boolean same = had.comparesJoints() == has.comparesJoints() && had.comparesSetups() == has.comparesSetups();
        return !same && !Design.standard(levels.priors(), next).equals(levels.design());
    }

    /** Whether the fleet gets its first measured speed or its first fine one, or loses its last. */
    private boolean speedsChange(FleetLog next, int airframe) {
        List<Node> had = BiasNodes.kept(log.airframes().get(airframe));
        List<Node> has = BiasNodes.kept(next.airframes().get(airframe));
        return had.size() != has.size()
                && BiasNodes.kept(next).size() != BiasNodes.kept(log).size();
    }

    /** The posterior of one setup's correction, scatter and band. */
    public LeafPosterior leaf(Leaf leaf) {
        return new DownwardPass(levels, evidence, position(leaf)).posterior();
    }

    /** What a joint says of setups that are new to it; indices as in {@link Leaf}. */
    public NewSetups newSetups(int airframe, int joint) {
        Leaf any = new Leaf.NewSetup(airframe, joint, 0);
        return new DownwardPass(levels, evidence, position(any)).newSetups();
    }

    /** The posterior of what all joints of the fleet share. */
    public Hyperparameters hyperparameters() {
        return new Hyperparameters(levels, evidence);
    }

    private SetupPosition position(Leaf leaf) {
        if (leaf instanceof Leaf.Logged at) {
            AirframeLog airframe = log.airframes().get(at.airframe());
            SetupLog setup = airframe.joints().get(at.joint()).setups().get(at.setup());
            return new SetupPosition(airframe, OptionalInt.of(at.joint()), OptionalInt.of(at.setup()), setup.inputSd());
        }
        OptionalInt none = OptionalInt.empty();
        if (leaf instanceof Leaf.NewSetup at) {
            return new SetupPosition(
                    log.airframes().get(at.airframe()), OptionalInt.of(at.joint()), none, at.inputSd());
        }
        if (leaf instanceof Leaf.NewJoint at) {
            return new SetupPosition(log.airframes().get(at.airframe()), none, none, at.inputSd());
        }
        return new SetupPosition(new AirframeLog(List.of()), none, none, ((Leaf.NewAirframe) leaf).inputSd());
    }

    /** Log marginal likelihood of the whole log: the probability of its outcomes in the order listed. */
    public double logMarginalLikelihood() {
        return leaf(new Leaf.NewAirframe(0)).logMarginalLikelihood();
    }
}
