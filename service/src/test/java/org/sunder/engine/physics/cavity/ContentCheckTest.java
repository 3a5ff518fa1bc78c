package org.sunder.engine.physics.cavity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;
import static org.sunder.engine.physics.Setups.grams;
import static org.sunder.engine.physics.Setups.inches;
import static org.sunder.engine.physics.Setups.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.SetupFault;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.CavitySegment.Cylinder;
import org.sunder.engine.physics.cavity.CavitySegment.NoseCavity;
import org.sunder.engine.physics.cavity.Content.Fabric;
import org.sunder.engine.physics.cavity.Content.Intrusion;
import org.sunder.engine.physics.cavity.Content.Solid;
import org.sunder.engine.quantity.Volume;

/** In a tube of 100 mm by 254.65 mm, which holds 2 L, as 254.65 = 800/π. */
class ContentCheckTest {

    private static final List<CavitySegment> TUBE = List.of(new Cylinder(mm(100), mm(800 / Math.PI)));

    @Test
    void whatIsTooWideOrTooDeepIsToldWhatWouldGoIn() {
        assertThat(faults(new Intrusion("bay", mm(300), mm(101))))
                .extracting(SetupFault::path, SetupFault::allowed)
                .containsExactly(
                        tuple("contents[0].diameter", "at most 100 mm"),
                        tuple("contents[0].depth", "at most 254.6 mm"));
    }

    /** 4 in are 101.6 mm and 10 in are 254 mm; a digit too few in either unit is no fault. */
    @Test
    void aBayAsWideAndAsDeepAsTheCavityGoesIn() {
        List<CavitySegment> metric = List.of(new Cylinder(mm(101.6), mm(254)));
        List<CavitySegment> inch = List.of(new Cylinder(inches(4), inches(10)));
        Intrusion narrow = new Intrusion("bay", mm(254), mm(50));
        FreeVolume.ofCompartment(metric, List.of(narrow));
        FreeVolume.ofCompartment(inch, List.of(narrow));
        FreeVolume.ofCompartment(List.of(new Cylinder(mm(101.5999), mm(253.9998))), List.of(narrow));
        FreeVolume.ofCompartment(metric, List.of(new Intrusion("bay", mm(100), inches(4))));
        FreeVolume.ofCompartment(
                List.of(new Cylinder(mm(101.59995), mm(254))), List.of(new Intrusion("bay", mm(100), mm(101.6))));
    }

    /** The bay takes a quarter of the tube, so 1.5 L are left for a solid that takes 1.6 L. */
    @Test
    void theItemThatNoLongerFitsIsToldHowMuchIsLeft() {
        Intrusion bay = new Intrusion("bay", mm(200 / Math.PI), mm(100));
        assertThat(faults(bay, solid(0.0016))).singleElement().satisfies(fault -> {
            assertThat(fault.path()).isEqualTo("contents[1]");
            assertThat(fault.value()).isEqualTo("1.6 L");
            assertThat(fault.allowed()).isEqualTo("less than 1.5 L");
        });
        FreeVolume.ofCompartment(TUBE, List.of(bay, solid(0.0014)));
    }

    @Test
    void aBayThatFillsTheWholeCavityLeavesNoGas() {
        List<CavitySegment> tube = List.of(new Cylinder(mm(100), mm(200)));
        assertThat(faults(tube, new Intrusion("bay", mm(200), mm(100))))
                .singleElement()
                .satisfies(fault -> assertThat(fault.detail()).contains("no gas volume is left"));
    }

    /** A size that cannot be is said once, and not once more as what does not fit. */
    @Test
    void whatCannotBeIsNotAlsoMeasured() {
        assertThat(paths(solid(2))).containsExactly("contents[0].volume");
        assertThat(paths(new Fabric("main", FabricMaterial.NYLON, grams(60_000), null)))
                .containsExactly("contents[0].mass");
        assertThat(paths(new Fabric("main", FabricMaterial.NYLON, grams(300), Volume.ofCubicMetres(2))))
                .containsExactly("contents[0].envelopeVolume");
        assertThat(paths(new Intrusion("bay", mm(300), mm(50)), solid(0.0030))).containsExactly("contents[0].depth");
    }

    /** A cone of 100 mm is 50 mm wide half way in: a bay of 90 mm sticks at 30 mm. */
    @Test
    void aBayThatSticksIsSaidBeforeWhatDoesNotFitBesideIt() {
        List<CavitySegment> cone = List.of(new NoseCavity(new Cone(), mm(100), mm(300), null));
        assertThat(faults(cone, new Intrusion("bay", mm(150), mm(90)), solid(0.0030)))
                .extracting(SetupFault::path)
                .containsExactly("contents[0].depth");
    }

    private static Solid solid(double cubicMetres) {
        return new Solid("filler", Volume.ofCubicMetres(cubicMetres));
    }

    private static List<String> paths(Content... contents) {
        return faults(contents).stream().map(SetupFault::path).toList();
    }

    private static List<SetupFault> faults(Content... contents) {
        return faults(TUBE, contents);
    }

    private static List<SetupFault> faults(List<CavitySegment> cavity, Content... contents) {
        UnsoundSetupException refusal = catchThrowableOfType(
                UnsoundSetupException.class, () -> FreeVolume.ofCompartment(cavity, List.of(contents)));
        assertThat(refusal).isNotNull();
        return refusal.faults();
    }
}
