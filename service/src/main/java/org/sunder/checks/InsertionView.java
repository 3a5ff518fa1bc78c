package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.caution.CautionView;
import org.sunder.engine.physics.InsertionTable;
import org.sunder.engine.physics.JointPhysics;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Volume;

/** Free volume and handbook charge against the bay's depth. */
@Schema(name = "InsertionTable", description = "Free volume and handbook charge for a bay pushed in more or less.")
record InsertionView(
        List<RowView> rows,

        @Schema(description = "Depths that do not go: the cavity ends, or no gas volume is left.")
        List<Length> refused,

        @Schema(description = "How much farther the bay may go into the other compartment instead.") @Nullable ShiftView shift,

        List<CautionView> cautions) {

    /** One depth. */
    @Schema(name = "InsertionRow", description = "One depth of the bay.")
    record RowView(
            Length depth,
            Volume freeVolume,

            @Schema(description = "What the textbook formula asks for: an estimate, not a charge to fly.")
            Mass handbookCharge) {}

    /** The bay moved to the other side. */
    @Schema(
            name = "BayShift",
            description = "The bay moved out of this compartment into the other one, as far as it goes.")
    record ShiftView(
            @Schema(description = "Length that the fullest load-out leaves free in the other compartment.")
            Length room,

            @Schema(description = "How much farther the bay may go into the other compartment.")
            Length farthest,

            @Schema(description = "This joint afterwards.") SideView here,

            @Schema(description = "The other joint afterwards.")
            SideView there) {}

    /** A joint after the move. */
    @Schema(name = "ShiftedJoint", description = "A joint after the bay has moved.")
    record SideView(
            Volume freeVolume,

            @Schema(description = "What the textbook formula asks for: an estimate, not a charge to fly.")
            Mass handbookCharge) {

        static SideView of(JointPhysics joint, Display display, Mass measure) {
            return new SideView(display.volume(joint.freeVolume()), Display.charge(joint.handbookCharge(), measure));
        }
    }

    static InsertionView of(InsertionTable table, @Nullable ShiftView shift, Display display, Mass measure) {
        return new InsertionView(
                table.rows().stream()
                        .map(row -> new RowView(
                                display.length(row.depth()),
                                display.volume(row.freeVolume()),
                                Display.charge(row.handbookCharge(), measure)))
                        .toList(),
                table.refused().stream().map(display::length).toList(),
                shift,
                CautionView.all());
    }
}
