package org.sunder.engine.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.sunder.engine.physics.Setups.bittern;
import static org.sunder.engine.physics.Setups.grams;
import static org.sunder.engine.physics.Setups.mm;
import static org.sunder.engine.physics.Setups.newtons;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sunder.engine.physics.cavity.CavitySegment.Cylinder;
import org.sunder.engine.physics.cavity.CavitySegment.NoseCavity;
import org.sunder.engine.physics.cavity.Cone;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.cavity.Content.Fabric;
import org.sunder.engine.physics.cavity.Content.Intrusion;
import org.sunder.engine.physics.cavity.Content.Solid;
import org.sunder.engine.physics.cavity.FabricMaterial;
import org.sunder.engine.physics.cavity.SecantOgive;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.charge.Limit;
import org.sunder.engine.physics.charge.Powder;
import org.sunder.engine.physics.retention.Fit;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.physics.retention.PinStrength;
import org.sunder.engine.physics.retention.PinThread;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.SpecificEnergy;
import org.sunder.engine.quantity.Speed;
import org.sunder.engine.quantity.Volume;

class UnsoundSetupTest {

    @Test
    void refusesACavityThatItsContentsOverfillAndNamesTheItem() {
        JointSetup setup = with(new Fabric("spare parachute", FabricMaterial.NYLON, grams(2000), null));
        assertThat(faults(setup)).singleElement().satisfies(f -> {
            assertThat(f.path()).isEqualTo("contents[3]");
            assertThat(f.detail()).contains("spare parachute", "does not fit");
            assertThat(f.allowed()).contains("1.52 L");
        });
    }

    @Test
    void refusesAnIntrusionWiderThanTheJointOrDeeperThanTheCavity() {
        JointSetup setup = with(new Intrusion("coupler", mm(600), mm(95)));
        assertThat(faults(setup))
                .extracting(SetupFault::path)
                .containsExactly("contents[3].diameter", "contents[3].depth");
    }

    @Test
    void tellsEveryFaultAtOnce() {
        JointSetup setup = new JointSetup(
                mm(-92),
                List.of(new Cylinder(mm(92), mm(0)), new NoseCavity(new Cone(), mm(92), mm(300), mm(300))),
                List.of(new Solid("tracker", Volume.ofCubicMetres(-1))),
                List.of(PinSet.ofNylon(PinThread.M3, 0)),
                new Fit(newtons(-1), newtons(9999)),
                new Powder("dust", SpecificEnergy.ofJoulesPerKilogram(1), 2),
                mm(0),
                grams(0),
                grams(1e12),
                new Limit.SeparationSpeedLimit(Speed.ofMetresPerSecond(0)));
        assertThat(faults(setup))
                .extracting(SetupFault::path)
                .containsExactly(
                        "innerDiameter",
                        "cavity[0].length",
                        "cavity[1]",
                        "cavity[1].tipCutoff",
                        "contents[0].volume",
                        "pins[0].count",
                        "fit.force",
                        "fit.uncertainty",
                        "powder.force",
                        "powder.relativeUncertainty",
                        "shoulder",
                        "forwardMass",
                        "aftMass",
                        "limit.speed");
    }

    @Test
    void refusesAJointThatNothingKeepsClosed() {
        assertThat(faults(Setups.tube(98, 300, 0))).extracting(SetupFault::path).containsExactly("pins");
    }

    @Test
    void aSolidOfNegativeSizeIsRefusedAndNotSquaredAway() {
        assertThat(faults(with(Solid.ofEnvelope("tracker", mm(-30), mm(80)))))
                .extracting(SetupFault::path)
                .containsExactly("contents[3].volume");
    }

    @Test
    void refusesAnEmptyCavity() {
        JointSetup s = bittern();
        JointSetup empty = new JointSetup(
                s.innerDiameter(), List.of(), s.contents(), s.pins(), s.fit(), s.powder(), null, null, null, null);
        assertThat(faults(empty)).extracting(SetupFault::path).containsExactly("cavity");
    }

    @Test
    void refusesASpeedLimitWithoutWhatTheSpeedNeeds() {
        JointSetup setup =
                Setups.tube(98, 300, 100).withLimit(new Limit.SeparationSpeedLimit(Speed.ofMetresPerSecond(10)));
        assertThat(faults(setup)).extracting(SetupFault::path).containsExactly("shoulder", "forwardMass", "aftMass");
    }

    @Test
    void refusesAnOgiveThatCannotBeDrawn() {
        JointSetup s = Setups.tube(98, 300, 100);
        JointSetup flat = new JointSetup(
                s.innerDiameter(),
                List.of(new NoseCavity(new SecantOgive(mm(100)), mm(98), mm(300), null)),
                s.contents(),
                s.pins(),
                s.fit(),
                s.powder(),
                null,
                null,
                null,
                null);
        assertThat(faults(flat)).extracting(SetupFault::path).containsExactly("cavity[0].profile");
    }

    @Test
    void refusesWhatLiesOutsideTheModelsDomain() {
        assertThat(faults(Setups.tube(500, 2000, 100)))
                .extracting(SetupFault::path)
                .containsExactly("cavity");
        assertThat(faults(Setups.tube(50, 300, List.of(PinSet.ofNylon(PinThread.M5, 12)), Fit.of(newtons(10)))))
                .singleElement()
                .satisfies(f -> assertThat(f.allowed()).contains("1000 kPa"));
    }

    @Test
    void aHostileNumberIsAFaultAndNotACrash() {
        Length absurd = new Length(new BigDecimal("1e999999999"), LengthUnit.MILLIMETRE);
        JointSetup setup = with(new Intrusion("bay", absurd, mm(50)));
        assertThat(faults(setup)).singleElement().satisfies(f -> {
            assertThat(f.path()).isEqualTo("contents[3].depth");
            assertThat(f.value()).hasSizeLessThan(40);
        });
    }

    @Test
    void refusesAMeasuredBatchThatWasNotMeasured() {
        PinStrength one = new PinStrength.MeasuredBatch(newtons(200), newtons(300), 1);
        JointSetup setup = bittern().withPins(List.of(new PinSet(PinThread.M2_5, 3, one)));
        assertThat(faults(setup))
                .extracting(SetupFault::path)
                .containsExactly("pins[0].strength.standardDeviation", "pins[0].strength.tests");
    }

    private static JointSetup with(Content more) {
        List<Content> contents = new ArrayList<>(bittern().contents());
        contents.add(more);
        return bittern().withContents(contents);
    }

    private static List<SetupFault> faults(JointSetup setup) {
        return catchThrowableOfType(UnsoundSetupException.class, () -> JointPhysics.of(setup))
                .faults();
    }
}
