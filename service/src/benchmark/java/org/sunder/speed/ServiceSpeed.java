package org.sunder.speed;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.sunder.Samples;
import org.sunder.SunderApplication;

/**
 * The service over HTTP against {@link BareRoutes}, both in one process, called in turn; times by the clock, so the ratios
 * count and not the milliseconds. On H2 in an empty folder, or on the empty database that SUNDER_DATABASE_URL names.
 * Argument: seconds for each measurement (20), warm-up three times as long.
 */
public final class ServiceSpeed {

    private static final int AIRFRAMES = 10;
    private static final int JOINTS_LOGGED = 20;
    private static final int FEW = 1000;
    private static final int MANY = 100_000;

    private final String base;
    private final long nanos;

    private ServiceSpeed(String base, long nanos) {
        this.base = base;
        this.nanos = nanos;
    }

    /** Prints the tables of service/docs/service-speed.md. */
    public static void main(String[] args) throws Exception {
        long seconds = args.length > 0 ? Long.parseLong(args[0]) : 20;
        Path folder = Files.createTempDirectory("sunder-speed");
        try (ConfigurableApplicationContext service = new SpringApplicationBuilder(
                        SunderApplication.class, BareRoutes.class)
                .run("--sunder.data-folder=" + folder, "--server.port=0", "--logging.level.org.sunder=warn")) {
            String base = "http://127.0.0.1:" + service.getEnvironment().getProperty("local.server.port");
            new ServiceSpeed(base, seconds * 1_000_000_000L).report(service.getBean(JdbcTemplate.class));
        }
    }

    private void report(JdbcTemplate jdbc) throws Exception {
        String airframe = "";
        String joint = "";
        for (int i = 0; i < AIRFRAMES; i++) {
            airframe = created("/api/airframes", Samples.AIRFRAME);
            joint = created(airframe + "/joints", Samples.JOINT);
            for (int k = 0; k < 5; k++) {
                created(joint + "/ground-tests", Samples.test("0." + (75 + 5 * k % 25), k % 2 == 0 ? "separated" : "none"));
            }
        }
        Call get = get(airframe);
        Call list = get(joint + "/ground-tests");
        Call next = get(joint + "/next-charge");
        Call bareGet = get(airframe.replace("/api/", "/api/bare/"));
        Call bareList = get(joint.replace("/api/", "/api/bare/") + "/ground-tests");
        Timing.interleaved(List.of(get, bareGet, list, bareList, next), 3 * nanos);
        System.out.println("| what | median | of the bare handler's speed |\n|---|---|---|");
        ratio("read an airframe", get, bareGet);
        ratio("list a joint's tests", list, bareList);
        logging(jdbc);
        System.out.println("\n| at half of the peak | calls/s | median | 99 % | 99 % over median |\n|---|---|---|---|---|");
        double p99 = paced("read an airframe", get);
        double nextP99 = paced("next charge", next);
        System.out.printf(Locale.ROOT, "%nNext charge, 99 %%, over reading an airframe, 99 %%: ×%.2f%n", nextP99 / p99);
        pages(jdbc, created("/api/airframes", Samples.AIRFRAME));
    }

    private Call get(String path) {
        return new Call(base + path, null);
    }

    private String created(String path, String body) {
        @Nullable String location = new Call(base + path, body).send().location();
        if (location == null) {
            throw new IllegalStateException(path + " gave no Location");
        }
        return location;
    }

    private void ratio(String name, Call call, Call bare) {
        List<List<Double>> times = Timing.interleaved(List.of(call, bare), nanos);
        row(name, times.get(0), times.get(1));
    }

    private static void row(String name, List<Double> own, List<Double> bare) {
        double median = Timing.quantile(own, 0.5);
        System.out.printf(Locale.ROOT, "| %s | %.2f ms | %.2f |%n", name, median, Timing.quantile(bare, 0.5) / median);
    }

    /** A few tests of each of many joints; what the bare handler logs is taken out again, so that it teaches nothing. */
    private void logging(JdbcTemplate jdbc) {
        List<Double> own = new ArrayList<>();
        List<Double> bare = new ArrayList<>();
        String report = Samples.test("0.85", "partial");
        for (int i = 0; i < JOINTS_LOGGED; i++) {
            String joint = created(created("/api/airframes", Samples.AIRFRAME) + "/joints", Samples.JOINT);
            for (int k = 0; k < 5; k++) {
                long start = System.nanoTime();
                String id = created(joint.replace("/api/", "/api/bare/") + "/ground-tests", report);
                bare.add((System.nanoTime() - start) / 1e6);
                jdbc.update("delete from ground_test where id = cast(? as uuid)", id.substring(id.lastIndexOf('/') + 1));
                own.add(new Call(base + joint + "/ground-tests", report).time());
            }
        }
        row("log a test, next charge included", own.subList(own.size() / 2, own.size()), bare);
    }

    /** Calls at half the rate that two callers reach, timed from when each was due; answers the 99th percentile. */
    private double paced(String name, Call call) throws Exception {
        int callers = 2;
        int peak = Timing.together(callers, caller -> Timing.interleaved(List.of(call), nanos / 4).get(0)).size();
        double rate = peak / (nanos / 4e9) / 2;
        long start = System.nanoTime();
        List<Double> times = Timing.together(4 * callers, caller -> {
            List<Double> own = new ArrayList<>();
            double gap = 1e9 * 4 * callers / rate;
            for (int i = 0; gap * (i + 1) < nanos; i++) {
                long due = start + (long) (gap * (i + caller / (4.0 * callers)));
                LockSupport.parkNanos(due - System.nanoTime());
                call.send();
                own.add((System.nanoTime() - due) / 1e6);
            }
            return own;
        });
        double median = Timing.quantile(times, 0.5);
        double p99 = Timing.quantile(times, 0.99);
        System.out.printf(
                Locale.ROOT, "| %s | %.0f | %.2f ms | %.2f ms | ×%.1f |%n", name, rate, median, p99, p99 / median);
        return p99;
    }

    /** The first page of a joint with few tests and of one with many, written past the service. */
    private void pages(JdbcTemplate jdbc, String airframe) {
        String few = created(airframe + "/joints", Samples.JOINT);
        String many = created(airframe + "/joints", Samples.JOINT);
        fill(jdbc, few, FEW);
        fill(jdbc, many, MANY);
        List<Call> calls = List.of(get(few + "/ground-tests"), get(many + "/ground-tests"));
        Timing.interleaved(calls, nanos / 2);
        List<List<Double>> times = Timing.interleaved(calls, nanos);
        System.out.printf(
                Locale.ROOT,
                "%nFirst page of %d tests over that of %d: ×%.2f (%.2f ms)%n",
                MANY,
                FEW,
                Timing.quantile(times.get(1), 0.5) / Timing.quantile(times.get(0), 0.5),
                Timing.quantile(times.get(1), 0.5));
    }

    private void fill(JdbcTemplate jdbc, String joint, int count) {
        String first = created(joint + "/ground-tests", Samples.test("0.85", "partial"));
        String id = first.substring(first.lastIndexOf('/') + 1);
        String copy = """
                insert into ground_test select flyer_id, cast(? as uuid), occasion, joint_id, setup_id, setup_revision,
                  charge_value, charge_unit, outcome, damaged, speed_value, speed_unit, containment, notes,
                  fired_at - cast(? as integer) * interval '1' minute, fired_offset_seconds, received_at,
                  predicted_separated, predicted_partial, predicted_none, factor_median, factor_low, factor_high
                from ground_test where flyer_id = cast('%s' as uuid) and id = cast(? as uuid)""".formatted(BareRoutes.FLYER);
        List<Object[]> rows = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            rows.add(new Object[] {UUID.randomUUID().toString(), i, id});
            if (rows.size() == 1000 || i == count - 1) {
                jdbc.batchUpdate(copy, rows);
                rows.clear();
            }
        }
    }
}
