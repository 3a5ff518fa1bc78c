package org.sunder.engine.physics.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.sunder.engine.physics.Setups.grams;
import static org.sunder.engine.physics.Setups.kPa;
import static org.sunder.engine.physics.Setups.mm;
import static org.sunder.engine.physics.Setups.newtons;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sunder.engine.physics.Setups;
import org.sunder.engine.physics.Warning;
import org.sunder.engine.physics.cavity.Content.Solid;
import org.sunder.engine.physics.retention.Fit;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.physics.retention.PinStrength.MeasuredBatch;
import org.sunder.engine.physics.retention.PinThread;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Volume;
import org.sunder.engine.quantity.VolumeUnit;

/** Each warning stands where its reason does, and not where it does not. */
class WarningsTest {

    private static final JointSetup TUBE = Setups.tube(100, 300, 100);

    @Test
    void aJointOfWhichAllIsKnownIsNotWarnedOf() {
        PinSet pulled = new PinSet(PinThread.M2_5, 3, new MeasuredBatch(newtons(200), newtons(10), 12));
        JointSetup known = new JointSetup(
                TUBE.innerDiameter(),
                TUBE.cavity(),
                List.of(),
                List.of(pulled),
                new Fit(newtons(20), newtons(2)),
                TUBE.powder(),
                mm(100),
                grams(900),
                grams(4000),
                new Limit.GaugePressureLimit(kPa(300)));
        assertThat(codes(known)).isEmpty();
    }

    @Test
    void whatIsLeftOutIsAskedFor() {
        assertThat(codes(tube(null, grams(900), grams(4000))))
                .contains("no-shoulder")
                .doesNotContain("short-shoulder", "no-masses");
        assertThat(codes(tube(mm(100), null, grams(4000))))
                .contains("no-masses")
                .doesNotContain("no-shoulder");
        assertThat(codes(tube(mm(100), grams(900), null))).contains("no-masses");
        assertThat(codes(tube(mm(100), grams(900), grams(4000)))).doesNotContain("no-masses");
    }

    @Test
    void aShoulderOfOneCalibreIsLongEnough() {
        assertThat(codes(tube(mm(100), null, null))).doesNotContain("short-shoulder");
        assertThat(codes(tube(mm(99.9), null, null))).contains("short-shoulder");
    }

    /** More than 1 MPa and 50 g is not answered for, whatever the airframe withstands. */
    @Test
    void aCeilingAtTheEndOfTheModelIsSaid() {
        assertThat(codes(TUBE.withLimit(new Limit.GaugePressureLimit(kPa(4000)))))
                .contains("ceiling-at-domain");
        assertThat(codes(TUBE.withLimit(new Limit.GaugePressureLimit(kPa(300)))))
                .doesNotContain("ceiling-at-domain");
    }

    /** 100 N on 7854 mm² are 12.73 kPa. */
    @Test
    void aCeilingIsComparedWithTheHandbookCharge() {
        assertThat(codes(TUBE.withLimit(new Limit.GaugePressureLimit(kPa(12.7)))))
                .contains("ceiling-below-handbook");
        assertThat(codes(TUBE.withLimit(new Limit.GaugePressureLimit(kPa(12.8)))))
                .doesNotContain("ceiling-below-handbook");
    }

    @ParameterizedTest
    @CsvSource({"84, true", "86, false", "100, false", "114, false", "116, true"})
    void aJointFifteenHundredthsUnlikeItsCavityIsAskedAbout(double diameter, boolean asked) {
        JointSetup setup = new JointSetup(
                mm(diameter), TUBE.cavity(), List.of(), List.of(), TUBE.fit(), TUBE.powder(), null, null, null, null);
        assertThat(codes(setup).contains("area-unlike-cavity")).isEqualTo(asked);
    }

    /** The tube holds 2356 mL: a quarter is 589 mL and a twentieth 118 mL. */
    @ParameterizedTest
    @CsvSource({"1766, ''", "1768, crowded", "2237, crowded", "2239, little-free"})
    void littleFreeVolumeIsSaidFromAQuarterDown(String millilitres, String code) {
        Solid filler = new Solid("filler", new Volume(new BigDecimal(millilitres), VolumeUnit.MILLILITRE));
        assertThat(codes(TUBE.withContents(List.of(filler))).stream()
                        .filter(List.of("crowded", "little-free")::contains))
                .isEqualTo(code.isEmpty() ? List.of() : List.of(code));
    }

    private static JointSetup tube(@Nullable Length shoulder, @Nullable Mass forward, @Nullable Mass aft) {
        return new JointSetup(
                TUBE.innerDiameter(),
                TUBE.cavity(),
                List.of(),
                List.of(),
                TUBE.fit(),
                TUBE.powder(),
                shoulder,
                forward,
                aft,
                null);
    }

    private static List<String> codes(JointSetup setup) {
        return JointPhysics.of(setup).warnings().stream().map(Warning::code).toList();
    }
}
