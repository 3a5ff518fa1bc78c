package org.sunder.advice;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.airframe.Measure;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.engine.learning.LeafPosterior;
import org.sunder.groundtest.GroundTest;

/** The picture of what a joint needs: chance against charge, with every firing in it. */
@Service
public class Curves {

    /** Share of the belief that the band holds. */
    public static final double INTERVAL = 0.90;

    private static final int POINTS = 49;
    private static final double SHOWN = 0.99; // the curve runs at least from 1 % to 99 %
    private static final double MARGIN = 1.04; // beyond the outermost mark
    private static final double TAIL = (1 - INTERVAL) / 2;

    private final JointCases cases;
    private final SetupPhysics physics;

    Curves(JointCases cases, SetupPhysics physics) {
        this.cases = cases;
        this.physics = physics;
    }

    /** The curve of the setup in force. */
    @Transactional(readOnly = true)
    public Curve of(UUID jointId) {
        JointCase joint = cases.current(jointId);
        List<Curve.Mark> marks = marks(joint);
        return new Curve(
                joint.airframe().name(),
                joint.joint().name(),
                points(joint, marks),
                marks,
                joint.physics().handbookCharge(),
                joint.physics().ceiling(),
                Measure.of(joint.setup().sheet()),
                joint.basis());
    }

    private List<Curve.Mark> marks(JointCase joint) {
        Map<UUID, Setup> setups = Objects.requireNonNull(
                        joint.picture().setups().get(joint.joint().id()))
                .stream()
                .collect(Collectors.toMap(Setup::id, Function.identity()));
        double now = joint.physics().handbookCharge();
        return joint.picture().testsOf(joint.joint().id()).stream()
                .map(test -> new Curve.Mark(test, charge(test, setups, now)))
                .toList();
    }

    private double charge(GroundTest test, Map<UUID, Setup> setups, double now) {
        double then =
                physics.of(Objects.requireNonNull(setups.get(test.setupId()))).handbookCharge();
        return test.report().charge().kilograms() * now / then;
    }

    private static List<Curve.Point> points(JointCase joint, List<Curve.Mark> marks) {
        LeafPosterior posterior = joint.posterior();
        double from = joint.charge(posterior.logRatioFor(1 - SHOWN));
        double to = joint.charge(posterior.logRatioFor(SHOWN));
        Stream<Double> shown = Stream.concat(
                marks.stream().map(Curve.Mark::charge),
                Stream.of(joint.physics().handbookCharge()));
        double[] all = shown.mapToDouble(Double::doubleValue).toArray();
        double low = Math.min(from, DoubleStream.of(all).min().orElse(from) / MARGIN);
        double high = Math.max(to, DoubleStream.of(all).max().orElse(to) * MARGIN);
        return IntStream.range(0, POINTS)
                .mapToObj(i -> point(joint, low + i * (high - low) / (POINTS - 1)))
                .toList();
    }

    private static Curve.Point point(JointCase joint, double charge) {
        double x = StrictMath.log(charge / joint.physics().handbookCharge());
        LeafPosterior posterior = joint.posterior();
        return new Curve.Point(
                charge,
                posterior.pSeparated(x),
                posterior.separationQuantile(x, TAIL),
                posterior.separationQuantile(x, 1 - TAIL));
    }
}
