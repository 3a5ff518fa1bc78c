package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.Hidden;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.enums.ParameterIn;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.advice.ChargeRulers;
import org.sunder.advice.SideViews;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Display;
import org.sunder.picture.ChargeRulerPicture;
import org.sunder.picture.SideView;
import org.sunder.picture.SideViewPicture;
import org.sunder.problem.ProblemException;

/** The charge ruler and the side view: JSON, or pictures drawn for the width asked for. */
@RestController
@Tag(name = "Advice")
class PictureController {

    private static final String SVG = "image/svg+xml";

    private final ChargeRulers rulers;
    private final SideViews views;
    private final Airframes airframes;

    PictureController(ChargeRulers rulers, SideViews views, Airframes airframes) {
        this.rulers = rulers;
        this.views = views;
        this.airframes = airframes;
    }

    @PictureWidth.Described
    @GetMapping(path = "/api/joints/{id}/ruler", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "getChargeRuler",
            summary = "All charges of a joint on one scale",
            description = "Every firing, where the joint is likely to part, what to fire next or to fly, the handbook"
                    + " charge and the ceiling, in the setup in force. Accept image/svg+xml gives the picture.",
            parameters = {
                @Parameter(
                        in = ParameterIn.QUERY,
                        name = "size",
                        description = "How large marks and letters of the picture are.",
                        schema =
                                @Schema(
                                        allowableValues = {"small", "large"},
                                        defaultValue = "large"))
            })
    ChargeRulerView ruler(@PathVariable UUID id) {
        return ChargeRulerView.of(rulers.of(id));
    }

    @Hidden
    @GetMapping(path = "/api/joints/{id}/ruler", produces = SVG)
    String rulerPicture(
            @PathVariable UUID id,
            @RequestParam(defaultValue = PictureWidth.USUAL) @PictureWidth int width,
            @RequestParam(defaultValue = "large") ChargeRulerPicture.Size size) {
        return inInk(ChargeRulerPicture.of(rulers.of(id), width, size));
    }

    @PictureWidth.Described
    @GetMapping(path = "/api/airframes/{id}/side-view", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            operationId = "getSideView",
            summary = "An airframe from the side",
            description =
                    "Parts and joints from the tip aft, put together from the setups in force, each joint with its"
                            + " evidence. What no setup describes is marked so and has a usual length. Accept image/svg+xml gives"
                            + " the picture, to scale.",
            parameters = {
                @Parameter(
                        in = ParameterIn.QUERY,
                        name = "open",
                        description = "The joint that the picture draws opened; none where not given.",
                        schema = @Schema(type = "string", format = "uuid"))
            })
    SideViewView sideView(@PathVariable UUID id) {
        return SideViewView.of(views.of(id), new Display(airframes.get(id).units()));
    }

    @Hidden
    @GetMapping(path = "/api/airframes/{id}/side-view", produces = SVG)
    String sideViewPicture(
            @PathVariable UUID id,
            @RequestParam(defaultValue = PictureWidth.USUAL) @PictureWidth int width,
            @RequestParam(required = false) @Nullable UUID open) {
        SideView view = views.of(id);
        if (open != null && view.cuts().stream().noneMatch(cut -> cut.id().equals(open.toString()))) {
            throw ProblemException.invalid(
                    "open", open.toString(), "this airframe has no such joint", "the id of a joint of the airframe");
        }
        return inInk(SideViewPicture.of(open == null ? view : view.opened(open.toString()), width));
    }

    private static String inInk(String picture) {
        return picture.replace("<svg ", "<svg color=\"#111\" ");
    }
}
