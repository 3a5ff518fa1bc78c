package org.sunder.advice.web;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.sunder.advice.Estimate;
import org.sunder.airframe.Display;
import org.sunder.engine.physics.JointPhysics;
import org.sunder.engine.physics.LogUncertainty;
import org.sunder.engine.quantity.Mass;

/** From what was computed to what is answered. */
final class AdviceViews {

    private static final MathContext DIGITS = new MathContext(3);

    private AdviceViews() {}

    static EstimateView estimate(Estimate estimate, Display display) {
        JointPhysics physics = estimate.physics();
        Mass measure = estimate.measure();
        List<EstimateView.Share> contents = physics.volume().contents().stream()
                .map(share -> new EstimateView.Share(share.name(), display.volume(share.volume())))
                .toList();
        return new EstimateView(
                display.volume(physics.volume().cavity()),
                contents,
                display.volume(physics.freeVolume()),
                display.area(physics.area()),
                display.force(physics.retention().mean()),
                display.force(physics.retention().pins()),
                display.pressure(physics.thresholdPressure()),
                Display.charge(physics.handbookCharge(), measure),
                uncertainty(physics.uncertainty()),
                CorrectionView.of(estimate.correction()),
                Display.charge(estimate.medianCharge(), measure),
                Display.charge(estimate.targetCharge(), measure),
                BigDecimal.valueOf(estimate.target()),
                estimate.separationSpeed().map(display::speed).orElse(null),
                CeilingView.of(physics.ceiling(), measure),
                physics.warnings(),
                CautionView.all(),
                estimate.basis());
    }

    private static EstimateView.Uncertainty uncertainty(LogUncertainty u) {
        return new EstimateView.Uncertainty(
                digits(u.pins()), digits(u.fit()), digits(u.volume()), digits(u.powder()), digits(u.total()));
    }

    private static BigDecimal digits(double value) {
        return BigDecimal.valueOf(value).round(DIGITS);
    }
}
