package org.sunder.engine.physics.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.physics.Setups.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.CavitySegment;
import org.sunder.engine.physics.cavity.CavitySegment.Cylinder;
import org.sunder.engine.physics.cavity.CavitySegment.NoseCavity;
import org.sunder.engine.physics.cavity.Cone;
import org.sunder.engine.physics.packing.PackedItem.Place;

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
