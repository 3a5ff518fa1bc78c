package org.sunder.engine.learning.posterior;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.learning.model.AirframeLog;
import org.sunder.engine.learning.model.SetupLog;
import org.sunder.engine.learning.model.SpeedReading;
import org.sunder.engine.learning.model.Trial;
import org.sunder.engine.learning.quadrature.Grid;

/**
 * One airframe's part of the tree at one node of (σ, δ), from the trials up to the airframe.
 *
 * <p>Upward messages: at a setup, the likelihood of its trials; at a joint, the product of its setups' messages, each
 * smoothed by √(τₛ² + sₓ²); at an airframe, the product of its joints' messages, each smoothed by τⱼ (sum-product
 * algorithm on a tree). Trials are multiplied in a canonical order, so the order in which they were logged cannot
 * change a bit. Not safe for use by several threads at once.
 */
final class UpwardPass {

    /** Trials between two rescalings; with a lapse of 0.02 a trial's likelihood is at least 0.0067. */
    private static final int RESCALE = 8;

    private static final Comparator<Trial> CANONICAL = Comparator.comparingDouble(Trial::logRatio)
            .thenComparing(Trial::outcome)
            .thenComparing(UpwardPass::logSpeed)
            .thenComparing(UpwardPass::speedSd);

    private final Hierarchy levels;
    private final ProbitNode probit;
    private final AirframeLog log;
    private final Message[][] leaves;
    private final Optional<SingleSetupPass> chain;
    /** [τₛ][joint], made when first asked for. */
    private final @Nullable Message[][] jointMessages;

    /**
     * @param probit the node of (σ, δ) and of the bias of speeds
     * @param chain the airframe's chain, if it has one
     */
    UpwardPass(Hierarchy levels, ProbitNode probit, AirframeLog log, Optional<SingleSetupPass> chain) {
        this.levels = levels;
        this.probit = probit;
        this.log = log;
        this.chain = chain;
        this.leaves = new Message[log.joints().size()][];
        for (int joint = 0; joint < leaves.length; joint++) {
            List<SetupLog> setups = log.joints().get(joint).setups();
            leaves[joint] = setups.stream().map(this::likelihood).toArray(Message[]::new);
        }
        this.jointMessages = new Message[levels.design().setup().size()][leaves.length];
    }

    Optional<SingleSetupPass> chain() {
        return chain;
    }

    private Message jointMessage(int s, int joint) {
        Message known = jointMessages[s][joint];
        if (known == null) {
            known = joint(s, joint, OptionalInt.empty());
            jointMessages[s][joint] = known;
        }
        return known;
    }

    private static Double logSpeed(Trial trial) {
        SpeedReading speed = trial.speed();
        return speed == null ? Double.NEGATIVE_INFINITY : speed.logSpeed();
    }

    private static Double speedSd(Trial trial) {
        SpeedReading speed = trial.speed();
        return speed == null ? 0.0 : speed.sd();
    }

    private Message likelihood(SetupLog setup) {
        Message message = flat();
        List<Trial> trials = setup.trials().stream().sorted(CANONICAL).toList();
        for (int from = 0; from < trials.size(); from += RESCALE) {
            double[] product = new double[levels.nodes()];
            Arrays.fill(product, 1);
            for (Trial trial : trials.subList(from, Math.min(trials.size(), from + RESCALE))) {
                multiply(
                        product,
                        probit,
                        trial,
                        levels.priors().lapse(),
                        levels.design().corrections());
            }
            message = message.times(Message.of(product, 0));
        }
        return message;
    }

    /**
     * Multiplies in a trial: (1 − lapse) · chance of its outcome + lapse/3. A lapsed trial says nothing: each of the
     * three outcomes is then as likely, and so is any speed.
     */
    static void multiply(double[] product, ProbitNode probit, Trial trial, double lapse, Grid corrections) {
        double[] chances = new double[product.length];
        probit.chances(trial.outcome(), trial.logRatio(), corrections, chances);
        SpeedReading speed = trial.speed();
        double lapsed = speed == null ? lapse / 3 : lapse / 3 * SpeedReading.LAPSED;
        for (int i = 0; i < product.length; i++) {
            double density = speed == null ? 1 : probit.speedDensity(speed, trial.logRatio(), corrections.node(i));
            product[i] *= (1 - lapse) * chances[i] * density + lapsed;
        }
    }

    private static boolean isAt(OptionalInt index, int i) {
        return index.isPresent() && index.getAsInt() == i;
    }

    /** The message of no trial. */
    Message flat() {
        return Message.flat(levels.nodes());
    }

    /** The likelihood of one setup's trials. */
    Message leaf(int joint, int setup) {
        return leaves[joint][setup];
    }

    /** Product of the messages of a joint's setups but {@code skip} at node s of τₛ. */
    Message joint(int s, int joint, OptionalInt skip) {
        Message product = flat();
        for (int setup = 0; setup < leaves[joint].length; setup++) {
            if (!isAt(skip, setup) && !leaves[joint][setup].isFlat()) {
                double inputSd = log.joints().get(joint).setups().get(setup).inputSd();
                product = product.times(leaves[joint][setup].smoothed(levels.setup(s, inputSd)));
            }
        }
        return product;
    }

    /** Product of the messages of the airframe's joints but {@code skip} at nodes of τₛ and τⱼ. */
    Message airframe(int s, int j, OptionalInt skip) {
        Message product = flat();
        for (int joint = 0; joint < leaves.length; joint++) {
            if (!isAt(skip, joint)) {
                product = product.times(jointMessage(s, joint).smoothed(levels.joint(j)));
            }
        }
        return product;
    }
}
