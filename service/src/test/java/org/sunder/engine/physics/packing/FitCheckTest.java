package org.sunder.engine.physics.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.physics.Setups.mm;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.CavitySegment;
import org.sunder.engine.physics.cavity.CavitySegment.Cylinder;
import org.sunder.engine.physics.cavity.CavitySegment.NoseCavity;
import org.sunder.engine.physics.cavity.Cone;
import org.sunder.engine.physics.packing.PackedItem.Place;
import org.sunder.engine.quantity.Volume;

/** Expected rooms are elementary: a cone 100 mm wide and 300 mm long loses 1 mm of radius every 6 mm. */
class FitCheckTest {

    private static final List<CavitySegment> CONE = List.of(new NoseCavity(new Cone(), mm(100), mm(300), null));
    private static final List<CavitySegment> TUBE = List.of(new Cylinder(mm(100), mm(500)));

    @Test
    void aNoseNarrowsUponWhatIsPackedInIt() {
        LoadOut slim = new LoadOut("slim", List.of(rigid("tracker", 120, 50, Place.JOINT)));
        LoadOut fat = new LoadOut("fat", List.of(rigid("tracker", 120, 62, Place.JOINT)));
        List<LoadOutFit> fits = FitCheck.of(CONE, mm(0), List.of(slim, fat));
        assertThat(fits).extracting(LoadOutFit::loadOut).containsExactly("fat", "slim");
        assertThat(fits).extracting(LoadOutFit::fits).containsExactly(false, true);
        assertThat(fits.get(0).items().get(0).clearance()).isCloseTo(-0.001, within(1e-9));
        assertThat(fits.get(1).items().get(0).clearance()).isCloseTo(0.005, within(1e-9));
        assertThat(fits.get(1).lengthLeft()).isCloseTo(0.180, within(1e-9));
    }

    @Test
    void aLongerMotorCaseMeetsTheParachute() {
        PackedItem parachute = rigid("parachute canister", 200, 90, Place.JOINT);
        LoadOut shortCase = new LoadOut("short case", List.of(parachute, rigid("motor", 200, 54, Place.FAR_END)));
        LoadOut longCase = new LoadOut("long case", List.of(parachute, rigid("motor", 290, 54, Place.FAR_END)));
        List<LoadOutFit> fits = FitCheck.of(TUBE, mm(50), List.of(shortCase, longCase));
        assertThat(fits.get(0).loadOut()).isEqualTo("long case");
        assertThat(fits.get(0).fits()).isFalse();
        assertThat(fits.get(0).lengthLeft()).isCloseTo(-0.040, within(1e-9));
        assertThat(fits.get(0).items()).extracting(ItemFit::fits).containsExactly(true, false);
        assertThat(fits.get(1).fits()).isTrue();
        assertThat(fits.get(1).lengthLeft()).isCloseTo(0.050, within(1e-9));
    }

    /** 1 L packed 80 mm wide is 198.9 mm long; in the cone it spreads to the wall where that is narrower. */
    @Test
    void aSoftItemTakesTheLengthThatItsVolumeNeeds() {
        double packed = 1e-3 / (Math.PI * 0.04 * 0.04) * 1000;
        LoadOut loadOut = new LoadOut("main", List.of(soft("main", packed, 80)));
        LoadOutFit inTube = FitCheck.of(TUBE, mm(0), List.of(loadOut)).get(0);
        assertThat(inTube.lengthLeft()).isCloseTo(0.5 - packed / 1000, within(1e-6));
        LoadOutFit inCone = FitCheck.of(CONE, mm(0), List.of(loadOut)).get(0);
        assertThat(inCone.fits()).as("a cone of 0.785 L holds no litre").isFalse();
        LoadOut half = new LoadOut("half", List.of(soft("half", packed / 2, 80)));
        LoadOutFit halfInCone = FitCheck.of(CONE, mm(0), List.of(half)).get(0);
        assertThat(halfInCone.fits()).isTrue();
        assertThat(halfInCone.items().get(0).to()).isGreaterThan(packed / 2000);
        assertThat(halfInCone.volumeLeft() * 1000).isCloseTo(0.7854 - 0.5, within(1e-4));
    }

    /** The tip of a cone, half as long as the cone, holds an eighth of its π/3·50²·300 mm³. */
    @Test
    void aSoftItemAtTheFarEndFillsTheNarrowTip() {
        double eighth = Math.PI / 3 * 0.05 * 0.05 * 0.3 / 8;
        PackedItem cord = new PackedItem("cord", mm(100), mm(100), Volume.ofCubicMetres(eighth), true, Place.FAR_END);
        LoadOutFit fit = FitCheck.of(CONE, mm(0), List.of(new LoadOut("cord", List.of(cord))))
                .get(0);
        assertThat(fit.items().get(0).from()).isCloseTo(0.150, within(1e-6));
        assertThat(fit.items().get(0).to()).isEqualTo(0.3);
        assertThat(fit.lengthLeft()).isCloseTo(0.150, within(1e-6));
        assertThat(fit.fits()).isTrue();
    }

    /** Behind 100 mm pushed in, 400 mm of the tube hold π litres; 4 L, 100 mm wide, are 509.3 mm long. */
    @Test
    void aSoftItemTooLargeReachesOverByWhatFindsNoRoom() {
        PackedItem main = new PackedItem("main", mm(1), mm(100), Volume.ofCubicMetres(0.004), true, Place.JOINT);
        LoadOutFit fit = FitCheck.of(TUBE, mm(100), List.of(new LoadOut("main", List.of(main))))
                .get(0);
        double length = 0.004 / (Math.PI * 0.05 * 0.05);
        assertThat(length).isCloseTo(0.5093, within(5e-5));
        assertThat(fit.items().get(0).to()).isCloseTo(0.1 + length, within(1e-6));
        assertThat(fit.lengthLeft()).isCloseTo(0.4 - length, within(1e-6));
        assertThat(fit.items().get(0).fits()).isFalse();
        assertThat(fit.fits()).isFalse();
    }

    /** The second lies behind the first, each π/4 L, 100 mm wide and so 100 mm long. */
    @Test
    void softItemsLieBehindOneAnother() {
        Volume volume = Volume.ofCubicMetres(Math.PI / 4 * 1e-3);
        PackedItem main = new PackedItem("main", mm(1), mm(100), volume, true, Place.JOINT);
        PackedItem drogue = new PackedItem("drogue", mm(1), mm(100), volume, true, Place.JOINT);
        PackedItem cord = new PackedItem("cord", mm(1), mm(100), volume, true, Place.FAR_END);
        LoadOutFit fit = FitCheck.of(TUBE, mm(0), List.of(new LoadOut("all", List.of(main, drogue, cord))))
                .get(0);
        assertThat(fit.items().get(1).from()).isCloseTo(0.1, within(1e-6));
        assertThat(fit.items().get(1).to()).isCloseTo(0.2, within(1e-6));
        assertThat(fit.items().get(2).from()).isCloseTo(0.4, within(1e-6));
        assertThat(fit.lengthLeft()).isCloseTo(0.2, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 7, 9})
    void whatFillsTheCavityToTheLastMillimetreFits(int pieces) {
        for (double diameter : new double[] {38.1, 54, 75.7, 98, 100}) {
            List<CavitySegment> tube = List.of(new Cylinder(mm(diameter), mm(441)));
            PackedItem piece = rigid("piece", 441.0 / pieces, diameter, Place.JOINT);
            LoadOutFit fit = FitCheck.of(tube, mm(0), List.of(new LoadOut("full", Collections.nCopies(pieces, piece))))
                    .get(0);
            assertThat(fit.fits()).as("%d pieces %s mm wide", pieces, diameter).isTrue();
            assertThat(fit.lengthLeft()).isBetween(0.0, 1e-9);
            assertThat(fit.volumeLeft()).isBetween(0.0, 1e-12);
        }
    }

    /** A thousandth of the tube's 3.927 L too much is more than rounding. */
    @Test
    void whatTakesMoreThanTheCavityHoldsDoesNotFit() {
        PackedItem bulky = new PackedItem("bulky", mm(400), mm(90), Volume.ofCubicMetres(0.003931), false, Place.JOINT);
        LoadOutFit fit = FitCheck.of(TUBE, mm(0), List.of(new LoadOut("bulky", List.of(bulky))))
                .get(0);
        assertThat(fit.items().get(0).fits()).isTrue();
        assertThat(fit.lengthLeft()).isCloseTo(0.1, within(1e-9));
        assertThat(fit.volumeLeft()).isCloseTo(-4.0e-6, within(0.1e-6));
        assertThat(fit.fits()).isFalse();
    }

    @Test
    void tellsEveryFaultOfEveryItem() {
        LoadOut bad = new LoadOut("bad", List.of(rigid("a", 0, 50, Place.JOINT), rigid("b", 10, 5000, Place.JOINT)));
        var refusal =
                catchThrowableOfType(UnsoundSetupException.class, () -> FitCheck.of(List.of(), mm(-1), List.of(bad)));
        assertThat(refusal.faults())
                .extracting(SetupFault::path)
                .containsExactly("cavity", "pushedIn", "loadOuts[0].items[0].length", "loadOuts[0].items[1].diameter");
    }

    private static PackedItem rigid(String name, double length, double diameter, Place place) {
        return new PackedItem(name, mm(length), mm(diameter), null, false, place);
    }

    private static PackedItem soft(String name, double length, double diameter) {
        return new PackedItem(name, mm(length), mm(diameter), null, true, Place.JOINT);
    }
}
