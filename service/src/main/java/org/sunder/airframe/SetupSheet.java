package org.sunder.airframe;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.quantity.Force;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.SpecificEnergy;
import org.sunder.web.RequestList;

/**
 * A setup as a flyer describes it, digits and units as written. The same form is read, stored and answered.
 *
 * @param innerDiameter inner diameter at the joint: the charge's pressure acts on this circle
 * @param cavity segments of the compartment from its closed far end to the joint
 * @param contents what is in it
 * @param pins shear pins across the joint
 * @param fitForce pull force that parts the joint without pins
 * @param fitForceUncertainty one standard deviation of it
 * @param powder name of a powder; fine-grain black powder where none is named
 * @param powderForce powder force of a powder of the stock, as it was when the setup came into force
 * @param powderUncertainty relative standard deviation of it
 * @param shoulder length of engagement
 * @param forwardMass mass of what is forward of the joint
 * @param aftMass mass of what is aft of it
 * @param ceiling what the structure stands
 * @param measure step of the scale or measure that charges are taken with
 * @param note why this setup differs from the last
 */
@Schema(description = "A setup of a joint: the compartment, what is in it, and what holds the joint closed.")
public record SetupSheet(
        @Schema(description = "Inner diameter at the joint; the pressure acts on this circle.")
        @NotNull(message = "the inner diameter is needed") Length innerDiameter,

        @Schema(description = "Segments of the compartment, from its closed far end to the joint.")
        @NotEmpty(message = "at least one cavity segment is needed") @Size(max = 20, message = "1 to 20 segments") List<@NotNull @Valid CavitySheet> cavity,

        @Schema(description = "What is in the compartment.") @Size(max = 50, message = "at most 50 items") List<@NotNull @Valid ContentSheet> contents,

        @Schema(description = "Shear pins across the joint; empty for a friction fit.")
        @Size(max = 10, message = "at most 10 sets of pins") List<@NotNull @Valid PinSheet> pins,

        @Schema(description = "Pull force that parts the joint with no pins in (a luggage scale measures it).")
        @Nullable Force fitForce,

        @Schema(description = "One standard deviation of the fit force; half of it, and at least 5 N, where not given.")
        @Nullable Force fitForceUncertainty,

        @Schema(
                description = "Name of a powder of the stock; fine-grain black powder where none is named.",
                example = "fine-grain black powder")
        @Size(max = 80, message = "at most 80 characters") @Nullable String powder,

        @Schema(
                description = "Powder force of the powder named, as the stock had it when the setup came into force."
                        + " Filled in by the service: leave it out, or repeat it unchanged.")
        @Nullable SpecificEnergy powderForce,

        @Schema(description = "Relative standard deviation of the powder force; as powderForce.", example = "0.1")
        @Nullable BigDecimal powderUncertainty,

        @Schema(description = "Length of the shoulder in the joint.") @Nullable Length shoulder,

        @Schema(description = "Mass of what is forward of the joint.") @Nullable Mass forwardMass,

        @Schema(description = "Mass of what is aft of the joint.") @Nullable Mass aftMass,

        @Schema(description = "What the structure stands; three times the threshold pressure where not given.")
        @Valid @Nullable CeilingSheet ceiling,

        @Schema(description = "Step of the scale or measure; 0.05 g where not given.") @Nullable Mass measure,

        @Schema(description = "Why this setup differs from the last.")
        @Size(max = 500, message = "at most 500 characters") @Nullable String note) {

    public SetupSheet {
        cavity = RequestList.of(cavity);
        contents = RequestList.of(contents);
        pins = RequestList.of(pins);
    }

    /** In place of one that cannot be read: it describes nothing, and its note says so. */
    public static SetupSheet unreadable(String finding) {
        Length none = new Length(BigDecimal.ZERO, LengthUnit.MILLIMETRE);
        return new SetupSheet(
                none, List.of(), List.of(), List.of(), null, null, null, null, null, null, null, null, null, null,
                finding);
    }

    /** The same with other pins. */
    public SetupSheet withPins(List<PinSheet> others) {
        return copy(contents, others, powderForce, powderUncertainty, measure, note);
    }

    /** The same with something more in it. */
    public SetupSheet with(ContentSheet content) {
        List<ContentSheet> more = new ArrayList<>(contents);
        more.add(content);
        return copy(more, pins, powderForce, powderUncertainty, measure, note);
    }

    /** Whether both describe the same, whatever their notes say. */
    public boolean describesAs(SetupSheet other) {
        return copy(contents, pins, powderForce, powderUncertainty, measure, other.note)
                .equals(other);
    }

    /** The same, charged in other steps. */
    public SetupSheet withMeasure(Mass other) {
        return copy(contents, pins, powderForce, powderUncertainty, other, note);
    }

    /** The same with what the stock says of its powder, or null for the standard one, and of its pins. */
    SetupSheet resolved(@Nullable SpecificEnergy force, @Nullable BigDecimal uncertainty, List<PinSheet> resolvedPins) {
        return copy(contents, resolvedPins, force, uncertainty, measure, note);
    }

    private SetupSheet copy(
            List<ContentSheet> inside,
            List<PinSheet> held,
            @Nullable SpecificEnergy force,
            @Nullable BigDecimal uncertainty,
            @Nullable Mass step,
            @Nullable String why) {
        return new SetupSheet(
                innerDiameter,
                cavity,
                inside,
                held,
                fitForce,
                fitForceUncertainty,
                powder,
                force,
                uncertainty,
                shoulder,
                forwardMass,
                aftMass,
                ceiling,
                step,
                why);
    }
}
