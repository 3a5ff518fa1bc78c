package org.sunder.durability;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.sunder.Patience;
import org.sunder.Samples;

/** A phone at the field: it logs one test after another, and what was not acknowledged it sends again, as it was. */
final class Phone {

    private static final List<String> OUTCOMES = List.of("none", "partial", "separated");

    /** A test as it is sent; its name is its idempotency key and stands in its notes. */
    private record Report(String name, String path, String body) {}

    private final String name;
    private final Caller service;
    private final List<String> joints;
    private final Random random;
    private final List<Report> unsure = new ArrayList<>();
    private final Map<Report, String> acknowledged = new LinkedHashMap<>();
    private int logged;

    /**
     * A phone.
     *
     * @param name begins the names of its reports
     * @param service asked by a key of the phone's own
     * @param joints addresses of those it logs to
     */
    Phone(String name, Caller service, List<String> joints, Random random) {
        this.name = name;
        this.service = service;
        this.joints = joints;
        this.random = random;
    }

    /**
     * Logs until the service is gone, or says that its database is.
     *
     * @param count counts what is acknowledged to all phones
     */
    void log(AtomicInteger count) {
        while (unsure.isEmpty()) {
            Report report = next();
            try {
                Caller.Answer answer = send(report);
                if (answer.status() == 201) {
                    acknowledged.put(report, answer.body());
                    count.incrementAndGet();
                } else {
                    assertAway(answer);
                    unsure.add(report);
                }
            } catch (IOException e) {
                unsure.add(report);
            }
        }
    }

    /** Sends what was not acknowledged until it is; then all that was, which is answered as it was. */
    void sendAgain() throws IOException, InterruptedException {
        for (Report report : List.copyOf(unsure)) {
            Patience patience = new Patience(() -> report);
            Caller.Answer answer = send(report);
            while (answer.status() != 201) {
                assertAway(answer);
                assertThat(patience.lasts()).as("still away").isTrue();
                Thread.sleep(50);
                answer = send(report);
            }
            acknowledged.put(report, answer.body());
        }
        unsure.clear();
        for (Map.Entry<Report, String> before : acknowledged.entrySet()) {
            assertThat(send(before.getKey()))
                    .as(before.getKey().name())
                    .isEqualTo(new Caller.Answer(201, before.getValue()));
        }
    }

    /** What must be in the log: the id of the test of each report by the report's name. Begins anew. */
    Map<String, String> takeAcknowledged() {
        Map<String, String> ids = new LinkedHashMap<>();
        acknowledged.forEach((report, answer) -> ids.put(
                report.name(),
                new Caller.Answer(201, answer).json().path("test").path("id").asString()));
        acknowledged.clear();
        return ids;
    }

    private Caller.Answer send(Report report) throws IOException {
        return service.post(report.path(), report.body(), report.name());
    }

    private static void assertAway(Caller.Answer answer) {
        assertThat(answer.status()).as(answer.body()).isEqualTo(503);
    }

    private Report next() {
        String report = name + " report " + ++logged;
        String body = Samples.test(
                        "0." + (50 + random.nextInt(50)),
                        OUTCOMES.get(random.nextInt(OUTCOMES.size())),
                        "2026-05-03T10:" + (10 + random.nextInt(50)) + ":00+01:00")
                .replaceFirst("}$", ",\"notes\":\"" + report + "\"}");
        return new Report(report, joints.get(random.nextInt(joints.size())) + "/ground-tests", body);
    }
}
