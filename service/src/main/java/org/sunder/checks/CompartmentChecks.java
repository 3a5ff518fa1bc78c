package org.sunder.checks;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.UnaryOperator;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.airframe.Display;
import org.sunder.airframe.EngineFaults;
import org.sunder.airframe.SheetTranslation;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.physics.cavity.CavitySegment;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.cavity.FreeVolume;
import org.sunder.engine.physics.packing.FitCheck;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;

/** What a compartment holds, over HTTP. */
@RestController
@RequestMapping("/api/checks")
@Tag(name = "Checks")
class CompartmentChecks {

    private static final Length NOTHING = new Length(BigDecimal.ZERO, LengthUnit.MILLIMETRE);

    private final Insertions insertions;

    CompartmentChecks(Insertions insertions) {
        this.insertions = insertions;
    }

    @PostMapping("/volume")
    @Operation(
            operationId = "checkVolume",
            summary = "The free gas volume of a compartment",
            description = "The empty cavity, what each item takes of it, and what is left for gas.")
    VolumeView volume(
            @Parameter(description = "Units of the answer.") @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestBody VolumeRequest body) {
        FreeVolume volume = EngineFaults.named(UnaryOperator.identity(), () -> {
            SheetTranslation sheets = new SheetTranslation();
            List<CavitySegment> cavity = sheets.cavity(body.cavity());
            List<Content> contents = sheets.contents(body.contents());
            sheets.throwIfAny();
            return FreeVolume.ofCompartment(cavity, contents);
        });
        return VolumeView.of(volume, new Display(units));
    }

    @PostMapping("/fit")
    @Operation(
            operationId = "checkFit",
            summary = "Whether things fit a compartment",
            description =
                    "Places everything at its envelope, hard things where they rest and soft things into the space"
                            + " they find, for every alternative; worst case first.")
    FitView fit(
            @Parameter(description = "Units of the answer.") @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestBody FitRequest body) {
        Length pushedIn = body.pushedIn() == null ? NOTHING : body.pushedIn();
        return EngineFaults.named(UnaryOperator.identity(), () -> {
            SheetTranslation sheets = new SheetTranslation();
            List<CavitySegment> cavity = sheets.cavity(body.cavity());
            sheets.throwIfAny();
            return FitView.of(
                    FitCheck.of(cavity, pushedIn, Alternative.loadOuts(body.loadOuts())),
                    body.loadOuts(),
                    new Display(units));
        });
    }

    @PostMapping("/insertion")
    @Operation(
            operationId = "checkInsertion",
            summary = "What pushing the bay in more or less does",
            description = "Free volume and handbook charge for several depths of a bay. With the compartment on the"
                    + " bay's other side, also how much farther it may go there instead, and what both joints then ask"
                    + " for.")
    InsertionView insertion(
            @Parameter(description = "Units of the answer.") @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestBody InsertionRequest body) {
        return insertions.answer(body, new Display(units));
    }
}
