package org.sunder.caution;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.Arrays;
import java.util.List;

/** A caution as answered. */
@Schema(name = "Caution", description = "What to mind where a charge is named.")
public record CautionView(
        @Schema(example = "fire-remotely") String code,

        @Schema(example = "Fire from a distance by wire or radio, never by hand beside the rocket.")
        String text) {

    private static final List<CautionView> ALL = Arrays.stream(Caution.values())
            .map(caution -> new CautionView(caution.code(), caution.text()))
            .toList();

    /** Every caution. */
    public static List<CautionView> all() {
        return ALL;
    }
}
