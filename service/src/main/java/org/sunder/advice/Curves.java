package org.sunder.advice;

import java.util.List;
import java.util.UUID;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.sunder.engine.learning.posterior.LeafPosterior;

/** The picture of what a joint needs: chance against charge, with every firing in it. */
@Service
public class Curves {

    /** Share of the belief that the band holds. */
    public static final double INTERVAL = 0.90;

    private static final int POINTS = 49;
    private static final double SHOWN = 0.99; // the curve runs at least from 1 % to 99 %
    private static final double MARGIN = 1.04; // beyond the outermost mark
    private static final double TAIL = (1 - INTERVAL) / 2;

    private final FleetSnapshots fleets;
    private final Advising advising;

    Curves(FleetSnapshots fleets, Advising advising) {
        this.fleets = fleets;
        this.advising = advising;
    }

    /** The curve of the setup in force. */
    public Curve of(UUID jointId) {
        JointCase joint = advising.joint(fleets.current(), jointId);
        List<Curve.Mark> marks = marks(joint);
        return new Curve(
                joint.logged().airframe().name(),
                joint.logged().joint().name(),
                points(joint, marks),
                marks,
                joint.physics().handbookCharge(),
                joint.physics().ceiling(),
                joint.measure(),
                joint.basis());
    }

    private static List<Curve.Mark> marks(JointCase joint) {
        LoggedJoint logged = joint.logged();
        double now = joint.physics().handbookCharge();
        return logged.sound().stream()
                .flatMap(test -> logged
                        .physicsOf(test)
                        .map(then ->
                                new Curve.Mark(test, test.report().charge().kilograms() * now / then.handbookCharge()))
                        .stream())
                .toList();
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
