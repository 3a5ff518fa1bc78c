package org.sunder.engine.physics.cavity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.physics.Setups.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.Setups;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.CavitySegment.Cylinder;
import org.sunder.engine.physics.cavity.CavitySegment.NoseCavity;
import org.sunder.engine.physics.cavity.Content.Intrusion;
import org.sunder.engine.quantity.Volume;

/** Expected volumes are elementary solids: cylinders, cones and frusta. */
class CavityTest {

    private static final double BASE = Math.PI * 0.05 * 0.05; // m2, radius 50 mm

    private final Cavity cone = new Cavity(List.of(new NoseCavity(new Cone(), mm(100), mm(300), null)));
    private final Cavity stack =
            new Cavity(List.of(new NoseCavity(new Cone(), mm(100), mm(300), mm(150)), new Cylinder(mm(100), mm(200))));

    @Test
    void aPieceOfAConeIsAFrustum() {
        double whole = BASE * 0.3 / 3;
        assertThat(cone.volumeBetween(0, 0.1)).isCloseTo(whole * 19 / 27, within(1e-15));
        assertThat(cone.volumeBetween(0.1, 0.2)).isCloseTo(whole * 7 / 27, within(1e-15));
    }

    @Test
    void aStackAddsItsSegmentsFromTheJointInwards() {
        assertThat(stack.depth()).isCloseTo(0.35, within(1e-15));
        assertThat(stack.volume()).isCloseTo(BASE * (0.2 + 0.1 * 7 / 8), within(1e-15));
        assertThat(stack.volumeBetween(0.1, 0.2)).isCloseTo(BASE * 0.1, within(1e-15));
        assertThat(stack.radiusAt(0.1)).isEqualTo(0.05);
        assertThat(stack.radiusAt(0.35)).isCloseTo(0.025, within(1e-15));
    }

    /** A 50 mm cylinder in a cone of 100 mm base and 300 mm length touches the wall 150 mm in. */
    @Test
    void anIntrusionTakesTheNarrowerOfItselfAndTheCavity() {
        double thin = Math.PI * 0.025 * 0.025;
        assertThat(cone.volumeWithin(0, 0.1, 0.025)).isCloseTo(thin * 0.1, within(1e-15));
        double tip = thin * 0.15 / 3;
        assertThat(cone.volumeWithin(0, 0.3, 0.025)).isCloseTo(thin * 0.15 + tip, within(1e-12));
        assertThat(cone.volumeWithin(0, 0.3, 0.05)).isCloseTo(cone.volume(), within(1e-15));
    }

    @Test
    void aBulgedNoseHoldsItsBulgeOutsideTheIntrusion() {
        NoseCavity bulged = new NoseCavity(new SecantOgive(mm(375)), mm(200), mm(300), null);
        Cavity cavity = new Cavity(List.of(bulged));
        double widest = 0;
        for (int i = 0; i <= 300; i++) {
            widest = Math.max(widest, cavity.radiusAt(i / 1000.0));
        }
        assertThat(widest).isGreaterThan(0.101);
        double inside = cavity.volumeWithin(0, 0.08, 0.1);
        assertThat(inside).isCloseTo(Math.PI * 0.01 * 0.08, within(1e-12));
        assertThat(cavity.volumeBetween(0, 0.08)).isGreaterThan(inside * 1.01);
    }

    @Test
    void intrusionsOnTheAxisCountTheirOverlapOnce() {
        Cavity tube = new Cavity(List.of(new Cylinder(mm(100), mm(400))));
        Intrusion bay = new Intrusion("bay", mm(50), mm(100));
        Intrusion motor = new Intrusion("motor case", mm(150), mm(60));
        double expected = BASE * 0.05 + Math.PI * 0.03 * 0.03 * 0.1;
        assertThat(Intrusions.volume(tube, List.of(bay, motor))).isCloseTo(expected, within(1e-15));
        FreeVolume volume = FreeVolume.of(tube, List.of(motor, bay));
        assertThat(volume.free()).isCloseTo(BASE * 0.4 - expected, within(1e-15));
    }

    /** Two litres of tube, a solid of half a litre, and a kilogram of nylon at 1.14 g/cm³. */
    @Test
    void aCompartmentIsComputedWithoutAJoint() {
        List<CavitySegment> tube = List.of(new Cylinder(mm(100), mm(800 / Math.PI)));
        FreeVolume volume = FreeVolume.ofCompartment(
                tube,
                List.of(
                        new Content.Solid("motor end", Volume.ofCubicMetres(0.0005)),
                        new Content.Fabric("main", FabricMaterial.NYLON, Setups.grams(1000), null)));
        assertThat(volume.cavity()).isCloseTo(0.002, within(1e-12));
        assertThat(volume.free()).isCloseTo(0.0015 - 1 / 1140.0, within(1e-12));
        assertThatThrownBy(() -> FreeVolume.ofCompartment(tube, List.of(new Intrusion("bay", mm(900), mm(100)))))
                .isInstanceOf(UnsoundSetupException.class);
    }

    /** What the flyer gives as an envelope stands in place of the material's volume. */
    @Test
    void anEnvelopeReplacesTheVolumeOfTheFibre() {
        Content burrito =
                new Content.Fabric("main", FabricMaterial.NYLON, Setups.grams(300), Volume.ofCubicMetres(0.001));
        FreeVolume volume = FreeVolume.ofCompartment(List.of(new Cylinder(mm(100), mm(400))), List.of(burrito));
        assertThat(volume.contents().get(0).volume()).isCloseTo(0.001, within(1e-15));
    }
}
