package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.Hidden;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.advice.ChargeRulers;
import org.sunder.advice.Curves;
import org.sunder.picture.CurvePicture;

/** The curve of a joint: JSON, or a picture. */
@RestController
@Tag(name = "Advice")
class CurveController {

    private final Curves curves;
    private final ChargeRulers rulers;

    CurveController(Curves curves, ChargeRulers rulers) {
        this.curves = curves;
        this.rulers = rulers;
    }

    @PictureWidth.Described
    @GetMapping(path = "/api/joints/{id}/curve", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "getCurve",
            summary = "Chance of separating against charge",
            description = "The curve of the setup in force with its band, and every firing as a mark along it. Accept"
                    + " image/svg+xml gives the picture.")
    CurveView curve(@PathVariable UUID id) {
        return CurveView.of(curves.of(id));
    }

    @Hidden
    @GetMapping(path = "/api/joints/{id}/curve", produces = "image/svg+xml")
    String picture(@PathVariable UUID id, @RequestParam(defaultValue = PictureWidth.USUAL) @PictureWidth int width) {
        return CurvePicture.of(rulers.of(id), curves.of(id).drawn(), width).replace("<svg ", "<svg color=\"#111\" ");
    }
}
