package org.sunder.checks;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.sunder.airframe.Display;
import org.sunder.airframe.LoadOutFitView;
import org.sunder.engine.physics.packing.LoadOutFit;

/** What fits, worst first. */
@Schema(name = "FitAnswer", description = "What fits, worst first.")
record FitView(
        @Schema(description = "What does not fit comes first, then what leaves the least length.")
        List<AlternativeView> loadOuts) {

    /** One alternative. */
    @Schema(name = "AlternativeFit", description = "Whether one alternative fits.")
    record AlternativeView(@Schema(example = "long case") String name, LoadOutFitView fit) {}

    static FitView of(List<LoadOutFit> fits, List<Alternative> alternatives, Display display) {
        return new FitView(fits.stream()
                .map(fit -> new AlternativeView(
                        alternatives.get(Integer.parseInt(fit.loadOut())).name(), LoadOutFitView.of(fit, display)))
                .toList());
    }
}
