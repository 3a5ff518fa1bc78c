package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.sunder.airframe.Display;
import org.sunder.engine.planning.Evidence;
import org.sunder.engine.quantity.Length;
import org.sunder.picture.SideView;

/** The side view as values. */
@Schema(name = "SideView", description = "An airframe from the side, put together from the setups of its joints.")
record SideViewView(
        @Schema(description = "The airframe's name.", example = "Bittern")
        String airframe,

        @Schema(description = "Parts, from the tip aft.") List<PartView> parts) {

    /** A part, and the joint at its aft end. */
    @Schema(name = "SideViewPart", description = "A part, with the joint at its aft end.")
    record PartView(
            @Schema(description = "nose, tube, bay or tail.", example = "nose")
            String kind,

            Length length,

            @Schema(description = "Largest outer diameter.") Length diameter,

            @Schema(
                    description = "Whether a setup describes it; what none describes has a usual length.",
                    example = "true")
            boolean described,

            @Schema(description = "The joint at its aft end; left out where there is none.") @Nullable JointView joint) {}

    /** A joint. */
    @Schema(name = "SideViewJoint", description = "A joint, and how far its tests support a flight charge.")
    record JointView(
            UUID id, @Schema(example = "nose to bay") String name, Evidence evidence) {}

    static SideViewView of(SideView view, Display display) {
        List<PartView> parts = new ArrayList<>();
        List<SideView.Element> elements = view.elements();
        for (int i = 0; i < elements.size(); i++) {
            if (elements.get(i) instanceof SideView.Part part) {
                SideView.Element next = i + 1 < elements.size() ? elements.get(i + 1) : null;
                parts.add(part(part, next instanceof SideView.Cut cut ? cut : null, display));
            }
        }
        return new SideViewView(view.name(), parts);
    }

    private static PartView part(SideView.Part part, SideView.@Nullable Cut cut, Display display) {
        double radius = part.outline().stream()
                .mapToDouble(SideView.Station::radius)
                .max()
                .orElseThrow();
        return new PartView(
                part.kind().name().toLowerCase(Locale.ROOT),
                display.length(part.length()),
                display.length(2 * radius),
                part.described(),
                cut == null ? null : new JointView(UUID.fromString(cut.id()), cut.name(), cut.evidence()));
    }
}
