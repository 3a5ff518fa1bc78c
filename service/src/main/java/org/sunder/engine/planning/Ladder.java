package org.sunder.engine.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The plan rolled forward over the outcomes, to be taken to the field on paper.
 *
 * @param root what to do first; its consequences go {@code depth} firings deep
 * @param depth firings looked ahead
 * @param doneAfter chance that a flight charge is found after at most 0, 1, … depth firings
 * @param packing what to pack so that it suffices nine times in ten
 */
public record Ladder(NextStep root, int depth, List<Double> doneAfter, Packing packing) {

    /** Deepest ladder; each further firing takes three times the work. */
    public static final int DEEPEST = 4;

    /** Powder to pack over what is to be loaded: spills and a misfire happen. The project's own choice. */
    private static final double SPARE = 1.25;

    /** Share of the cases that the packing list covers. */
    private static final double COVERED = 0.90;

    public Ladder {
        doneAfter = List.copyOf(doneAfter);
    }

    /**
     * What to pack.
     *
     * @param tests firings
     * @param powder powder for the tests and for the flight and backup charge after them, with a quarter to spare, kg
     * @param igniters one per firing, and two for the flight
     * @param open whether more than one case in ten needs more firings than the ladder looks ahead
     */
    public record Packing(int tests, double powder, int igniters, boolean open) {}

    /** One way through the ladder. */
    private record Path(double probability, int tests, double powder, boolean stopped, boolean open) {}

    /**
     * The ladder of a case.
     *
     * @param depth firings looked ahead, 1 to {@link #DEEPEST}
     */
    public static Ladder of(PlanningCase on, int depth) {
        if (depth < 1 || depth > DEEPEST) {
            throw new IllegalArgumentException("a ladder looks 1 to " + DEEPEST + " firings ahead, not " + depth);
        }
        NextStep root = Planner.ladder(on, depth);
        List<Path> paths = new ArrayList<>();
        walk(root, 1, 0, 0, paths);
        List<Double> doneAfter = new ArrayList<>();
        for (int n = 0; n <= depth; n++) {
            int most = n;
            doneAfter.add(paths.stream()
                    .filter(path -> path.stopped() && path.tests() <= most)
                    .mapToDouble(Path::probability)
                    .sum());
        }
        return new Ladder(root, depth, doneAfter, packing(paths));
    }

    private static void walk(NextStep step, double probability, int tests, double powder, List<Path> paths) {
        if (step instanceof NextStep.Stop stop) {
            FlightCharge flight = stop.flightCharge();
            double total = powder + flight.charge() + flight.backup().charge();
            paths.add(new Path(probability, tests, total, true, false));
        } else if (step instanceof NextStep.Fire fire) {
            double fired = powder + fire.charge();
            if (fire.then().isEmpty()) {
                paths.add(new Path(probability, tests + 1, fired, false, true));
            }
            for (NextStep.Consequence consequence : fire.then()) {
                double chance = fire.probabilities().of(consequence.outcome());
                walk(consequence.step(), probability * chance, tests + 1, fired, paths);
            }
        } else {
            paths.add(new Path(probability, tests, powder, false, false));
        }
    }

    private static Packing packing(List<Path> paths) {
        double open =
                paths.stream().filter(Path::open).mapToDouble(Path::probability).sum();
        int tests = quantile(paths, Comparator.comparingDouble(Path::tests)).tests();
        double powder =
                quantile(paths, Comparator.comparingDouble(Path::powder)).powder();
        return new Packing(tests, SPARE * powder, tests + 2, open > 1 - COVERED);
    }

    /** The path that covers 90 % of the cases in the given order. */
    private static Path quantile(List<Path> paths, Comparator<Path> order) {
        List<Path> sorted = paths.stream().sorted(order).toList();
        double sum = 0;
        for (Path path : sorted) {
            sum += path.probability();
            if (sum >= COVERED) {
                return path;
            }
        }
        return sorted.get(sorted.size() - 1);
    }
}
