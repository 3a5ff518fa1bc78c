package org.sunder.airframe;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.sunder.engine.physics.packing.ItemFit;
import org.sunder.engine.physics.packing.LoadOutFit;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Volume;

/** Whether a load-out fits a compartment, as answered. */
@Schema(name = "CompartmentFit", description = "Whether what is packed fits a compartment, and what is left.")
public record LoadOutFitView(
        @Schema(description = "Whether everything fits.") boolean fits,

        @Schema(description = "Length that no item takes; negative where they overlap.")
        Length lengthLeft,

        @Schema(description = "Volume beyond what is pushed in, less all envelopes.")
        Volume volumeLeft,

        @Schema(description = "Each item, in the order listed.")
        List<ItemView> items) {

    /** Where one item comes to lie. */
    @Schema(name = "ItemFit", description = "Where one item comes to lie; depths are from the joint inwards.")
    public record ItemView(
            @Schema(example = "motor case end") String name,

            @Schema(description = "Nearest depth.") Length from,
            @Schema(description = "Farthest depth.") Length to,

            @Schema(
                    description = "What the narrowest place leaves beside it on the radius; negative where it is too"
                            + " wide. Not decisive for something soft.")
            Length clearance,

            boolean fits) {}

    /** As answered. */
    public static LoadOutFitView of(LoadOutFit fit, Display display) {
        return new LoadOutFitView(
                fit.fits(),
                display.length(fit.lengthLeft()),
                display.volume(fit.volumeLeft()),
                fit.items().stream().map(item -> item(item, display)).toList());
    }

    private static ItemView item(ItemFit item, Display display) {
        return new ItemView(
                item.name(),
                display.length(item.from()),
                display.length(item.to()),
                display.length(item.clearance()),
                item.fits());
    }
}
