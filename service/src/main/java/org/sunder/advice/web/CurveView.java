package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.sunder.advice.Basis;
import org.sunder.advice.Curve;
import org.sunder.advice.Curves;
import org.sunder.airframe.CeilingView;
import org.sunder.airframe.Display;
import org.sunder.caution.CautionView;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.GroundTest;
import org.sunder.groundtest.Occasion;
import org.sunder.groundtest.ProbabilityView;

/** Chance of separating against charge. */
@Schema(name = "Curve", description = "The chance of separating against the charge, in the setup in force.")
record CurveView(
        @Schema(example = "Bittern") String airframe,
        @Schema(example = "nose to bay") String joint,

        @Schema(description = "Along the charge, smallest first. These are estimates, not charges to fire or fly.")
        List<PointView> points,

        @Schema(description = "What the band from low to high holds.", example = "0.9")
        BigDecimal interval,

        @Schema(description = "Every firing in the order fired, void ones too.")
        List<MarkView> tests,

        @Schema(description = "What the textbook formula asks for.")
        Mass handbookCharge,

        CeilingView ceiling,
        List<CautionView> cautions,
        Basis basis) {

    /** A point of the curve. */
    @Schema(name = "CurvePoint", description = "The chance of separating at one charge.")
    record PointView(
            Mass charge,

            @Schema(description = "Chance that the next firing at this charge separates.", example = "0.5749")
            BigDecimal separated,

            @Schema(description = "This joint's own chance, lower end of the interval.", example = "0.02")
            BigDecimal low,

            @Schema(description = "This joint's own chance, upper end of the interval.", example = "0.99")
            BigDecimal high) {}

    /** A firing along the curve. */
    @Schema(name = "CurveMark", description = "A firing along the curve.")
    record MarkView(
            UUID id,
            Occasion occasion,

            @Schema(description = "As loaded.") Mass charge,

            @Schema(
                    description = "The charge of the same ratio to the handbook charge in the setup in force; differs"
                            + " from charge where the setup has changed since.")
            Mass comparable,

            Outcome outcome,
            @Schema(example = "false") boolean damaged,

            @Schema(description = "Whether it is in the fit; false while it is void.", example = "true")
            boolean counted,

            @Schema(example = "1") int setupRevision,
            OffsetDateTime firedAt) {}

    static CurveView of(Curve curve) {
        Mass measure = curve.measure();
        return new CurveView(
                curve.airframe(),
                curve.joint(),
                curve.points().stream().map(point -> point(point, measure)).toList(),
                BigDecimal.valueOf(Curves.INTERVAL),
                curve.marks().stream().map(mark -> mark(mark, measure)).toList(),
                Display.charge(curve.handbookCharge(), measure),
                CeilingView.of(curve.ceiling(), measure),
                CautionView.all(),
                curve.basis());
    }

    private static PointView point(Curve.Point point, Mass measure) {
        return new PointView(
                Display.charge(point.charge(), measure),
                ProbabilityView.rounded(point.separated()),
                ProbabilityView.rounded(point.low()),
                ProbabilityView.rounded(point.high()));
    }

    private static MarkView mark(Curve.Mark mark, Mass measure) {
        GroundTest test = mark.test();
        return new MarkView(
                test.id(),
                test.occasion(),
                test.report().charge(),
                Display.charge(mark.charge(), measure),
                test.report().outcome(),
                test.report().damaged(),
                test.counted(),
                test.setupRevision(),
                test.report().firedAt());
    }
}
