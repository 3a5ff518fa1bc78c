package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.cavity.FreeVolume;
import org.sunder.engine.quantity.Volume;

/** How the free gas volume comes about. */
@Schema(name = "FreeVolume", description = "How the free gas volume of a compartment comes about.")
record VolumeView(
        @Schema(description = "Volume of the empty cavity.") Volume cavityVolume,

        @Schema(description = "What each item takes, in the order listed.")
        List<TakenView> contents,

        @Schema(description = "Gas volume that is left.") Volume freeVolume,

        @Schema(description = "One standard deviation of it.")
        Volume uncertainty) {

    /** What one item takes. */
    @Schema(name = "VolumeTaken", description = "What one item takes of a cavity.")
    record TakenView(@Schema(example = "main parachute") String name, Volume volume) {}

    static VolumeView of(FreeVolume volume, Display display) {
        return new VolumeView(
                display.volume(volume.cavity()),
                volume.contents().stream()
                        .map(share -> new TakenView(share.name(), display.volume(share.volume())))
                        .toList(),
                display.volume(volume.free()),
                display.volume(volume.sd()));
    }
}
