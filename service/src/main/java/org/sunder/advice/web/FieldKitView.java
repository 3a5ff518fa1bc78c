package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.advice.FieldKit;
import org.sunder.airframe.DeploymentEvent;
import org.sunder.airframe.Display;
import org.sunder.airframe.UnitSystem;
import org.sunder.caution.CautionView;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.GroundTestView;
import org.sunder.picture.ChargeRulerPicture;

/** All that a phone needs to work without network. */
@Schema(name = "FieldKit", description = "All that a phone needs to work without network.")
record FieldKitView(
        @Schema(description = "Joints of airframes in use, the one that something happened at last first.")
        List<JointView> joints,

        @Schema(description = "How many more joints there are than were asked for.", example = "0")
        int left,

        @Schema(
                description = "How good the speeds of films are that charges count on, in percent; absent where nothing"
                        + " is filmed.",
                example = "5")
        @Nullable BigDecimal filmedPercent,

        List<CautionView> cautions) {

    private static final List<Integer> WIDTHS = List.of(280, 340);

    /** A joint. */
    @Schema(name = "FieldKitJoint", description = "What a phone needs of one joint.")
    record JointView(
            UUID id,
            UUID airframeId,
            @Schema(example = "Bittern") String airframe,

            @Schema(description = "Whether it is the invented rocket to look around in.", example = "false")
            boolean example,

            UnitSystem units,

            @Schema(description = "Outer diameter of the airframe, where given: a length that a film shows.") @Nullable Length outerDiameter,

            @Schema(example = "nose to bay") String name,
            DeploymentEvent event,

            @Schema(description = "Step of charges.") Mass measure,

            NextChargeView advice,

            @Schema(description = "The plan from here on; left out where no depth was asked for.")
            LadderView.@Nullable StepView plan,

            @Schema(description = "Its charges on one scale, drawn for two widths of a phone.")
            List<PictureView> ruler,

            @Schema(description = "Its last firings on the ground and in flight, whoever logged them, newest first.")
            List<GroundTestView> tests,

            @Schema(description = "What a person should know of its setup.")
            List<Warning> flags,

            @Schema(description = "Codes of the flags that change what a charge does.")
            List<String> chargeFlags) {}

    static FieldKitView of(FieldKit kit) {
        return new FieldKitView(
                kit.joints().stream().map(FieldKitView::joint).toList(), kit.left(), kit.films(), CautionView.all());
    }

    private static JointView joint(FieldKit.KitJoint joint) {
        return new JointView(
                joint.joint().id(),
                joint.airframe().id(),
                joint.airframe().name(),
                joint.airframe().example(),
                joint.airframe().units(),
                joint.airframe().outerDiameter(),
                joint.joint().name(),
                joint.joint().event(),
                joint.next().measure(),
                AdviceViews.next(joint.next(), new Display(joint.airframe().units())),
                joint.ladder() == null ? null : LadderViews.of(joint.ladder()).first(),
                WIDTHS.stream()
                        .map(width -> new PictureView(
                                width, ChargeRulerPicture.of(joint.ruler(), width, ChargeRulerPicture.Size.SMALL)))
                        .toList(),
                joint.tests().stream().map(GroundTestView::of).toList(),
                joint.flags(),
                joint.flags().stream()
                        .filter(Warning::changesWhatAChargeDoes)
                        .map(Warning::code)
                        .toList());
    }

    /** A picture of a width. */
    @Schema(name = "SizedPicture", description = "A picture drawn for a width.")
    record PictureView(
            @Schema(description = "In CSS pixels.", example = "340")
            int width,

            @Schema(description = "The picture, an SVG document.")
            String svg) {}
}
