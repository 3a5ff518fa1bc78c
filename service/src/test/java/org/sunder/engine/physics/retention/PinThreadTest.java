package org.sunder.engine.physics.retention;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Inch: R. G. Budynas and J. K. Nisbett, Shigley's Mechanical Engineering Design, Table 8-2 (after ANSI B1.1-1974). Metric:
 * stress areas of ISO 898-1 and GB/T 16823.1-1997. Areas "computed" come from the standards' formulas, outside the project.
 */
class PinThreadTest {

    private static final double SQUARE_INCH = 0.0254 * 0.0254;

    @ParameterizedTest
    @CsvSource({
        "#2-56, 0.00370, 0.000005, 0.003696, 0.00310, 0.000005, 0.003098, 0.0628",
        "#2-64, 0.00394, 0.000005, 0.003934, 0.00339, 0.000005, 0.003390, 0.0657",
        "#4-40, 0.00604, 0.000005, 0.006033, 0.00496, 0.000005, 0.004967, 0.0795",
        "#4-48, 0.00661, 0.000005, 0.006605, 0.00566, 0.000005, 0.005666, 0.0849",
        "#6-32, 0.00909, 0.000005, 0.009085, 0.00745, 0.000005, 0.007452, 0.0974",
        "#6-40, 0.01015, 0.000005, 0.010143, 0.00874, 0.000005, 0.008746, 0.1055",
        "#8-32, 0.0140, 0.00005, 0.014009, 0.01196, 0.000005, 0.011961, 0.1234",
        "#8-36, 0.01474, 0.000005, 0.014727, 0.01285, 0.000005, 0.012851, 0.1279",
        "#10-24, 0.0175, 0.00005, 0.017531, 0.01450, 0.000005, 0.014500, 0.1359",
        "#10-32, 0.0200, 0.00005, 0.019994, 0.0175, 0.00005, 0.017532, 0.1494",
        "1/4-20, 0.0318, 0.00005, 0.031821, 0.0269, 0.00005, 0.026894, 0.1850",
        "1/4-28, 0.0364, 0.00005, 0.036374, 0.0326, 0.00005, 0.032559, 0.2036",
    })
    void inchThreadsHaveTheirTabulatedAreas(
            String symbol,
            double at,
            double atHalf,
            double atCalc,
            double ar,
            double arHalf,
            double arCalc,
            double dr) {
        PinThread thread = PinThread.find(symbol).orElseThrow();
        double stress = thread.tensileStressArea() / SQUARE_INCH;
        double root = thread.rootArea() / SQUARE_INCH;
        assertThat(stress).isCloseTo(at, within(atHalf + 0.00001));
        assertThat(stress).isCloseTo(atCalc, within(1.5e-4 * atCalc));
        assertThat(root).isCloseTo(ar, within(arHalf + 0.00001));
        assertThat(root).isCloseTo(arCalc, within(1.5e-4 * arCalc));
        assertThat(thread.rootDiameter() / 0.0254).isCloseTo(dr, within(0.00005));
    }

    @ParameterizedTest
    @CsvSource({
        "M2, 2.07, 2.0732, 1.509, 1.7890",
        "M2.5, 3.39, 3.3908, 1.948, 2.9801",
        "M3, 5.03, 5.0308, 2.387, 4.4734",
        "M4, 8.78, 8.7787, 3.141, 7.7496",
        "M5, 14.18, 14.1825, 4.019, 12.6829",
    })
    void metricThreadsHaveTheirPublishedAreas(String symbol, double as, double asCalc, double d3, double rootArea) {
        PinThread thread = PinThread.find(symbol).orElseThrow();
        assertThat(thread.tensileStressArea() * 1e6).isCloseTo(as, within(3e-3 * as));
        assertThat(thread.tensileStressArea() * 1e6).isCloseTo(asCalc, within(1e-4 * asCalc));
        assertThat(thread.rootDiameter() * 1e3).isCloseTo(d3, within(0.0006));
        assertThat(thread.rootArea() * 1e6).isCloseTo(rootArea, within(1e-4 * rootArea));
    }

    @Test
    void everyThreadIsFoundByItsSymbol() {
        assertThat(PinThread.all())
                .hasSize(17)
                .allSatisfy(t -> assertThat(PinThread.find(t.toString())).contains(t));
        assertThat(PinThread.find("M6")).isEmpty();
    }
}
