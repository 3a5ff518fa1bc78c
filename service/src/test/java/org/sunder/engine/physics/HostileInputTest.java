package org.sunder.engine.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.sunder.engine.physics.Setups.grams;
import static org.sunder.engine.physics.Setups.mm;
import static org.sunder.engine.physics.Setups.newtons;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sunder.engine.physics.cavity.CavitySegment.Cylinder;
import org.sunder.engine.physics.cavity.CavitySegment.NoseCavity;
import org.sunder.engine.physics.cavity.Content.Fabric;
import org.sunder.engine.physics.cavity.Content.Intrusion;
import org.sunder.engine.physics.cavity.Content.Solid;
import org.sunder.engine.physics.cavity.Ellipsoid;
import org.sunder.engine.physics.cavity.FabricMaterial;
import org.sunder.engine.physics.cavity.HaackSeries;
import org.sunder.engine.physics.cavity.NoseProfile;
import org.sunder.engine.physics.cavity.ParabolicSeries;
import org.sunder.engine.physics.cavity.PowerSeries;
import org.sunder.engine.physics.cavity.SecantOgive;
import org.sunder.engine.physics.cavity.TangentOgive;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.charge.Limit;
import org.sunder.engine.physics.charge.Powder;
import org.sunder.engine.physics.retention.Fit;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.physics.retention.PinStrength;
import org.sunder.engine.physics.retention.PinThread;
import org.sunder.engine.quantity.Pressure;
import org.sunder.engine.quantity.SpecificEnergy;
import org.sunder.engine.quantity.Speed;

/** Whatever numbers come in, the physics answers with finite positive values or refuses with named faults. */
class HostileInputTest {

    private static final double[] EXTREMES = {
        0, -0.0, -1, 1e-300, 1e-12, 1e-6, 1e-3, 0.01, 0.999, 1, 1.5, 9, 10, 11, 100, 999.999, 1000, 5000, 1e4, 1e9,
        1e300
    };

    static IntStream seeds() {
        return IntStream.range(0, 500);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anySetupIsAnsweredOrRefused(int seed) {
        assertAnsweredOrRefused(setup(new Random(seed)));
    }

    @Test
    void someOfThemAreAnswered() {
        long answered = seeds().filter(seed -> answers(setup(new Random(seed)))).count();
        assertThat(answered).isBetween(20L, 480L);
    }

    private static void assertAnsweredOrRefused(JointSetup setup) {
        try {
            JointPhysics joint = JointPhysics.of(setup);
            assertThat(List.of(
                            joint.freeVolume(),
                            joint.area(),
                            joint.retention().mean(),
                            joint.thresholdPressure(),
                            joint.handbookCharge()))
                    .allSatisfy(value -> assertThat(value).isFinite().isPositive());
            assertThat(joint.ceiling().chargeKg()).isBetween(0.0, SetupBounds.DOMAIN_CHARGE);
            assertThat(joint.uncertainty().total()).isFinite().isPositive();
            joint.separationSpeed(joint.ceiling().chargeKg())
                    .ifPresent(v -> assertThat(v).isFinite().isNotNegative());
        } catch (UnsoundSetupException e) {
            assertThat(e.faults())
                    .isNotEmpty()
                    .allSatisfy(f -> assertThat(f.path()).isNotBlank());
        }
    }

    private static boolean answers(JointSetup setup) {
        try {
            JointPhysics.of(setup);
            return true;
        } catch (UnsoundSetupException e) {
            return false;
        }
    }

    /** Mostly plausible, with an extreme here and there. */
    private static JointSetup setup(Random random) {
        return new JointSetup(
                mm(pick(random, 98)),
                List.of(
                        new NoseCavity(
                                profile(random), mm(pick(random, 98)), mm(pick(random, 400)), mm(pick(random, 30))),
                        new Cylinder(mm(pick(random, 98)), mm(pick(random, 200)))),
                List.of(
                        new Intrusion("bay", mm(pick(random, 50)), mm(pick(random, 90))),
                        Solid.ofEnvelope("tracker", mm(pick(random, 30)), mm(pick(random, 80))),
                        new Fabric("main", FabricMaterial.NYLON, grams(pick(random, 300)), null)),
                List.of(new PinSet(
                        PinThread.M2_5,
                        (int) pick(random, 3),
                        new PinStrength.MaterialShear(Pressure.ofPascals(pick(random, 69e6)), pick(random, 0.1)))),
                new Fit(newtons(pick(random, 15)), newtons(pick(random, 5))),
                new Powder("powder", SpecificEnergy.ofJoulesPerKilogram(pick(random, 219e3)), pick(random, 0.05)),
                mm(pick(random, 98)),
                grams(pick(random, 900)),
                grams(pick(random, 4000)),
                random.nextBoolean()
                        ? new Limit.GaugePressureLimit(Pressure.ofPascals(pick(random, 3e5)))
                        : new Limit.SeparationSpeedLimit(Speed.ofMetresPerSecond(pick(random, 15))));
    }

    private static NoseProfile profile(Random random) {
        return switch (random.nextInt(6)) {
            case 0 -> new SecantOgive(mm(pick(random, 900)));
            case 1 -> new PowerSeries(random.nextInt(9) == 0 ? Double.NaN : pick(random, 0.5));
            case 2 -> new HaackSeries(pick(random, 0.3));
            case 3 -> new ParabolicSeries(pick(random, 0.7));
            case 4 -> new TangentOgive();
            default -> new Ellipsoid();
        };
    }

    private static double pick(Random random, double plausible) {
        return random.nextInt(12) == 0 ? EXTREMES[random.nextInt(EXTREMES.length)] : plausible;
    }
}
