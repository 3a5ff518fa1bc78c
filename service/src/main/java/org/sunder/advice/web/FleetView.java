package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.sunder.advice.FleetCorrections;
import org.sunder.groundtest.CorrectionView;
import org.sunder.groundtest.ProbabilityView;

/** What a flyer's airframes teach a new one. */
@Schema(name = "FleetCorrection", description = "What the flyer's airframes teach a new one.")
record FleetView(
        @Schema(description = "Correction that a new airframe starts from.")
        CorrectionView newAirframe,

        @Schema(description = "The same before any test of any airframe.")
        CorrectionView beforeAnyTest,

        @Schema(
                description = "Shot-to-shot scatter of the threshold, as a relative standard deviation.",
                example = "0.1")
        BigDecimal scatter,

        @Schema(description = "Width of the band of partial separation, in log charge ratio.", example = "0.15")
        BigDecimal band,

        SharedView shared,

        List<JointView> joints,

        @Schema(description = "Counted firings of the fleet.", example = "14")
        int tests) {

    /** One joint's correction. */
    @Schema(name = "JointCorrection", description = "The correction of a joint in the setup in force.")
    record JointView(
            UUID airframeId,
            @Schema(example = "Bittern") String airframe,
            UUID jointId,
            @Schema(example = "nose to bay") String joint,
            CorrectionView correction,
            @Schema(example = "4") int tests) {}

    /** What all joints of the fleet share. */
    @Schema(
            name = "FleetShared",
            description = "What all joints of the fleet share, each with its 90 % interval, as logs of a charge ratio:"
                    + " about a relative standard deviation.")
    record SharedView(
            @Schema(description = "Shot-to-shot scatter of the threshold.")
            IntervalView scatter,

            @Schema(description = "Width of the band of partial separation.")
            IntervalView band,

            @Schema(description = "Spread of the corrections of airframes.")
            IntervalView airframes,

            @Schema(description = "Spread of the corrections of an airframe's joints; coarse, within about 0.02.")
            IntervalView joints,

            @Schema(description = "Spread of the corrections of a joint's setups; coarse, within about 0.02.")
            IntervalView setups) {

        static SharedView of(FleetCorrections.Shared shared) {
            return new SharedView(
                    IntervalView.of(shared.scatter()),
                    IntervalView.of(shared.band()),
                    IntervalView.of(shared.airframes()),
                    IntervalView.of(shared.joints()),
                    IntervalView.of(shared.setups()));
        }
    }

    /** A median with its 90 % interval. */
    @Schema(name = "Interval", description = "A median and the ends of its 90 % interval.")
    record IntervalView(
            @Schema(example = "0.1") BigDecimal median,
            @Schema(example = "0.05") BigDecimal low,
            @Schema(example = "0.2") BigDecimal high) {

        static IntervalView of(FleetCorrections.Interval interval) {
            return new IntervalView(
                    ProbabilityView.rounded(interval.median()),
                    ProbabilityView.rounded(interval.low()),
                    ProbabilityView.rounded(interval.high()));
        }
    }

    static FleetView of(FleetCorrections.Explained explained) {
        FleetCorrections.FleetCorrection fleet = explained.correction();
        return new FleetView(
                CorrectionView.of(fleet.newAirframe()),
                CorrectionView.of(fleet.beforeAnyTest()),
                ProbabilityView.rounded(fleet.scatter()),
                ProbabilityView.rounded(fleet.band()),
                SharedView.of(explained.shared()),
                explained.joints().stream()
                        .map(joint -> new JointView(
                                joint.airframeId(),
                                joint.airframe(),
                                joint.jointId(),
                                joint.joint(),
                                CorrectionView.of(joint.correction()),
                                joint.tests()))
                        .toList(),
                fleet.tests());
    }
}
