package org.sunder.speed;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.sunder.Client;
import org.sunder.Samples;

/**
 * A club over a season: many flyers with a {@link DualDeployFleet} each, at half of what the service can carry, for as long as
 * asked; then the same database with a million tests. Service and callers in one process. On H2 in an empty folder, or on the
 * empty database that SUNDER_DATABASE_URL names. Arguments: minutes of steady load (10), tests in the database at the end
 * (1,000,000).
 */
public final class Season {

    private static final int FLYERS = 50;
    private static final int AIRFRAMES = 15;
    private static final int CALLERS = 8;
    private static final List<String> KINDS = List.of("read an airframe", "next charge", "log a test", "bare handler");
    private static final String COPIED = """
            occasion, joint_id, setup_id, setup_revision, charge_value, charge_unit, outcome, damaged, speed_value, speed_unit,
            containment, notes, fired_offset_seconds, received_at, predicted_separated, predicted_partial, predicted_none,
            factor_median, factor_low, factor_high""";
    private static final String INTO = "insert into ground_test (flyer_id, id, fired_at, " + COPIED + ")"
            + " select flyer_id, %s, fired_at - n * interval '1' minute, " + COPIED
            + " from ground_test, %s where flyer_id = cast(? as uuid)";
    private final List<DualDeployFleet> fleets;
    private final Call bare;

    private Season(List<DualDeployFleet> fleets, Call bare) {
        this.fleets = fleets;
        this.bare = bare;
    }

    /** One call of a kind, with how long it took from when it was due. */
    private record Timed(String kind, double millis) {}

    /** Prints the tables of the section of a season in service/docs/service-speed.md. */
    public static void main(String[] args) throws Exception {
        double minutes = args.length > 0 ? Double.parseDouble(args[0]) : 10;
        long tests = args.length > 1 ? Long.parseLong(args[1]) : 1_000_000;
        Path folder = Files.createTempDirectory("sunder-season");
        try (ConfigurableApplicationContext service = DualDeployFleet.service(folder, BareRoutes.class)) {
            DualDeployFleet.Maker maker = new DualDeployFleet.Maker(service);
            List<DualDeployFleet> fleets =
                    Stream.generate(() -> maker.of(AIRFRAMES)).limit(FLYERS).toList();
            Season season = new Season(fleets, bare(service, folder, fleets.get(0).base()));
            season.steady((long) (minutes * 60e9));
            season.million(service.getBean(JdbcTemplate.class), tests);
        }
    }

    /** An airframe of the flyer whom the bare handler knows. */
    private static Call bare(ConfigurableApplicationContext service, Path folder, String base) throws Exception {
        String key = Files.readString(folder.resolve("first-admin-key.txt")).trim();
        String airframe = new Client(service.getEnvironment()).with(key).airframe();
        return new Call(base + airframe.replace("/api/", "/api/bare/"), null, key);
    }

    private void steady(long nanos) throws Exception {
        long trial = Math.min(nanos, 30_000_000_000L);
        load(trial, 0); // warm
        double peak = load(trial, 0).size() / (trial / 1e9);
        System.out.printf(
                Locale.ROOT, "%d flyers, %d callers, as fast as answered: %.0f calls/s%n%n", FLYERS, CALLERS, peak);
        System.out.println("| calls | of which | median | 95 % | 99 % | slowest | heap after, collected |");
        System.out.println("|---|---|---|---|---|---|---|");
        int parts = 5;
        for (int part = 1; part <= parts; part++) {
            List<Timed> calls = load(nanos / parts, peak / 2);
            System.gc();
            double heap = Timing.heap();
            for (String kind : KINDS) {
                List<Double> times =
                        calls.stream().filter(call -> call.kind().equals(kind)).map(Timed::millis).toList();
                System.out.printf(
                        Locale.ROOT,
                        "| %d, part %d of %d | %s | %.1f ms | %.1f ms | %.1f ms | %.1f ms | %.0f MB |%n",
                        times.size(),
                        part,
                        parts,
                        kind,
                        Timing.median(times),
                        Timing.quantile(times, 0.95),
                        Timing.quantile(times, 0.99),
                        Timing.quantile(times, 1),
                        heap);
            }
        }
    }

    /**
     * Calls of all flyers in turn: each reads an airframe, asks for a next charge, logs a test and makes it void, and the bare
     * handler is asked once. Any answer but a success ends it.
     *
     * @param rate calls a second of all callers, 0 for as fast as they are answered
     */
    private List<Timed> load(long nanos, double rate) throws Exception {
        List<Timed> all = Collections.synchronizedList(new ArrayList<>());
        long start = System.nanoTime();
        Timing.together(CALLERS, caller -> {
            long[] sent = {0};
            for (int round = caller; System.nanoTime() - start < nanos; round += CALLERS) {
                DualDeployFleet fleet = fleets.get(round % FLYERS);
                String joint = fleet.joints().get(round / FLYERS % fleet.joints().size());
                String airframe = fleet.airframes().get(round / FLYERS % AIRFRAMES);
                Runnable[] calls = {
                    () -> fleet.get(airframe).send(), () -> fleet.get(joint + "/next-charge").send(), () -> log(fleet, joint), bare::send
                };
                for (int kind = 0; kind < calls.length; kind++) {
                    long due = rate == 0
                            ? System.nanoTime()
                            : start + (long) (1e9 / rate * (CALLERS * sent[0]++ + caller));
                    LockSupport.parkNanos(due - System.nanoTime());
                    calls[kind].run();
                    all.add(new Timed(KINDS.get(kind), (System.nanoTime() - due) / 1e6));
                }
            }
            return List.of();
        });
        return all;
    }

    private static void log(DualDeployFleet fleet, String joint) {
        String test = Objects.requireNonNull(
                fleet.post(joint + "/ground-tests", Samples.test("1.10", "separated")).send().location());
        fleet.post(test + "/void", "{\"reason\":\"season\"}").send();
    }

    /** The main path of one flyer, before and after the others' logs have grown; what grows is written past the service. */
    private void million(JdbcTemplate jdbc, long tests) {
        Map<String, Double> few = path();
        long before = count(jdbc);
        boolean h2 = Boolean.TRUE.equals(jdbc.execute((ConnectionCallback<Boolean>)
                connection -> connection.getMetaData().getDatabaseProductName().equals("H2")));
        long own = Objects.requireNonNull(jdbc.queryForObject(
                "select count(*) from ground_test group by flyer_id order by flyer_id desc fetch first row only", Long.class));
        long copies = Math.max(1, (tests - before) / (own * (FLYERS - 1)));
        String insert = INTO.formatted(
                h2 ? "random_uuid()" : "gen_random_uuid()",
                (h2 ? "system_range(1, " : "generate_series(1, ") + copies + ") as copy(n)");
        List<String> others = jdbc.queryForList("select distinct cast(flyer_id as varchar) from ground_test", String.class);
        String first = last(jdbc);
        others.stream().filter(flyer -> !flyer.equals(first)).forEach(flyer -> jdbc.update(insert, flyer));
        long after = count(jdbc);
        Map<String, Double> many = path();
        System.out.printf(Locale.ROOT, "%n| main path of one flyer | %,d tests in all | %,d | ratio |%n|---|---|---|---|%n", before, after);
        few.forEach((kind, time) -> System.out.printf(
                Locale.ROOT, "| %s | %.2f ms | %.2f ms | ×%.2f |%n", kind, time, many.get(kind), many.get(kind) / time));
        System.out.printf(Locale.ROOT, "%nln of the one over ln of the other: %.2f%n", Math.log(after) / Math.log(before));
    }

    /** Who logged last: all have the same fleet, with the same ids. */
    private static String last(JdbcTemplate jdbc) {
        return Objects.requireNonNull(jdbc.queryForObject(
                "select cast(flyer_id as varchar) from ground_test order by received_at desc fetch first row only", String.class));
    }

    private static long count(JdbcTemplate jdbc) {
        return Objects.requireNonNull(jdbc.queryForObject("select count(*) from ground_test", Long.class));
    }

    private Map<String, Double> path() {
        DualDeployFleet fleet = fleets.get(0);
        String joint = fleet.joints().get(0);
        Map<String, Runnable> calls = new LinkedHashMap<>();
        calls.put("read an airframe", () -> fleet.get(fleet.airframes().get(0)).send());
        calls.put("first page", () -> fleet.get("/").send());
        calls.put("a joint's tests", () -> fleet.get(joint + "/ground-tests").send());
        calls.put("next charge", () -> fleet.get(joint + "/next-charge").send());
        calls.put("log a test and make it void", () -> log(fleet, joint));
        Map<String, Double> medians = new LinkedHashMap<>();
        calls.forEach((kind, call) -> {
            List<Double> times = new ArrayList<>();
            for (int i = 0; i < 60; i++) {
                long start = System.nanoTime();
                call.run();
                times.add((System.nanoTime() - start) / 1e6);
            }
            medians.put(kind, Timing.median(times.subList(20, times.size())));
        });
        return medians;
    }
}
