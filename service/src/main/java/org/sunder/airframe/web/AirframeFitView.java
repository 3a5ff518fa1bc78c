package org.sunder.airframe.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.Display;
import org.sunder.airframe.JointFit;
import org.sunder.airframe.LoadOutFitView;
import org.sunder.airframe.Measure;
import org.sunder.airframe.StoredPhysics;
import org.sunder.caution.CautionView;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Volume;

/** Whether every load-out fits an airframe. */
@Schema(
        name = "AirframeFit",
        description =
                "Whether every load-out fits, and what each does to the free volume and the handbook charge of the"
                        + " joints.")
record AirframeFitView(UUID airframeId, List<JointFitView> joints, List<CautionView> cautions) {

    /** One joint. */
    @Schema(name = "JointFit", description = "The compartment of one joint with every load-out that packs it.")
    record JointFitView(
            UUID jointId,
            @Schema(example = "bay to booster") String joint,
            @Schema(example = "1") int setupRevision,

            @Schema(description = "Why the setup in force, as stored, cannot be; left out where it can.") @Nullable String finding,

            @Schema(description = "Of the setup in force, as it stands; left out where that cannot be.") @Nullable Volume freeVolume,

            @Schema(
                    description =
                            "Of the setup in force: an estimate, not a charge to fly. Left out where that cannot be.")
            @Nullable Mass handbookCharge,

            @Schema(description = "What does not fit comes first, then what leaves the least length.")
            List<PackedView> loadOuts) {}

    /** One load-out in the compartment. */
    @Schema(name = "LoadOutFit", description = "One load-out in the compartment of a joint.")
    record PackedView(
            UUID loadOutId,
            @Schema(example = "long case, big main") String name,
            @Schema(example = "54 mm, long") @Nullable String motorCase,
            LoadOutFitView fit,

            @Schema(description = "Gas volume with it; absent where none is left or the model does not answer.")
            @Nullable Volume freeVolume,

            @Schema(description = "Against the setup in force.") @Nullable Volume freeVolumeChange,

            @Schema(description = "What the textbook formula asks for with it: an estimate, not a charge to fly.")
            @Nullable Mass handbookCharge,

            @Schema(description = "Against the setup in force.") @Nullable Mass handbookChargeChange) {}

    static AirframeFitView of(Airframe airframe, List<JointFit> joints, Display display) {
        return new AirframeFitView(
                airframe.id(), joints.stream().map(fit -> joint(fit, display)).toList(), CautionView.all());
    }

    private static JointFitView joint(JointFit fit, Display display) {
        JointPhysics now = fit.physics() instanceof StoredPhysics.Sound sound ? sound.physics() : null;
        return new JointFitView(
                fit.joint().id(),
                fit.joint().name(),
                fit.setup().revision(),
                fit.physics().finding().orElse(null),
                now == null ? null : display.volume(now.freeVolume()),
                now == null
                        ? null
                        : Display.charge(
                                now.handbookCharge(), Measure.of(fit.setup().sheet())),
                fit.loadOuts().stream()
                        .map(packed -> packed(packed, fit, display))
                        .toList());
    }

    private static PackedView packed(JointFit.Packed packed, JointFit fit, Display display) {
        Mass measure = Measure.of(fit.setup().sheet());
        JointPhysics now = packed.now();
        JointPhysics then = packed.then().orElse(null);
        return new PackedView(
                packed.loadOut().id(),
                packed.loadOut().sheet().name(),
                packed.loadOut().sheet().motorCase(),
                LoadOutFitView.of(packed.fit(), display),
                then == null ? null : display.volume(then.freeVolume()),
                then == null ? null : display.volume(then.freeVolume() - now.freeVolume()),
                then == null ? null : Display.charge(then.handbookCharge(), measure),
                then == null ? null : Display.charge(then.handbookCharge() - now.handbookCharge(), measure));
    }
}
