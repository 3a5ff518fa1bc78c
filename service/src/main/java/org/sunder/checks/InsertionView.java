package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.caution.CautionView;
import org.sunder.engine.physics.charge.InsertionTable;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Volume;

/** Free volume and handbook charge against the bay's depth. */
@Schema(name = "InsertionTable", description = "Free volume and handbook charge for a bay pushed in more or less.")
record InsertionView(
        List<RowView> rows,

        @Schema(description = "How much farther the bay may go into the other compartment instead.") @Nullable ShiftView shift,

        List<CautionView> cautions) {

    /** One depth. */
    @Schema(name = "InsertionRow", description = "One depth of the bay.")
    record RowView(
            Length depth,

            @Schema(description = "Whether the bay can be there.")
            boolean fits,

            @Schema(
                    description =
                            "What is in the way, where it cannot: the cavity narrows or ends, or no gas volume is left.")
            @Nullable String why,

            @Schema(description = "Only where the bay can be there.") @Nullable Volume freeVolume,

            @Schema(
                    description =
                            "What the textbook formula asks for, only where the bay can be there: an estimate, not a charge to fly.")
            @Nullable Mass handbookCharge) {

        static RowView of(InsertionTable.Row row, Display display, Mass measure) {
            Length depth = display.length(row.depth());
            if (row instanceof InsertionTable.FitsNot not) {
                return new RowView(depth, false, not.why(), null, null);
            }
            InsertionTable.Fits fits = (InsertionTable.Fits) row;
            return new RowView(
                    depth,
                    true,
                    null,
                    display.volume(fits.freeVolume()),
                    Display.charge(fits.handbookCharge(), measure));
        }
    }

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
                        .map(row -> RowView.of(row, display, measure))
                        .toList(),
                shift,
                CautionView.all());
    }
}
