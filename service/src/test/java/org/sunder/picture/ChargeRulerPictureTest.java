package org.sunder.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.Thorough;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.picture.ChargeRuler.Band;
import org.sunder.picture.ChargeRuler.Firing;
import org.sunder.picture.ChargeRulerPicture.Size;
import org.w3c.dom.Element;

/** The charge ruler: where things stand, worked by hand, and what holds at any width. */
class ChargeRulerPictureTest {

    private static final List<Outcome> OUTCOMES = List.of(Outcome.NONE, Outcome.PARTIAL, Outcome.SEPARATED);
    private static final Band BAND = new Band(g("0.50"), g("0.80"), g("1.60"));

    @Test
    void aScaleRunsFromNothingToTheWall() {
        // 320 wide: 10 free at either end, the wall 14 thick, so 286 px for 2 g; 1.6 g leaves the ceiling near.
        RulerScale scale = RulerScale.of(ruler("2.00", null, fired("1.00")), 0, 10, 310);
        assertThat(scale.broken()).isFalse();
        assertThat(scale.wall()).isEqualTo(296);
        assertThat(scale.at(1.0)).isEqualTo(10 + 143);
    }

    @Test
    void itBreaksWhereTheCeilingLiesFarAbove() {
        // The largest charge of interest is 1.60 g; with 6 % of room and in whole steps 1.70 g. 4 g is more than 1.3
        // times that.
        RulerScale scale = RulerScale.of(ruler("4.00", null, fired("1.00")), 0, 10, 310);
        assertThat(scale.broken()).isTrue();
        assertThat(scale.axis().high()).isCloseTo(1.70, within(1e-9));
        assertThat(scale.axis().end()).isEqualTo(310 - 14 - 34);
        assertThat(scale.at(1.0)).isCloseTo(10 + 252 / 1.7, within(1e-9));
        assertThat(scale.wall()).isEqualTo(296);
        Drawn drawn = drawn(ruler("4.00", null, fired("1.00")), 320, Size.SMALL);
        assertThat(drawn.all("tear")).hasSize(2);
        assertThat(drawn.description()).contains("shortened");
        assertThat(drawn(ruler("2.00", null), 320, Size.SMALL).all("tear")).isEmpty();
    }

    /** A page of ten rockets holds some eighty of them; an eightieth of the half megabyte that a phone gets in a moment. */
    @Test
    void itIsLightHoweverFineItsTicks() {
        assertThat(ChargeRulerPicture.of(ruler("4.00", null, fired("1.00"), fired("1.40")), 720, Size.SMALL))
                .hasSizeLessThan(6500);
    }

    @Test
    void whatWasFiredAboveTheCeilingStandsBehindTheWall() {
        ChargeRuler ruler = ruler("2.00", null, fired("2.60"));
        RulerScale scale = RulerScale.of(ruler, 0, 10, 310);
        assertThat(scale.wall()).isCloseTo(10 + 300 * 2 / (2.6 * 1.06), within(1e-9));
        assertThat(scale.at(2.6)).isGreaterThan(scale.wall() + RulerScale.WALL);
        assertThat(drawn(ruler, 320, Size.SMALL).all("off")).hasSize(1);
    }

    /** Setups side by side: the same charge stands at the same place on each, whatever its ceiling. */
    @Test
    void onASharedScaleAChargeStandsAtOnePlace() {
        List<ChargeRuler> rulers = List.of(
                ruler("2.00", null, fired("1.00")),
                ruler("2.80", null, fired("1.00")),
                ruler("9.00", null, fired("1.00")));
        double shown = RulerScale.shared(rulers, MassUnit.GRAM);
        // The largest of interest is 1.60 g, a ceiling up to 1.6 times that is near: of 2, 2.80 and 9 g the first
        // alone.
        assertThat(shown).isEqualTo(2.0);
        List<RulerScale> scales = rulers.stream()
                .map(ruler -> RulerScale.of(ruler, shown, 10, 310))
                .toList();
        assertThat(scales).allSatisfy(scale -> {
            assertThat(scale.axis()).isEqualTo(new Axis(0, 2, 10, 310 - 14 - 34));
            assertThat(scale.at(1.0)).isEqualTo(10 + 126);
        });
        assertThat(scales.get(0).wall()).isEqualTo(262);
        assertThat(scales.get(0).broken()).isFalse();
        assertThat(scales.get(1).wall()).isEqualTo(296);
        assertThat(scales).element(1).extracting(RulerScale::broken).isEqualTo(true);
        assertThat(scales.get(2).broken()).isTrue();
    }

    @Test
    void aSharedScaleGoesOnBehindALowerCeiling() {
        RulerScale scale = RulerScale.of(ruler("2.00", null), 3.0, 10, 310);
        assertThat(scale.wall()).isCloseTo(10 + 252 * 2.0 / 3, within(1e-9));
        assertThat(scale.goesOnAboveTheWall()).isTrue();
    }

    @Test
    void ticksStandInStepsOfTheMeasure() {
        // 286 px for 2 g are 7.15 px a step of 0.05 g: all are drawn. "2.0" takes 13 · (2 · 0.64 + 0.36) = 21.3 px and
        // 16 of
        // room, so labels stand every 10 steps; every 5 would do only if they were 35.75 px or less with two decimals.
        List<RulerScale.Tick> ticks =
                RulerScale.of(ruler("2.00", null), 0, 10, 310).ticks(new BigDecimal("0.05"), 13);
        assertThat(ticks).hasSize(41);
        assertThat(ticks.stream().map(RulerScale.Tick::label).filter(label -> !label.isEmpty()))
                .containsExactly("0", "0.5", "1.0", "1.5", "2.0");
        assertThat(ticks.get(20).x()).isCloseTo(153, within(1e-9));
        assertThat(ticks.get(5).rank()).isEqualTo(1);
        assertThat(ticks.get(1).rank()).isZero();
    }

    @Test
    void aFineMeasureIsThinned() {
        List<RulerScale.Tick> ticks =
                RulerScale.of(ruler("2.00", null), 0, 10, 310).ticks(new BigDecimal("0.001"), 13);
        // 0.143 px a step: 50 steps are the first of 1, 2, 5, 10, … that are 4.5 px or more.
        assertThat(ticks.get(1).x() - ticks.get(0).x()).isCloseTo(7.15, within(1e-9));
    }

    @Test
    void marksThatWouldTouchRise() {
        Drawn drawn =
                drawn(ruler("2.00", null, fired("1.00"), fired("1.00"), fired("1.05"), fired("0.40")), 320, Size.SMALL);
        List<Double> bases = drawn.all("base").stream()
                .map(base -> Drawn.bounds(base).bottom())
                .toList();
        // A mark is 32 by 16 with 3 between lanes: 19 px up each time. 0.40 g has room on the ground.
        assertThat(bases.get(0) - bases.get(1)).isCloseTo(19, within(0.02));
        assertThat(bases.get(1) - bases.get(2)).isCloseTo(19, within(0.02));
        assertThat(bases.get(3)).isEqualTo(bases.get(0));
        assertThat(drawn.all("count")).isEmpty();
    }

    @Test
    void firingsAllAlikeAreCountedBeforeTheyTower() {
        Firing[] many = Collections.nCopies(14, fired("1.20")).toArray(Firing[]::new);
        Drawn drawn = drawn(ruler("2.00", null, many), 320, Size.SMALL);
        assertThat(drawn.all("mark")).hasSize(1);
        assertThat(drawn.one("count").getTextContent()).isEqualTo("×14");
        assertThat(drawn.description()).contains("14 times 1.20 g separated");
    }

    @Test
    void everyKindOfMarkHasItsOwnShape() {
        Set<String> shapes = new HashSet<>();
        int kinds = 0;
        for (Outcome outcome : Outcome.values()) {
            for (int i = 0; i < 8; i++) {
                OutcomeMark mark = new OutcomeMark(outcome, (i & 1) > 0, (i & 2) > 0, (i & 4) > 0);
                Svg svg = new Svg(40, 20, "", "");
                mark.draw(svg, 20, 18, 40, "");
                shapes.add(svg.end().replaceAll("class=\"[^\"]*\"", ""));
                kinds++;
            }
        }
        assertThat(shapes).hasSize(kinds);
    }

    @Test
    void theBandStandsBetweenItsCharges() {
        Drawn drawn = drawn(ruler("2.00", null), 320, Size.SMALL);
        Element band = drawn.one("band");
        assertThat(Drawn.number(band, "x")).isCloseTo(10 + 143 * 0.5, within(0.06));
        assertThat(Drawn.number(band, "width")).isCloseTo(143 * 1.1, within(0.06));
        assertThat(Drawn.number(drawn.one("middle"), "x1")).isCloseTo(10 + 143 * 0.8, within(0.06));
    }

    @Test
    void thePointerStandsOnTheNextChargeAboveTheMarks() {
        Drawn free = drawn(ruler("2.00", g("1.20"), fired("0.60")), 320, Size.SMALL);
        Drawn over = drawn(ruler("2.00", g("1.20"), fired("1.20")), 320, Size.SMALL);
        var tip = Drawn.bounds(free.one("tip"));
        assertThat((tip.left() + tip.right()) / 2).isCloseTo(10 + 143 * 1.2, within(0.06));
        double lip = Drawn.number(free.one("lip"), "y1");
        assertThat(lip - tip.bottom()).isBetween(0.0, 2.0);
        assertThat(Drawn.bounds(over.one("tip")).bottom()).isLessThan(Drawn.number(over.one("lip"), "y1") - 16);
    }

    @Test
    void flagsStandOnTheirCharges() {
        Drawn drawn = drawn(done(), 640, Size.LARGE);
        List<Double> poles =
                drawn.all("pole").stream().map(pole -> Drawn.number(pole, "x1")).toList();
        assertThat(poles.get(0)).isCloseTo(10 + 606 * 1.2 / 2.081, within(0.1));
        assertThat(poles.get(1)).isCloseTo(10 + 606 * 1.5 / 2.081, within(0.1));
        assertThat(Drawn.number(drawn.all("handbook").get(0), "x1")).isCloseTo(10 + 606 * 0.664 / 2.081, within(0.1));
    }

    @Test
    void itSaysInWordsWhatItShows() {
        Drawn drawn = drawn(done(), 640, Size.LARGE);
        assertThat(drawn.title()).isEqualTo("Charge ruler, Bittern, nose to bay");
        assertThat(drawn.description())
                .isEqualTo("A scale from 0. Fired: 0.80 g partial; 1.20 g flight, separated; 0.70 g none, void; 1.10 g"
                        + " separated, in an earlier setup, drawn at 0.74 g, which would do the same now. Likely to part"
                        + " between 0.58 and 0.98 g (5 to 95 %), as likely as not at 0.80 g. Flight charge 1.20 g. Backup 1.50 g."
                        + " Handbook charge 0.66 g. Never above 2.08 g.");
        assertThat(drawn.picture().getDocumentElement().getAttribute("aria-label"))
                .isEqualTo(drawn.title() + ". " + drawn.description());
    }

    @Test
    void theCeilingIsNeverRoundedUp() {
        assertThat(drawn(ruler("2.0899", null), 640, Size.LARGE).description()).endsWith("Never above 2.08 g.");
    }

    @Test
    void aNameIsOnlyText() {
        String name = "</title><script>alert('&\"')</script>";
        ChargeRuler ruler = new ChargeRuler(name, List.of(), BAND, null, null, null, g("0.60"), g("2.00"), g("0.05"));
        Drawn drawn = drawn(ruler, 320, Size.SMALL);
        assertThat(drawn.title()).isEqualTo("Charge ruler, " + name);
        assertThat(drawn.picture().getElementsByTagName("script").getLength()).isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {240, 320, 360, 640, 960, 1440})
    void nothingTouchesAndNothingIsCutOff(int width) {
        Random random = new Random(width);
        for (int i = 0; i < Thorough.count(60, 400); i++) {
            for (Size size : Size.values()) {
                ChargeRuler ruler = some(random);
                Drawn drawn = drawn(ruler, width, size);
                try {
                    drawn.isLegible();
                    marksStandFree(drawn);
                } catch (AssertionError e) {
                    throw new AssertionError(ruler + " at " + width + " " + size, e);
                }
            }
        }
    }

    private static void marksStandFree(Drawn drawn) {
        List<Drawn.Box> boxes = new ArrayList<>();
        for (Element mark : drawn.all("mark")) {
            Element base = (Element) mark.getElementsByTagName("path").item(2);
            Drawn.Box line = Drawn.bounds(base);
            Drawn.Box box = new Drawn.Box("mark", line.left(), line.bottom() - 10, line.right(), line.bottom());
            assertThat(line.left()).isGreaterThanOrEqualTo(0);
            assertThat(line.right()).isLessThanOrEqualTo(drawn.width());
            assertThat(boxes).noneMatch(box::touches);
            assertThat(drawn.texts()).noneMatch(box::touches);
            boxes.add(box);
        }
        for (Element plate : drawn.all("plate")) {
            Drawn.Box box = plate.getTagName().equals("rect")
                    ? new Drawn.Box(
                            "plate",
                            Drawn.number(plate, "x"),
                            Drawn.number(plate, "y"),
                            Drawn.number(plate, "x") + Drawn.number(plate, "width"),
                            Drawn.number(plate, "y") + Drawn.number(plate, "height"))
                    : Drawn.bounds(plate);
            assertThat(boxes).noneMatch(box::touches);
            boxes.add(box);
        }
    }

    static ChargeRuler some(Random random) {
        boolean grains = random.nextInt(4) == 0;
        MassUnit unit = grains ? MassUnit.GRAIN : MassUnit.GRAM;
        String[] measures = grains ? new String[] {"0.5", "1"} : new String[] {"0.05", "0.1", "0.01", "0.03", "0.001"};
        BigDecimal measure = new BigDecimal(measures[random.nextInt(measures.length)]);
        double typical = (grains ? 15 : 1) * Math.exp(random.nextGaussian());
        List<Firing> firings = new ArrayList<>();
        for (int i = random.nextInt(12); i > 0; i--) {
            Mass charge = mass(typical * (0.5 + 1.5 * random.nextDouble()), measure, unit);
            firings.add(new Firing(
                    charge,
                    charge,
                    new OutcomeMark(
                            OUTCOMES.get(random.nextInt(OUTCOMES.size())),
                            random.nextBoolean(),
                            random.nextBoolean(),
                            random.nextBoolean())));
        }
        boolean flown = random.nextBoolean();
        return new ChargeRuler(
                "some joint",
                firings,
                new Band(
                        mass(0.8 * typical, measure, unit),
                        mass(typical, measure, unit),
                        mass(typical * (1.1 + random.nextDouble()), measure, unit)),
                random.nextInt(3) > 0 ? mass(typical * (0.8 + 0.6 * random.nextDouble()), measure, unit) : null,
                flown ? mass(1.2 * typical, measure, unit) : null,
                flown ? mass(typical * (1.2 + 0.4 * random.nextDouble()), measure, unit) : null,
                mass(typical * (0.6 + 0.6 * random.nextDouble()), measure, unit),
                mass(typical * (1.1 + 4 * random.nextDouble()), measure, unit),
                new Mass(measure, unit));
    }

    private static Mass mass(double value, BigDecimal measure, MassUnit unit) {
        return new Mass(BigDecimal.valueOf(value).setScale(measure.scale() + 1, RoundingMode.HALF_EVEN), unit);
    }

    private static ChargeRuler done() {
        return new ChargeRuler(
                "Bittern, nose to bay",
                List.of(
                        firing("0.80", "0.80", new OutcomeMark(Outcome.PARTIAL, false, false, false)),
                        firing("1.20", "1.20", new OutcomeMark(Outcome.SEPARATED, false, true, false)),
                        firing("0.70", "0.70", new OutcomeMark(Outcome.NONE, true, false, false)),
                        firing("1.10", "0.742", new OutcomeMark(Outcome.SEPARATED, false, false, true))),
                new Band(g("0.584"), g("0.801"), g("0.982")),
                null,
                g("1.20"),
                g("1.50"),
                g("0.664"),
                g("2.081"),
                g("0.05"));
    }

    private static ChargeRuler ruler(String ceiling, @Nullable Mass next, Firing... firings) {
        return new ChargeRuler(
                "some joint", List.of(firings), BAND, next, null, null, g("0.60"), g(ceiling), g("0.05"));
    }

    private static Firing fired(String charge) {
        return firing(charge, charge, new OutcomeMark(Outcome.SEPARATED, false, false, false));
    }

    private static Firing firing(String loaded, String charge, OutcomeMark mark) {
        return new Firing(g(loaded), g(charge), mark);
    }

    private static Mass g(String value) {
        return new Mass(new BigDecimal(value), MassUnit.GRAM);
    }

    private static Drawn drawn(ChargeRuler ruler, int width, Size size) {
        return Drawn.of(ChargeRulerPicture.of(ruler, width, size));
    }
}
