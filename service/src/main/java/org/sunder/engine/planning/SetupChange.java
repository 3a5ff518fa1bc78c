package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.cavity.Content;
import org.sunder.engine.physics.charge.CoarseMeasure;
import org.sunder.engine.physics.charge.JointPhysics;
import org.sunder.engine.physics.charge.JointSetup;
import org.sunder.engine.physics.retention.PinSet;
import org.sunder.engine.physics.retention.PinStrength;
import org.sunder.engine.physics.retention.PinThread;
import org.sunder.engine.quantity.Mass;
import org.sunder.engine.quantity.Volume;

/**
 * A way on where no charge will do: another setup, with its physics computed anew, or a finer measure.
 * The correction learned so far is taken to hold; what the other setup needs is for tests to show.
 *
 * @param kind what changes
 * @param pins the pins of the other setup
 * @param filler volume to fill, m³; 0 where the volume stays
 * @param measure the finer step of charges, or null where the measure stays
 * @param physics the other setup in physics
 * @param targetCharge charge that it is likely to need for the target reliability, kg
 */
public record SetupChange(
        Kind kind,
        List<PinSet> pins,
        double filler,
        @Nullable Mass measure,
        JointPhysics physics,
        double targetCharge) {

    /** What changes. */
    public enum Kind {
        FEWER_PINS("fewer-pins"),
        SMALLER_PINS("smaller-pins"),
        LESS_VOLUME("less-volume"),
        FINER_MEASURE("finer-measure");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /** Shares of the free volume that are tried, the least change first. */
    private static final int SHARES = 20;

    /** Room left below the ceiling: a step of charge is not wasted on a setup that just misses it. */
    private static final double ROOM = 1.02;

    public SetupChange {
        pins = List.copyOf(pins);
    }

    /**
     * The least change of each kind that would do; empty where none does, as under a ceiling that falls with the setup.
     *
     * @param physics the setup as it is
     * @param targetRatio target charge over handbook charge, as learned so far
     */
    public static List<SetupChange> of(JointPhysics physics, double targetRatio) {
        List<SetupChange> result = new ArrayList<>();
        Stream.of(fewerPins(physics, targetRatio), smallerPins(physics, targetRatio), lessVolume(physics, targetRatio))
                .forEach(change -> change.ifPresent(result::add));
        return result;
    }

    /**
     * The coarsest measure, finer than the one in use, with which the plan names a charge; empty where none does.
     *
     * @param on the case that no charge will do for
     * @param measure its step of charges
     * @param physics its setup in physics
     */
    public static Optional<SetupChange> finerMeasure(PlanningCase on, Mass measure, JointPhysics physics) {
        double target = on.handbookCharge()
                * StrictMath.exp(on.posterior().logRatioFor(on.goal().reliability()));
        UnaryOperator<Optional<Mass>> finer =
                step -> step.flatMap(mass -> CoarseMeasure.finer(on.handbookCharge(), mass));
        return Stream.iterate(finer.apply(Optional.of(measure)), Optional::isPresent, finer)
                .flatMap(Optional::stream)
                .filter(step -> namesACharge(Planner.ladder(on.inStepsOf(step.kilograms()), 0)))
                .map(step -> new SetupChange(Kind.FINER_MEASURE, physics.setup().pins(), 0, step, physics, target))
                .findFirst();
    }

    private static boolean namesACharge(NextStep step) {
        return step instanceof NextStep.Fire || step instanceof NextStep.Stop;
    }

    private static Optional<SetupChange> fewerPins(JointPhysics physics, double ratio) {
        List<PinSet> pins = physics.setup().pins();
        if (pins.size() != 1) {
            return Optional.empty();
        }
        PinSet set = pins.get(0);
        return IntStream.iterate(set.count() - 1, count -> count >= 1, count -> count - 1)
                .mapToObj(count -> new PinSet(set.thread(), count, set.strength()))
                .map(fewer -> of(Kind.FEWER_PINS, physics.setup().withPins(List.of(fewer)), 0, ratio))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** Only of pins whose strength follows from their size; a batch has no smaller brother. */
    private static Optional<SetupChange> smallerPins(JointPhysics physics, double ratio) {
        List<PinSet> pins = physics.setup().pins();
        if (pins.size() != 1 || !(pins.get(0).strength() instanceof PinStrength.MaterialShear strength)) {
            return Optional.empty();
        }
        PinSet set = pins.get(0);
        Function<PinThread, Double> force = strength::forceOfOne;
        return Stream.of(PinThread.values())
                .filter(thread -> thread.isMetric() == set.thread().isMetric())
                .filter(thread -> force.apply(thread) < force.apply(set.thread()))
                .sorted(Comparator.comparing(force).reversed())
                .map(thread -> new PinSet(thread, set.count(), strength))
                .map(smaller -> of(Kind.SMALLER_PINS, physics.setup().withPins(List.of(smaller)), 0, ratio))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<SetupChange> lessVolume(JointPhysics physics, double ratio) {
        return IntStream.range(1, SHARES)
                .mapToDouble(share -> physics.freeVolume() * share / SHARES)
                .mapToObj(filler -> {
                    List<Content> contents = new ArrayList<>(physics.setup().contents());
                    contents.add(new Content.Solid("filler", Volume.ofCubicMetres(filler)));
                    return of(Kind.LESS_VOLUME, physics.setup().withContents(contents), filler, ratio);
                })
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<SetupChange> of(Kind kind, JointSetup setup, double filler, double ratio) {
        JointPhysics physics;
        try {
            physics = JointPhysics.of(setup);
        } catch (UnsoundSetupException impossible) {
            return Optional.empty();
        }
        double target = ratio * physics.handbookCharge();
        return target * ROOM <= physics.ceiling().chargeKg()
                ? Optional.of(new SetupChange(kind, setup.pins(), filler, null, physics, target))
                : Optional.empty();
    }
}
