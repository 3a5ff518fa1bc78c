package org.sunder.engine.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.sunder.engine.physics.Setups.mm;
import static org.sunder.engine.physics.Setups.newtons;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sunder.engine.physics.cavity.Cavity;
import org.sunder.engine.physics.cavity.CavitySegment;
import org.sunder.engine.physics.cavity.CavitySegment.Cylinder;
import org.sunder.engine.physics.cavity.CavitySegment.NoseCavity;
import org.sunder.engine.physics.cavity.Cone;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.cavity.Content.Intrusion;
import org.sunder.engine.physics.cavity.Ellipsoid;
import org.sunder.engine.physics.cavity.FreeVolume;
import org.sunder.engine.physics.cavity.HaackSeries;
import org.sunder.engine.physics.cavity.NoseProfile;
import org.sunder.engine.physics.cavity.ParabolicSeries;
import org.sunder.engine.physics.cavity.Paraboloid;
import org.sunder.engine.physics.cavity.PowerSeries;
import org.sunder.engine.physics.cavity.SecantOgive;
import org.sunder.engine.physics.cavity.TangentOgive;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.charge.Limit;
import org.sunder.engine.physics.charge.Powder;
import org.sunder.engine.physics.retention.Fit;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.physics.retention.PinThread;
import org.sunder.engine.quantity.Length;
import org.sunder.engine.quantity.Pressure;
import org.sunder.engine.quantity.Speed;

/** What must hold for any joint: laws of nature and of geometry, over seeded random setups. */
class PhysicsPropertiesTest {

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void doublingEveryLengthMultipliesVolumeByEight(int seed) {
        List<CavitySegment> segments = cavity(new Random(seed));
        double once = new Cavity(segments).volume();
        double doubled = new Cavity(segments.stream().map(s -> scaled(s, 2)).toList()).volume();
        assertThat(doubled).isCloseTo(8 * once, within(1e-8 * doubled));
    }

    static IntStream fewSeeds() {
        return IntStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("fewSeeds")
    void volumeBetweenStationsIsTheQuadratureOfTheRadius(int seed) {
        Random random = new Random(seed);
        Cavity cavity = new Cavity(cavity(random));
        double from = cavity.depth() * random.nextDouble();
        double to = from + (cavity.depth() - from) * random.nextDouble();
        double radius = cavity.openingRadius() * (0.2 + 0.8 * random.nextDouble());
        assertThat(cavity.volumeBetween(from, to)).isCloseTo(midpoint(cavity, from, to, 1), within(tolerance(cavity)));
        assertThat(cavity.volumeWithin(from, to, radius))
                .isCloseTo(midpoint(cavity, from, to, radius), within(tolerance(cavity)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void moreFreeVolumeNeverNeedsLessCharge(int seed) {
        Random random = new Random(seed);
        JointSetup empty = setup(random);
        Cavity cavity = empty.emptyCavity();
        double depth = cavity.depth() * 0.8 * random.nextDouble();
        Intrusion bay = new Intrusion(
                "bay",
                Length.ofMetres(depth),
                Length.ofMetres(2 * cavity.narrowest(0, depth) * (0.3 + 0.7 * random.nextDouble())));
        JointPhysics full = JointPhysics.of(empty.withContents(List.of(bay)));
        JointPhysics roomy = JointPhysics.of(empty);
        assertThat(full.freeVolume()).isLessThanOrEqualTo(roomy.freeVolume());
        assertThat(full.handbookCharge()).isLessThanOrEqualTo(roomy.handbookCharge());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void morePinsNeverNeedLessPowderAndNeverHoldLess(int seed) {
        JointSetup setup = setup(new Random(seed));
        PinSet pins = setup.pins().get(0);
        PinSet more = new PinSet(pins.thread(), pins.count() + 1, pins.strength());
        JointPhysics before = JointPhysics.of(setup);
        JointPhysics after = JointPhysics.of(setup.withPins(List.of(more)));
        assertThat(after.handbookCharge()).isGreaterThan(before.handbookCharge());
        assertThat(after.retention().mean()).isGreaterThan(before.retention().mean());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void speedGrowsWithTheCharge(int seed) {
        Random random = new Random(seed);
        JointPhysics joint = JointPhysics.of(setup(random));
        double charge = joint.ceiling().chargeKg() * random.nextDouble();
        double slow = joint.separationSpeed(charge).orElseThrow();
        double fast = joint.separationSpeed(1.1 * charge).orElseThrow();
        assertThat(fast).isGreaterThanOrEqualTo(slow);
        assertThat(joint.separationSpeed(50 * joint.ceiling().chargeKg()).orElseThrow())
                .isGreaterThan(joint.separationSpeed(joint.ceiling().chargeKg()).orElseThrow());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noCeilingExceedsTheFlyersLimit(int seed) {
        Random random = new Random(seed);
        JointSetup setup = setup(random);
        double pascals = 5e4 + 2e6 * random.nextDouble();
        JointPhysics pressed =
                JointPhysics.of(setup.withLimit(new Limit.GaugePressureLimit(Pressure.ofPascals(pascals))));
        assertThat(pressed.gaugePressure(pressed.ceiling().chargeKg())).isLessThanOrEqualTo(pascals * (1 + 1e-12));
        double limit = 1 + 40 * random.nextDouble();
        JointPhysics sped =
                JointPhysics.of(setup.withLimit(new Limit.SeparationSpeedLimit(Speed.ofMetresPerSecond(limit))));
        assertThat(sped.separationSpeed(sped.ceiling().chargeKg()).orElseThrow())
                .isLessThanOrEqualTo(limit * (1 + 1e-9));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theOrderOfIntrusionsDoesNotMatter(int seed) {
        Random random = new Random(seed);
        Cavity cavity = new Cavity(cavity(random));
        List<Content> contents = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            contents.add(new Intrusion(
                    "i" + i,
                    Length.ofMetres(cavity.depth() * random.nextDouble()),
                    Length.ofMetres(2 * cavity.openingRadius() * random.nextDouble())));
        }
        double one = FreeVolume.of(cavity, contents).free();
        Collections.shuffle(contents, random);
        assertThat(FreeVolume.of(cavity, contents).free()).isCloseTo(one, within(1e-9 * cavity.volume()));
    }

    private static JointSetup setup(Random random) {
        List<CavitySegment> cavity = cavity(random);
        double diameter = 2 * new Cavity(cavity).openingRadius() * 1000;
        List<PinThread> threads = List.of(PinThread.M2, PinThread.UNC_2_56, PinThread.M2_5, PinThread.UNC_4_40);
        PinSet pins = PinSet.ofNylon(threads.get(random.nextInt(threads.size())), 1 + random.nextInt(3));
        return new JointSetup(
                mm(diameter),
                cavity,
                List.of(),
                List.of(pins),
                Fit.of(newtons(1 + 30 * random.nextDouble())),
                Powder.FINE_BLACK_POWDER,
                mm(diameter),
                Setups.grams(300 + 2000 * random.nextDouble()),
                Setups.grams(1000 + 9000 * random.nextDouble()),
                null);
    }

    private static List<CavitySegment> cavity(Random random) {
        double diameter = 50 + 120 * random.nextDouble();
        double length = diameter * (1 + 5 * random.nextDouble());
        NoseCavity nose = new NoseCavity(
                profile(random, diameter / 2, length),
                mm(diameter),
                mm(length),
                mm(0.4 * length * random.nextDouble()));
        List<CavitySegment> segments = new ArrayList<>(List.of(nose));
        for (int i = random.nextInt(3); i > 0; i--) {
            segments.add(new Cylinder(mm(diameter * (1 + 0.1 * i)), mm(20 + 200 * random.nextDouble())));
        }
        return segments;
    }

    private static NoseProfile profile(Random random, double radius, double length) {
        double least = (length * length + radius * radius) / (2 * length);
        return switch (random.nextInt(8)) {
            case 0 -> new Cone();
            case 1 -> new TangentOgive();
            case 2 -> new SecantOgive(mm(least * (1.05 + 20 * random.nextDouble())));
            case 3 -> new Ellipsoid();
            case 4 -> new Paraboloid();
            case 5 -> new PowerSeries(0.3 + 0.7 * random.nextDouble());
            case 6 -> new HaackSeries(0.66 * random.nextDouble());
            default -> new ParabolicSeries(random.nextDouble());
        };
    }

    private static CavitySegment scaled(CavitySegment segment, double factor) {
        if (segment instanceof Cylinder tube) {
            return new Cylinder(times(tube.innerDiameter(), factor), times(tube.length(), factor));
        }
        NoseCavity nose = (NoseCavity) segment;
        NoseProfile profile = nose.profile() instanceof SecantOgive secant
                ? new SecantOgive(times(secant.radius(), factor))
                : nose.profile();
        return new NoseCavity(
                profile,
                times(nose.baseDiameter(), factor),
                times(nose.length(), factor),
                times(nose.tipCutoff(), factor));
    }

    private static Length times(Length length, double factor) {
        return Length.ofMetres(length.metres() * factor);
    }

    private static double midpoint(Cavity cavity, double from, double to, double radius) {
        int steps = 20_000;
        double width = (to - from) / steps;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double r = Math.min(radius, cavity.radiusAt(from + (i + 0.5) * width));
            sum += Math.PI * r * r * width;
        }
        return sum;
    }

    private static double tolerance(Cavity cavity) {
        return 5e-5 * cavity.volume(); // of the midpoint rule, where the radius steps
    }
}
