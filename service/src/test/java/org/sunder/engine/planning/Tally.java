package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Sums up how one way of testing fared over many joints. */
final class Tally {

    static final String HEADER =
            "| strategy | tests, mean | 90 % | flight failure, mean | with backup | overcharge, median"
                    + " | 90 % | mean ln | highest fired, 90 % | given up | violations |\n"
                    + "|---|---|---|---|---|---|---|---|---|---|---|";

    private record Flown(TrueJoint joint, double charge, double backup) {}

    private final List<Double> tests = new ArrayList<>();
    private final List<Double> highest = new ArrayList<>();
    private final List<Flown> flown = new ArrayList<>();
    private int violations;

    /**
     * @param charge kg, NaN if none was found
     * @param fired highest charge fired, kg
     */
    void add(TrueJoint joint, int count, double charge, double backup, double fired, int broken) {
        tests.add((double) count);
        highest.add(fired / joint.charge99());
        violations += broken;
        if (!Double.isNaN(charge)) {
            flown.add(new Flown(joint, charge, backup));
        }
    }

    void add(TrueJoint joint, PlanTree.Result result) {
        add(joint, result.tests(), result.charge(), result.backup(), result.highest(), result.violations());
    }

    double meanTests() {
        return tests.stream().mapToDouble(t -> t).average().orElse(0);
    }

    /** Tests of each joint, in the order in which they were added. */
    List<Double> tests() {
        return List.copyOf(tests);
    }

    /** Flown over the joint's own charge for 99 %, of each joint that got a charge to fly. */
    List<Double> overcharges() {
        return flown.stream().map(f -> f.charge / f.joint.charge99()).toList();
    }

    double givenUp() {
        return 1.0 * (tests.size() - flown.size()) / tests.size();
    }

    int violations() {
        return violations;
    }

    double failure(double margin) {
        return flown.stream()
                .mapToDouble(f -> f.joint.failure(margin * f.charge))
                .average()
                .orElse(0);
    }

    /** The margin on the charge found at which the mean flight failure is as asked for: known only to who knows the truth. */
    double marginFor(double failure) {
        double low = 1;
        double high = 5;
        for (int i = 0; i < 40; i++) {
            double middle = Math.sqrt(low * high);
            if (failure(middle) > failure) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    String row(String name, double margin) {
        List<Double> overcharges =
                flown.stream().map(f -> margin * f.charge / f.joint.charge99()).toList();
        double both = flown.stream()
                .mapToDouble(f ->
                        f.joint.failure(margin * f.charge) * (Double.isNaN(f.backup) ? 1 : f.joint.failure(f.backup)))
                .average()
                .orElse(0);
        return String.format(
                Locale.ROOT,
                "| %s | %.2f | %.0f | %.2f %% | %.2f %% | ×%.3f | ×%.3f | %.3f | ×%.2f | %.1f %% | %d |",
                name,
                meanTests(),
                quantile(tests, 0.9),
                100 * failure(margin),
                100 * both,
                quantile(overcharges, 0.5),
                quantile(overcharges, 0.9),
                overcharges.stream().mapToDouble(Math::log).average().orElse(0),
                quantile(highest, 0.9),
                100.0 * (tests.size() - flown.size()) / tests.size(),
                violations);
    }

    static double quantile(List<Double> values, double p) {
        return values.stream().sorted().toList().get((int) (p * (values.size() - 1)));
    }
}
