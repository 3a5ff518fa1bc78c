package org.sunder.airframe;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.engine.quantity.Volume;
import org.sunder.engine.quantity.VolumeUnit;

/** Values as people read them: no digit that nobody can measure, and no limit rounded up. */
class DisplayTest {

    private final Mass measure = grams("0.05");

    private static Mass grams(String value) {
        return new Mass(new BigDecimal(value), MassUnit.GRAM);
    }

    @Test
    void aLengthGoesToAMillimetreOrASixteenthOfAnInch() {
        Display metric = new Display(UnitSystem.METRIC);
        Display us = new Display(UnitSystem.US);
        assertThat(metric.depth(0.1404)).isEqualTo("140 mm");
        // By hand: 140 mm are 5.512 in, 88.19 sixteenths; 12.7 mm are half an inch; 1 mm is 0.63 of a sixteenth.
        assertThat(us.depth(0.140)).isEqualTo("5 1/2 in");
        assertThat(us.depth(0.0127)).isEqualTo("1/2 in");
        assertThat(us.depth(0.001)).isEqualTo("1/16 in");
        assertThat(us.depth(0.0508)).isEqualTo("2 in");
        assertThat(us.depth(0)).isEqualTo("0 in");
    }

    @Test
    void aChargeHasTheDigitsOfItsMeasureAndALimitIsNeverRoundedUp() {
        assertThat(Display.words(Display.near(0.000_656, measure))).isEqualTo("0.66 g");
        assertThat(Display.words(Display.never(0.002_089, measure))).isEqualTo("2.08 g");
        assertThat(Display.words(Display.never(grams("2.010"), measure))).isEqualTo("2.01 g");
        assertThat(Display.words(Display.loaded(grams("0.8"), measure))).isEqualTo("0.80 g");
        assertThat(Display.words(Display.loaded(grams("0.853"), measure))).isEqualTo("0.853 g");
    }

    @Test
    void whatIsComputedHasThreeDigitsAndWhatARuleGivesTwo() {
        Volume volume = new Volume(new BigDecimal("1234.5"), VolumeUnit.CUBIC_INCH);
        assertThat(Display.brief(volume)).isEqualTo("1230 in³");
        assertThat(Display.rough(new Volume(new BigDecimal("4.263"), VolumeUnit.LITRE)))
                .isEqualTo("4.3 L");
    }
}
