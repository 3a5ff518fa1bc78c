package org.sunder.engine.physics.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.engine.physics.UnsoundSetupException;

/**
 * ISO 2533:1975 and U.S. Standard Atmosphere 1976; the geometric column agrees to every digit with an independent
 * implementation of the 1976 atmosphere.
 */
class StandardAtmosphereTest {

    @ParameterizedTest
    @CsvSource({
        "0, 288.150, 101325.00, 1.224999",
        "500, 284.900, 95460.84, 1.167268",
        "1000, 281.650, 89874.57, 1.111642",
        "1500, 278.400, 84556.00, 1.058067",
        "2000, 275.150, 79495.22, 1.006490",
        "3000, 268.650, 70108.54, 0.909121",
        "5000, 255.650, 54019.91, 0.736115",
        "8000, 236.150, 35599.81, 0.525167",
        "10000, 223.150, 26436.27, 0.412706",
        "11000, 216.650, 22632.06, 0.363918",
        "15000, 216.650, 12044.57, 0.193674",
        "20000, 216.650, 5474.89, 0.088035",
    })
    void geopotentialAltitudesHaveTheStandardsAir(double altitude, double t, double p, double rho) {
        check(StandardAtmosphere.atGeopotential(altitude), t, p, rho);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 288.1500, 101325.00, 1.224999",
        "500, 499.96, 284.9003, 95461.29, 1.167273",
        "1000, 999.84, 281.6510, 89876.29, 1.111659",
        "1500, 1499.65, 278.4023, 84559.68, 1.058104",
        "2000, 1999.37, 275.1541, 79501.43, 1.006553",
        "3000, 2998.58, 268.6592, 70121.16, 0.909254",
        "5000, 4996.07, 255.6755, 54048.29, 0.736428",
        "8000, 7989.94, 236.2154, 35651.63, 0.525786",
        "10000, 9984.29, 223.2521, 26499.90, 0.413510",
        "11000, 10981.00, 216.7735, 22699.96, 0.364802",
        "15000, 14964.69, 216.6500, 12111.83, 0.194755",
        "20000, 19937.27, 216.6500, 5529.31, 0.088910",
    })
    void geometricAltitudesHaveTheStandardsAir(double altitude, double geopotential, double t, double p, double rho) {
        assertThat(StandardAtmosphere.geopotential(altitude)).isCloseTo(geopotential, within(0.005));
        check(StandardAtmosphere.atGeometric(altitude), t, p, rho);
    }

    /** The layer table of the standard; 32 km' from memory of USSA 1976. */
    @ParameterizedTest
    @CsvSource({"11000, 22632.1, 216.65", "20000, 5474.89, 216.65", "32000, 868.02, 228.65"})
    void layersMeetTheTableOfTheStandard(double altitude, double p, double t) {
        Air air = StandardAtmosphere.atGeopotential(altitude);
        assertThat(air.pressure()).isCloseTo(p, within(1e-5 * p));
        assertThat(air.temperature()).isCloseTo(t, within(0.001));
    }

    @Test
    void layersJoinWithoutAStep() {
        for (double edge : new double[] {11_000, 20_000}) {
            double below = StandardAtmosphere.atGeopotential(edge - 1e-6).pressure();
            double above = StandardAtmosphere.atGeopotential(edge + 1e-6).pressure();
            assertThat(below).isCloseTo(above, within(1e-5));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1001, 32_001, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesAltitudesItDoesNotKnow(double altitude) {
        assertThatThrownBy(() -> StandardAtmosphere.atGeopotential(altitude)).isInstanceOf(UnsoundSetupException.class);
    }

    private static void check(Air air, double t, double p, double rho) {
        assertThat(air.temperature()).isCloseTo(t, within(0.001));
        assertThat(air.pressure()).isCloseTo(p, within(1e-5 * p));
        assertThat(air.density()).isCloseTo(rho, within(1e-5 * rho));
    }

    @Test
    void theDocumentedEndsAreAnsweredForByEitherAltitude() {
        for (double altitude : new double[] {-1000, 32_000}) {
            assertThat(StandardAtmosphere.atGeometric(altitude).pressure()).isPositive();
            assertThat(StandardAtmosphere.atGeopotential(altitude).pressure()).isPositive();
        }
    }
}
