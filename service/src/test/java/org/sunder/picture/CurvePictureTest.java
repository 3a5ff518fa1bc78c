package org.sunder.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.Thorough;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.picture.ChargeRuler.Band;
import org.sunder.picture.ChargeRuler.Firing;
import org.w3c.dom.Element;

/** The curve in the hand of the ruler. */
class CurvePictureTest {

    @Test
    void theLikelyRegionStandsBetweenItsChargesFromTopToStrip() {
        Drawn drawn = drawn(ruler("2.00"), 0.4, 1.4);
        Element band = drawn.one("band");
        Element strip = drawn.one("strip");
        // 320 wide: 54 at the left for the chances, 20 at the right, so 246 px for 1 g.
        assertThat(Drawn.number(band, "x")).isCloseTo(54 + 246 * 0.1, within(0.06));
        assertThat(Drawn.number(band, "width")).isCloseTo(246 * 0.7, within(0.06));
        assertThat(Drawn.number(band, "y") + Drawn.number(band, "height"))
                .isCloseTo(Drawn.number(strip, "y") + Drawn.number(strip, "height"), within(0.11));
    }

    @Test
    void everyFiringHasTheMarkOfTheRuler() {
        Drawn drawn = drawn(ruler("2.00", fired("0.80", false), fired("0.80", true), fired("1.20", false)), 0.4, 1.4);
        assertThat(drawn.all("mark")).hasSize(3);
        assertThat(drawn.all("void")).hasSize(1);
        assertThat(drawn.all("drop"))
                .as("those at one charge stand on each other")
                .isEmpty();
        assertThat(drawn.description()).endsWith("Fired: 3, of these separated: 3.");
    }

    @Test
    void theWallStandsWhereTheCeilingIsAndIsNamedWhereItIsNotShown() {
        Drawn shown = drawn(ruler("1.20"), 0.4, 1.4);
        assertThat(Drawn.number(shown.one("wall"), "x")).isCloseTo(54 + 246 * 0.8 + 1, within(0.06));
        Drawn far = drawn(ruler("2.00"), 0.4, 1.4);
        assertThat(far.all("wall")).isEmpty();
        assertThat(far.texts().stream().map(Drawn.Box::words)).contains("never above 2.00 g →", "handbook 0.60 g");
    }

    /** Widths of a phone, a column and a desk. */
    @ParameterizedTest
    @ValueSource(ints = {248, 320, 480, 720})
    void nothingTouchesAndNothingIsCutOff(int width) {
        for (int seed = 0; seed < Thorough.count(40, 400); seed++) {
            ChargeRuler ruler = ChargeRulerPictureTest.some(new Random(seed));
            double[] all = DoubleStream.concat(
                            ruler.firings().stream().mapToDouble(firing -> ruler.inUnit(firing.charge())),
                            DoubleStream.of(ruler.inUnit(ruler.handbook())))
                    .toArray();
            double low = DoubleStream.of(all).min().orElseThrow() / 1.3;
            double high = DoubleStream.of(all).max().orElseThrow() * 1.4;
            Drawn drawn = Drawn.of(CurvePicture.of(ruler, points(low, high), width));
            drawn.isLegible();
            List<Drawn.Box> marks = new ArrayList<>();
            for (Element base : drawn.all("base")) {
                Drawn.Box line = Drawn.bounds(base);
                Drawn.Box mark = new Drawn.Box("mark", line.left(), line.bottom() - 14, line.right(), line.bottom());
                assertThat(mark.left()).as("seed " + seed).isGreaterThanOrEqualTo(0);
                assertThat(mark.right()).as("seed " + seed).isLessThanOrEqualTo(width);
                assertThat(marks).as("seed " + seed).noneMatch(mark::touches);
                assertThat(drawn.texts()).as("seed " + seed).noneMatch(mark::touches);
                marks.add(mark);
            }
        }
    }

    @Test
    void theCurveRisesFromLeftToRight() {
        String path = drawn(ruler("2.00"), 0.4, 1.4).all("line").get(0).getAttribute("d");
        List<Double> heights = List.of(path.substring(1).split("L", -1)).stream()
                .map(point -> Double.parseDouble(point.split(" ", -1)[1]))
                .toList();
        assertThat(heights).hasSize(49).isSortedAccordingTo(Comparator.reverseOrder());
    }

    private static Drawn drawn(ChargeRuler ruler, double low, double high) {
        return Drawn.of(CurvePicture.of(ruler, points(low, high), 320));
    }

    private static List<CurvePicture.Point> points(double low, double high) {
        return IntStream.rangeClosed(0, 48)
                .mapToObj(i -> new CurvePicture.Point(
                        low + (high - low) * i / 48,
                        i / 48.0,
                        Math.max(0, i / 48.0 - 0.1),
                        Math.min(1, i / 48.0 + 0.1)))
                .toList();
    }

    private static ChargeRuler ruler(String ceiling, Firing... firings) {
        Band band = new Band(g("0.50"), g("0.80"), g("1.20"));
        return new ChargeRuler(
                "some joint", List.of(firings), band, null, null, null, g("0.60"), g(ceiling), g("0.05"));
    }

    private static Firing fired(String charge, boolean voided) {
        return new Firing(g(charge), g(charge), new OutcomeMark(Outcome.SEPARATED, voided, false, false));
    }

    private static Mass g(String value) {
        return new Mass(new BigDecimal(value), MassUnit.GRAM);
    }
}
