package org.sunder.engine.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.cavity.CavitySegment.Cylinder;
import org.sunder.engine.physics.cavity.CavitySegment.NoseCavity;
import org.sunder.engine.physics.cavity.Content.Intrusion;
import org.sunder.engine.physics.cavity.Content.Solid;
import org.sunder.engine.physics.cavity.TangentOgive;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.JointSetup;
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
    void aBayWiderThanTheCavityWhereItIsPushedToIsRefused() {
        assertThat(faults(ogive(92, 150))).singleElement().satisfies(fault -> {
            assertThat(fault.path()).isEqualTo("contents[0].depth");
            assertThat(fault.value()).isEqualTo("150.0 mm");
            assertThat(fault.detail())
                    .startsWith("bay is 92 mm wide, but the cavity only 81.")
                    .contains("at 150 mm deep");
            assertThat(fault.allowed()).matches("at most [0-9]+ mm deep, or at most 82.1 mm wide");
        });
    }

    @Test
    void whatTheRefusalAllowsIsTaken() {
        var allowed = Pattern.compile("at most (.*) mm deep, or at most (.*) mm wide")
                .matcher(faults(ogive(92, 150)).get(0).allowed());
        assertThat(allowed.matches()).isTrue();
        double deep = Double.parseDouble(allowed.group(1));
        double wide = Double.parseDouble(allowed.group(2));
        assertThat(codes(92, deep)).contains("wider-than-cavity");
        assertThat(faults(ogive(92, deep + 1))).isNotEmpty();
        assertThat(codes(wide, 150)).contains("wider-than-cavity");
        assertThat(faults(ogive(wide + 0.02, 150))).isNotEmpty();
    }

    @Test
    void aHundredthIsPlayAndOnlySaid() {
        assertThat(codes(81.2, 150)).doesNotContain("wider-than-cavity");
        assertThat(codes(81.9, 150)).contains("wider-than-cavity");
        assertThat(faults(ogive(82.4, 150))).hasSize(1);
        assertThat(codes(95.2, 0)).doesNotContain("wider-than-cavity");
    }

    /** A tube of 80 mm between a nose and a wider tube: the bay of 90 mm goes as far as the step, 100 mm. */
    @Test
    void aStepInTheTubesStopsABayToo() {
        JointSetup tube = Setups.tube(95.2, 100, 100);
        JointSetup stepped = new JointSetup(
                tube.innerDiameter(),
                List.of(new Cylinder(Setups.mm(80), Setups.mm(200)), new Cylinder(Setups.mm(95.2), Setups.mm(100))),
                List.of(new Intrusion("bay", Setups.mm(120), Setups.mm(90))),
                tube.pins(),
                tube.fit(),
                tube.powder(),
                null,
                null,
                null,
                null);
        assertThat(faults(stepped))
                .singleElement()
                .satisfies(fault -> assertThat(fault.allowed()).startsWith("at most 100 mm deep"));
        JointPhysics.of(stepped.withContents(List.of(new Intrusion("bay", Setups.mm(100), Setups.mm(90)))));
    }

    private static List<SetupFault> faults(JointSetup setup) {
        UnsoundSetupException refusal = catchThrowableOfType(UnsoundSetupException.class, () -> JointPhysics.of(setup));
        assertThat(refusal).isNotNull();
        return refusal.faults();
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
                    assertThat(warning.text()).contains("70.8 mL of 1.57 L", "4.5 %");
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
