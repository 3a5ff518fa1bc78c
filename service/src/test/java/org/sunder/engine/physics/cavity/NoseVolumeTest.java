package org.sunder.engine.physics.cavity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.sunder.engine.quantity.Length;

/**
 * Volumes of noses of base radius 1, computed outside the project in closed form and by adaptive quadrature (profiles of G. A.
 * Crowell Sr., The Descriptive Geometry of Nose Cones, 1996; cone, ellipsoid and paraboloid from any handbook).
 */
class NoseVolumeTest {

    static Stream<Arguments> volumes() {
        return Stream.of(
                Arguments.of(new Cone(), 3.1415926536, 5.2359877560),
                Arguments.of(new TangentOgive(), 5.1832795407, 8.4726950034),
                Arguments.of(new Ellipsoid(), 6.2831853072, 10.4719755120),
                Arguments.of(new Paraboloid(), 4.7123889804, 7.8539816340),
                Arguments.of(HaackSeries.VON_KARMAN, 4.7123889804, 7.8539816340),
                Arguments.of(HaackSeries.LENGTH_VOLUME, 5.3014376029, 8.8357293382),
                Arguments.of(new HaackSeries(2.0 / 3), 5.8904862255, 9.8174770425),
                Arguments.of(new ParabolicSeries(0.5), 3.7000980142, 6.1668300237),
                Arguments.of(new ParabolicSeries(0.75), 4.1971677852, 6.9952796420),
                Arguments.of(new ParabolicSeries(1), 5.0265482457, 8.3775804096),
                Arguments.of(new PowerSeries(0.25), 6.2831853072, 10.4719755120),
                Arguments.of(new PowerSeries(1.0 / 3), 5.6548667765, 9.4247779608),
                Arguments.of(new PowerSeries(0.6), 4.2839899822, 7.1399833036),
                Arguments.of(new PowerSeries(0.75), 3.7699111843, 6.2831853072));
    }

    @ParameterizedTest
    @MethodSource("volumes")
    void wholeNosesHaveTheVolumeOfTheirClosedForm(NoseProfile profile, double three, double five) {
        assertThat(profile.volumeTo(3, 1, 3)).isCloseTo(three, within(1e-9 * three));
        assertThat(profile.volumeTo(5, 1, 5)).isCloseTo(five, within(1e-9 * five));
    }

    static Stream<Arguments> secants() {
        return Stream.of(
                Arguments.of(0.75, 6.1026932899, 9.8405527226),
                Arguments.of(1.5, 4.4037955473, 7.2601034391),
                Arguments.of(2.0, 4.0554495170, 6.7064022002),
                Arguments.of(4.0, 3.5760179527, 5.9366997592));
    }

    @ParameterizedTest
    @MethodSource("secants")
    void secantOgivesHaveTheVolumeOfTheirClosedForm(double ofTangent, double three, double five) {
        assertThat(secant(5 * ofTangent).volumeTo(3, 1, 3)).isCloseTo(three, within(1e-9 * three));
        assertThat(secant(13 * ofTangent).volumeTo(5, 1, 5)).isCloseTo(five, within(1e-9 * five));
    }

    @Test
    void aSecantOgiveWithTheTangentRadiusIsTheTangentOgive() {
        for (double x : new double[] {0.3, 1.7, 3, 5}) {
            double tangent = new TangentOgive().volumeTo(x, 1, 5);
            assertThat(secant(13).volumeTo(x, 1, 5)).isCloseTo(tangent, within(1e-9 * tangent));
            assertThat(secant(13).radius(x, 1, 5)).isCloseTo(new TangentOgive().radius(x, 1, 5), within(1e-12));
        }
    }

    @Test
    void aSecantOgiveOfEndlessRadiusIsACone() {
        assertThat(secant(1e9).volumeTo(5, 1, 5)).isCloseTo(5 * Math.PI / 3, within(1e-7));
    }

    @Test
    void vonKarmanIsNotTheParaboloidOfTheSameVolume() {
        assertThat(HaackSeries.VON_KARMAN.radius(1, 1, 5)).isLessThan(new Paraboloid().radius(1, 1, 5) - 0.02);
    }

    static Stream<NoseProfile> profiles() {
        return Stream.concat(
                volumes().map(a -> (NoseProfile) a.get()[0]),
                Stream.of(secant(9), secant(20), secant(60), secant(900)));
    }

    @ParameterizedTest
    @MethodSource("profiles")
    void anyPartOfANoseHasTheVolumeOfItsOwnQuadrature(NoseProfile profile) {
        var legendre = new GaussIntegratorFactory().legendre(60);
        double[][] parts = {{0.5, 2}, {1.3, 4.9}, {3, 5}, {0.02, 0.4}};
        for (double[] part : parts) {
            double half = (part[1] - part[0]) / 2;
            double middle = (part[1] + part[0]) / 2;
            double byQuadrature = half
                    * Math.PI
                    * legendre.integrate(t -> {
                        double y = profile.radius(middle + half * t, 1, 5);
                        return y * y;
                    });
            double closed = profile.volumeTo(part[1], 1, 5) - profile.volumeTo(part[0], 1, 5);
            assertThat(closed).isCloseTo(byQuadrature, within(3e-7 * byQuadrature + 1e-12));
        }
    }

    @ParameterizedTest
    @MethodSource("profiles")
    void everyNoseStartsAtItsTipAndMeetsItsBase(NoseProfile profile) {
        assertThat(profile.findFlaw(1, 5)).isEmpty();
        assertThat(profile.radius(0, 1, 5)).isZero();
        assertThat(profile.radius(5, 1, 5)).isCloseTo(1, within(1e-9));
        assertThat(profile.volumeTo(0, 1, 5)).isZero();
    }

    private static SecantOgive secant(double radius) {
        return new SecantOgive(Length.ofMetres(radius));
    }
}
