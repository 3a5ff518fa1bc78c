package org.sunder.advice;

import java.util.List;
import java.util.UUID;
import java.util.function.DoubleUnaryOperator;
import org.springframework.stereotype.Service;
import org.sunder.engine.learning.model.FleetLog;
import org.sunder.engine.learning.model.Leaf;
import org.sunder.engine.learning.model.Priors;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.engine.learning.posterior.FleetModel;
import org.sunder.engine.learning.posterior.Hyperparameters;
import org.sunder.engine.learning.posterior.LeafPosterior;

/** What a flyer's airframes teach a new one. */
@Service
public class FleetCorrections {

    /** An airframe that nothing is known of but the fleet; its inputs are taken as known. */
    private static final Leaf NEW_AIRFRAME = new Leaf.NewAirframe(0);

    /** What the very first joint of a flyer starts from. */
    static final CorrectionFactor BEFORE_ANY_TEST = beforeAnyTest(Priors.standard());

    private final FleetSnapshots fleets;
    private final Findings findings;

    FleetCorrections(FleetSnapshots fleets, Findings findings) {
        this.fleets = fleets;
        this.findings = findings;
    }

    private enum Asked {
        NEW_AIRFRAME,
        BEFORE_ANY_TEST,
        SHARED
    }

    private static CorrectionFactor beforeAnyTest(Priors priors) {
        return FleetModel.of(FleetLog.empty(), priors).leaf(NEW_AIRFRAME).correctionFactor();
    }

    /**
     * What the fleet teaches.
     *
     * @param newAirframe correction a new airframe starts from, its inputs taken as known
     * @param beforeAnyTest the same for a flyer with no test at all
     * @param scatter mean of the shot-to-shot scatter of the log threshold
     * @param band mean width of the band of partial separation, in log charge ratio
     * @param tests counted firings of the fleet
     */
    public record FleetCorrection(
            CorrectionFactor newAirframe, CorrectionFactor beforeAnyTest, double scatter, double band, int tests) {}

    /**
     * Medians and 90 % intervals of what all joints of the fleet share, in log charge ratio.
     *
     * @param scatter shot-to-shot scatter of the log threshold
     * @param band width of the band of partial separation
     * @param airframes spread between airframes
     * @param joints spread between the joints of an airframe
     * @param setups spread between the setups of a joint
     */
    public record Shared(Interval scatter, Interval band, Interval airframes, Interval joints, Interval setups) {

        static Shared of(Hyperparameters fleet) {
            return new Shared(
                    Interval.of(fleet::scatter),
                    Interval.of(fleet::band),
                    Interval.of(fleet::airframeSpread),
                    Interval.of(fleet::jointSpread),
                    Interval.of(fleet::setupSpread));
        }
    }

    /** A median and the ends of its 90 % interval. */
    public record Interval(double median, double low, double high) {

        static Interval of(DoubleUnaryOperator quantile) {
            return new Interval(
                    quantile.applyAsDouble(0.5), quantile.applyAsDouble(0.05), quantile.applyAsDouble(0.95));
        }
    }

    /** The correction of one joint in the setup in force. */
    public record JointCorrection(
            UUID airframeId, String airframe, UUID jointId, String joint, CorrectionFactor correction, int tests) {}

    /**
     * What the fleet teaches, what of each joint, and how well it is known what they all share: a joint takes as long to find
     * as the fleet, and what they share far longer.
     *
     * @param joints every joint's correction in the setup in force
     */
    public record Explained(FleetCorrection correction, List<JointCorrection> joints, Shared shared) {}

    /** What the flyer's fleet teaches now. */
    public FleetCorrection now() {
        return correction(fleets.current());
    }

    /** The same with each joint, and with what all joints share. */
    public Explained explained() {
        FleetSnapshot fleet = fleets.current();
        return new Explained(
                correction(fleet),
                fleet.joints().stream()
                        .filter(joint -> joint.finding().isEmpty())
                        .map(joint -> joint(fleet, joint))
                        .toList(),
                findings.answer(
                        fleet, Asked.SHARED, () -> findings.ask(fleet, model -> Shared.of(model.hyperparameters()))));
    }

    private FleetCorrection correction(FleetSnapshot fleet) {
        LeafPosterior fresh = findings.answer(
                fleet, Asked.NEW_AIRFRAME, () -> findings.ask(fleet, model -> model.leaf(NEW_AIRFRAME)));
        return new FleetCorrection(
                fresh.correctionFactor(),
                fleet.pool().isEmpty()
                        ? BEFORE_ANY_TEST
                        : findings.answer(fleet, Asked.BEFORE_ANY_TEST, () -> beforeAnyTest(fleet.priors())),
                fresh.scatterMean(),
                fresh.bandMean(),
                fleet.counted());
    }

    private JointCorrection joint(FleetSnapshot fleet, LoggedJoint logged) {
        return new JointCorrection(
                logged.airframe().id(),
                logged.airframe().name(),
                logged.joint().id(),
                logged.joint().name(),
                findings.posterior(fleet, logged.setup()).correctionFactor(),
                logged.counted());
    }
}
