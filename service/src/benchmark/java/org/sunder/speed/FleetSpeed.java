package org.sunder.speed;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.springframework.context.ConfigurableApplicationContext;
import org.sunder.Samples;

/**
 * The main job over HTTP on {@link DualDeployFleet}s of several sizes, service and callers in one process; as multiples of
 * reading an airframe of the same fleet in the same run. On H2 in an empty folder. Argument: seconds of each measurement (20).
 */
public final class FleetSpeed {

    private static final int CALLERS = 8;
    private static final int FLYERS = 50;
    private static final String READ = "read an airframe";

    private final DualDeployFleet.Maker maker;
    private final long nanos;

    private FleetSpeed(DualDeployFleet.Maker maker, long nanos) {
        this.maker = maker;
        this.nanos = nanos;
    }

    /** Prints the tables of the dual-deploy fleet in service/docs/service-speed.md. */
    public static void main(String[] args) throws Exception {
        long seconds = args.length > 0 ? Long.parseLong(args[0]) : 20;
        Path folder = Files.createTempDirectory("sunder-speed");
        try (ConfigurableApplicationContext service = DualDeployFleet.service(folder)) {
            DualDeployFleet.Maker maker = new DualDeployFleet.Maker(service);
            new FleetSpeed(maker, seconds * 1_000_000_000L).report();
        }
    }

    private void report() throws Exception {
        walk(maker.of(15), 3 * nanos);
        System.out.printf("| airframes | %s | next charge, repeated | just after a test of another joint | ladder of depth 4, first"
                + " | repeated | log a test |%n|---|---|---|---|---|---|---|%n", READ);
        for (int airframes : List.of(1, 15, 100, 1000)) {
            row(airframes, walk(maker.of(airframes), nanos));
        }
        pages(maker.of(300));
        callers();
        System.gc();
        System.out.printf(Locale.ROOT, "%nHeap after all that, collected: %.0f MB of %.0f MB%n", Timing.heap(), most());
        many();
    }

    /** The times of each kind of call, in turn; every test is made void again, so that the fleet stays what it is. */
    private static Map<String, List<Double>> walk(DualDeployFleet fleet, long nanos) {
        Map<String, List<Double>> times = new LinkedHashMap<>();
        Stream.of(READ, "repeated", "after", "ladder", "ladder again", "log").forEach(kind -> times.put(kind, new ArrayList<>()));
        int joints = fleet.joints().size();
        long end = System.nanoTime() + nanos;
        for (int round = 0; System.nanoTime() < end; round++) {
            String one = fleet.joints().get(7 * round % joints);
            String other = fleet.joints().get((7 * round + 1) % joints);
            Call read = fleet.get(fleet.airframes().get(round % fleet.airframes().size()));
            times.get(READ).add(read.time());
            String first = log(fleet, other, times.get("log"));
            Call next = fleet.get(one + "/next-charge");
            times.get("after").add(next.time());
            times.get("repeated").add(next.time());
            times.get(READ).add(read.time());
            String second = log(fleet, other, times.get("log"));
            Call ladder = fleet.get(one + "/ladder?depth=4");
            times.get("ladder").add(ladder.time());
            times.get("ladder again").add(ladder.time());
            undo(fleet, first);
            undo(fleet, second);
        }
        return times;
    }

    private static String log(DualDeployFleet fleet, String joint, List<Double> times) {
        Call call = fleet.post(joint + "/ground-tests", Samples.test("1.10", "separated"));
        long start = System.nanoTime();
        String test = Objects.requireNonNull(call.send().location());
        times.add((System.nanoTime() - start) / 1e6);
        return test;
    }

    private static void undo(DualDeployFleet fleet, String test) {
        fleet.post(test + "/void", "{\"reason\":\"speed\"}").send();
    }

    private static void row(int airframes, Map<String, List<Double>> times) {
        double read = Timing.median(times.get(READ));
        System.out.printf(Locale.ROOT, "| %d | %.2f ms |", airframes, read);
        for (String kind : List.of("repeated", "after", "ladder", "ladder again", "log")) {
            double median = Timing.median(times.get(kind));
            System.out.printf(Locale.ROOT, " ×%.1f (%.1f ms) |", median / read, median);
        }
        System.out.println();
    }

    /** The pages of a fleet of many airframes, just after a test and again. */
    private void pages(DualDeployFleet fleet) {
        System.out.printf("%n| page, %d airframes | size | just after a test | again |%n|---|---|---|---|%n", fleet.airframes().size());
        for (String page : List.of("/", "/fleet")) {
            Call call = fleet.get(page);
            List<Double> after = new ArrayList<>();
            List<Double> again = new ArrayList<>();
            List<Double> read = new ArrayList<>();
            long end = System.nanoTime() + nanos;
            for (int round = 0; System.nanoTime() < end; round++) {
                String test = log(fleet, fleet.joints().get(7 * round % fleet.joints().size()), new ArrayList<>());
                after.add(call.time());
                again.add(call.time());
                read.add(fleet.get(fleet.airframes().get(round % fleet.airframes().size())).time());
                undo(fleet, test);
            }
            double one = Timing.median(read);
            System.out.printf(
                    Locale.ROOT,
                    "| `%s` | %.0f kB | ×%.1f (%.1f ms) | ×%.1f (%.1f ms) |%n",
                    page,
                    call.send().bytes() / 1000.0,
                    Timing.median(after) / one,
                    Timing.median(after),
                    Timing.median(again) / one,
                    Timing.median(again));
        }
    }

    /** Each asks for a next charge, logs a test of that joint and makes it void, in turn. */
    private void callers() throws Exception {
        System.out.println("\n| who | rounds a second | of one caller | median | slowest over median |\n|---|---|---|---|---|");
        DualDeployFleet one = maker.of(15);
        List<DualDeployFleet> own =
                Stream.generate(() -> maker.of(15)).limit(CALLERS).toList();
        rounds(1, caller -> one);
        double alone = rate("one caller", 1, caller -> one, 0);
        rate(CALLERS + " callers, one fleet", CALLERS, caller -> one, alone);
        rate(CALLERS + " callers, a fleet each", CALLERS, own::get, alone);
        rate("one caller again", 1, caller -> one, alone);
    }

    private double rate(String who, int callers, IntFunction<DualDeployFleet> fleets, double alone) throws Exception {
        long start = System.nanoTime();
        List<Double> times = rounds(callers, fleets);
        double rate = times.size() / 3.0 / ((System.nanoTime() - start) / 1e9);
        double median = Timing.median(times);
        System.out.printf(
                Locale.ROOT,
                "| %s | %.1f | %s | %.1f ms | ×%.1f |%n",
                who,
                rate,
                alone == 0 ? "" : String.format(Locale.ROOT, "×%.2f", rate / alone),
                median,
                Timing.quantile(times, 1) / median);
        return rate;
    }

    private List<Double> rounds(int callers, IntFunction<DualDeployFleet> fleets) throws Exception {
        long end = System.nanoTime() + nanos;
        return Timing.together(callers, caller -> {
            DualDeployFleet fleet = fleets.apply(caller);
            List<Double> times = new ArrayList<>();
            for (int round = caller; System.nanoTime() < end; round += callers) {
                String joint = fleet.joints().get(round % fleet.joints().size());
                times.add(fleet.get(joint + "/next-charge").time());
                String test = log(fleet, joint, times);
                long start = System.nanoTime();
                undo(fleet, test);
                times.add((System.nanoTime() - start) / 1e6);
            }
            return times;
        });
    }

    /** Many flyers with a fleet each, all of them asking, one after the other, twice. */
    private void many() {
        List<DualDeployFleet> fleets =
                Stream.generate(() -> maker.of(15)).limit(FLYERS).toList();
        for (String turn : List.of("first", "second")) {
            List<Double> times = new ArrayList<>();
            fleets.forEach(
                    fleet -> times.add(fleet.get(fleet.joints().get(0) + "/next-charge").time()));
            System.gc();
            System.out.printf(
                    Locale.ROOT,
                    "%n%d flyers, %s next charge of each: median %.1f ms; heap after that, collected: %.0f MB%n",
                    FLYERS,
                    turn,
                    Timing.median(times),
                    Timing.heap());
        }
    }

    private static double most() {
        return Runtime.getRuntime().maxMemory() / 1e6;
    }
}
