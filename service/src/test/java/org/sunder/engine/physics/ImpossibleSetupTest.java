package org.sunder.engine.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.CavitySegment.NoseCavity;
import org.sunder.engine.physics.Content.Intrusion;
import org.sunder.engine.physics.Content.Solid;
import org.sunder.engine.quantity.Volume;
import org.sunder.engine.quantity.VolumeUnit;

/** What cannot be, and what leaves no charge, is said. */
class ImpossibleSetupTest {

    /**
     * A tangent ogive of 390 mm by 95.2 mm has, at 150 mm from its base, by ρ = (r² + l²)/2r = 1621.5 mm a radius of
     * √(ρ² − 150²) + r − ρ = 40.6 mm: 81.3 mm across.
     */
    private static JointSetup ogive(double diameter, double depth) {
        JointSetup setup = Setups.tube(95.2, 100, 100);
        return new JointSetup(
                setup.innerDiameter(),
                List.of(new NoseCavity(new TangentOgive(), Setups.mm(95.2), Setups.mm(390), null)),
                List.of(new Intrusion("bay", Setups.mm(depth), Setups.mm(diameter))),
                setup.pins(),
                setup.fit(),
                setup.powder(),
                null,
                null,
                null,
                null);
    }

    @Test
    void aBayWiderThanTheCavityWhereItIsPushedToIsNamed() {
        assertThat(JointPhysics.of(ogive(92, 150)).warnings()).anySatisfy(warning -> {
            assertThat(warning.code()).isEqualTo("wider-than-cavity");
            assertThat(warning.text())
                    .startsWith("bay is 92 mm wide, but the cavity only 81.")
                    .contains("at 150 mm deep");
        });
    }

    @Test
    void aHundredthIsPlay() {
        assertThat(codes(81.9, 150)).doesNotContain("wider-than-cavity");
        assertThat(codes(82.4, 150)).contains("wider-than-cavity");
        assertThat(codes(95.2, 5)).doesNotContain("wider-than-cavity");
    }

    private static List<String> codes(double diameter, double depth) {
        return JointPhysics.of(ogive(diameter, depth)).warnings().stream()
                .map(Warning::code)
                .toList();
    }

    /** 100 mm by 200 mm are 1.571 L; 1.50 L of it leave 70.8 mL, 4.5 %; 1.45 L leave 7.7 %. */
    @Test
    void aFreeVolumeOfNextToNothingIsSaid() {
        JointSetup tube = Setups.tube(100, 200, 100);
        assertThat(warnings(tube, "1.50"))
                .anySatisfy(warning -> {
                    assertThat(warning.code()).isEqualTo("little-free");
                    assertThat(warning.text()).contains("70.8 mL of 1.571 L", "4.5 %");
                })
                .noneSatisfy(warning -> assertThat(warning.code()).isEqualTo("crowded"));
        assertThat(warnings(tube, "1.45"))
                .extracting(Warning::code)
                .contains("crowded")
                .doesNotContain("little-free");
    }

    private static List<Warning> warnings(JointSetup tube, String litres) {
        Solid solid = new Solid("filler", new Volume(new BigDecimal(litres), VolumeUnit.LITRE));
        return JointPhysics.of(tube.withContents(List.of(solid))).warnings();
    }
}
