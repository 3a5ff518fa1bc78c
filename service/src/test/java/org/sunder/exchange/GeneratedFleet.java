package org.sunder.exchange;

import java.util.Random;
import org.sunder.Client;
import org.sunder.Samples;

/** A fleet made by chance, entered as a flyer would: digits, units, words in many scripts, voids, archived things. */
public final class GeneratedFleet {

    private static final String[] WORDS = {
        "plain", "=SUM(A1)", "Ünïcode é", "日本語", "quote \\\" and, comma", "two\\nlines", "-1", "🚀", "  spaced  ", "@x"
    };
    private static final String[] OUTCOMES = {"none", "partial", "separated"};

    private final Client client;
    private final Random random;

    public GeneratedFleet(Client client, long seed) {
        this.client = client;
        this.random = new Random(seed);
    }

    /** Enters it. */
    public void enter() {
        stock();
        int airframes = 1 + random.nextInt(3);
        for (int i = 0; i < airframes; i++) {
            String body = "{\"name\":\"" + word() + " " + i + "\",\"units\":\""
                    + (random.nextBoolean() ? "us" : "metric")
                    + "\",\"notes\":\"" + word() + "\",\"outerDiameter\":{\"value\":" + (90 + random.nextInt(20))
                    + ".500,\"unit\":\"mm\"}}";
            String airframe = made(client.post("/api/airframes", body));
            String joint =
                    made(client.post(airframe + "/joints", Samples.JOINT.replace("\"value\":15,", "\"value\":15.10,")));
            tests(joint);
            if (random.nextBoolean()) {
                client.put(joint + "/setup", Samples.SETUP.replace("\"count\":3", "\"count\":4"), "If-Match", "*");
                tests(joint);
            }
            if (random.nextInt(4) == 0) {
                client.delete(airframe, "If-Match", "*");
            }
        }
    }

    private void stock() {
        made(client.post(
                "/api/powders",
                "{\"name\":\"" + word() + " tin\",\"powderForce\":{\"value\":215.0,\"unit\":\"kJ/kg\"},\"note\":\""
                        + word() + "\"}"));
        String batch = made(client.post("/api/pin-batches", "{\"name\":\"" + word() + "\",\"thread\":\"M2.5\"}"));
        for (int i = 0; i < random.nextInt(4); i++) {
            made(client.post(batch + "/pull-tests", "{\"force\":{\"value\":" + (190 + i) + ".0,\"unit\":\"N\"}}"));
        }
    }

    private void tests(String joint) {
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            String report = "{\"notes\":\"" + word() + "\","
                    + Samples.test(
                                    "0." + (60 + random.nextInt(40)) + "0",
                                    OUTCOMES[random.nextInt(OUTCOMES.length)],
                                    "2026-05-0" + (1 + random.nextInt(9)) + "T10:20:00.000001+05:30")
                            .substring(1);
            String test = made(client.post(joint + "/ground-tests", report));
            if (random.nextInt(3) == 0) {
                client.post(test + "/void", "{\"reason\":\"" + word() + "\"}");
            }
        }
        client.post(joint + "/flight-events", Samples.test("0.90", "separated"));
    }

    private String word() {
        return WORDS[random.nextInt(WORDS.length)];
    }

    private static String made(Client.Answer answer) {
        if (answer.status() != 201) {
            throw new AssertionError(answer.raw().body());
        }
        return answer.header("Location");
    }
}
