package org.sunder.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A linear axis from values to coordinates.
 *
 * @param low value at the start
 * @param high value at the end, above {@code low}
 * @param start coordinate of {@code low}
 * @param end coordinate of {@code high}
 */
public record Axis(double low, double high, double start, double end) {

    private static final List<String> STEPS = List.of("1", "2", "5");

    /** Coordinate of a value. */
    public double at(double value) {
        return start + (value - low) / (high - low) * (end - start);
    }

    /** Coordinate of a value, kept between the ends. */
    public double within(double value) {
        return at(Math.min(high, Math.max(low, value)));
    }

    /**
     * Round values along the axis, with as many decimals as they need.
     *
     * @param most how many at most
     */
    public List<BigDecimal> ticks(int most) {
        BigDecimal step = step(most);
        BigDecimal tick =
                BigDecimal.valueOf(low).divide(step, 0, RoundingMode.CEILING).multiply(step);
        List<BigDecimal> ticks = new ArrayList<>();
        while (tick.doubleValue() <= high) {
            ticks.add(tick);
            tick = tick.add(step);
        }
        return ticks;
    }

    private BigDecimal step(int most) {
        double least = (high - low) / most;
        int power = (int) Math.floor(Math.log10(least));
        for (String digit : STEPS) {
            BigDecimal step = new BigDecimal(digit).scaleByPowerOfTen(power);
            if (step.doubleValue() >= least) {
                return step.scale() < 0 ? step.setScale(0) : step;
            }
        }
        BigDecimal step = BigDecimal.ONE.scaleByPowerOfTen(power + 1);
        return step.scale() < 0 ? step.setScale(0) : step;
    }
}
