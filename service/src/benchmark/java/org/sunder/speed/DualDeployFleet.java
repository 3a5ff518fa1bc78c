package org.sunder.speed;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.Environment;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.SunderApplication;
import org.sunder.access.AccessKeys;
import org.sunder.access.Flyers;
import org.sunder.access.Scope;
import org.sunder.exchange.CopiedFleet;
import tools.jackson.databind.JsonNode;

/**
 * What people own: airframes with two joints of three tests each, every fifth with a second setup at one of them, under a flyer
 * of its own.
 *
 * @param base where the service is
 * @param key the flyer's key
 * @param airframes addresses, /api/airframes/…
 * @param joints addresses, /api/joints/…, in no order that follows airframes
 */
record DualDeployFleet(String base, String key, List<String> airframes, List<String> joints) {

    private static final int PATTERNS = 5;

    private static final String BOOSTER = """
            {"innerDiameter":{"value":95,"unit":"mm"},
             "cavity":[{"kind":"cylinder","innerDiameter":{"value":95,"unit":"mm"},"length":{"value":560,"unit":"mm"}}],
             "contents":[{"name":"coupler","kind":"intrusion","depth":{"value":95,"unit":"mm"},"diameter":{"value":95,"unit":"mm"}},
                         {"name":"drogue","kind":"fabric","material":"nylon","mass":{"value":45,"unit":"g"}}],
             "pins":[{"thread":"M2.5","count":2}],
             "fitForce":{"value":25,"unit":"N"},
             "shoulder":{"value":95,"unit":"mm"},
             "forwardMass":{"value":2.2,"unit":"kg"},"aftMass":{"value":2.8,"unit":"kg"},
             "ceiling":{"gaugePressure":{"value":300,"unit":"kPa"}},
             "measure":{"value":0.05,"unit":"g"}}""";

    /** The service with keys and as good as no limit of requests, on H2 in a folder. */
    static ConfigurableApplicationContext service(Path folder, Class<?>... more) {
        return new SpringApplicationBuilder(SunderApplication.class)
                .sources(more)
                .run(
                        "--sunder.data-folder=" + folder,
                        "--server.port=0",
                        "--logging.level.org.sunder=warn",
                        "--sunder.access.keys=true",
                        "--sunder.access.requests-per-minute=100000000");
    }

    /** Makes fleets under flyers of their own; what is copied into them is entered once. */
    static final class Maker {

        private final Environment environment;
        private final AccessKeys keys;
        private final Flyers flyers;
        private final Map<Integer, JsonNode> entered = new HashMap<>();

        Maker(ApplicationContext service) {
            this.environment = service.getEnvironment();
            this.keys = service.getBean(AccessKeys.class);
            this.flyers = service.getBean(Flyers.class);
        }

        /** A fleet of so many airframes: one, or a multiple of five. */
        DualDeployFleet of(int airframes) {
            if (airframes > 1 && airframes % PATTERNS != 0) {
                throw new IllegalArgumentException(airframes + " airframes; one, or a multiple of " + PATTERNS);
            }
            int patterns = Math.min(airframes, PATTERNS);
            JsonNode pattern = entered.computeIfAbsent(patterns, this::entered);
            String all = new CopiedFleet(pattern).times(airframes / patterns);
            String key = key();
            Client flyer = new Client(environment).with(key);
            Client.Answer taken = flyer.post("/api/import", all);
            if (taken.status() != 200) {
                throw new IllegalStateException(taken.raw().body());
            }
            JsonNode export = flyer.get("/api/export").body();
            String base = "http://127.0.0.1:" + environment.getProperty("local.server.port");
            return new DualDeployFleet(base, key, addresses(export, "airframes"), addresses(export, "joints"));
        }

        private JsonNode entered(int airframes) {
            Client client = new Client(environment).with(key());
            IntStream.range(0, airframes).forEach(i -> enter(client, i));
            return client.get("/api/export").body();
        }

        private String key() {
            return keys.issue(flyers.enter("someone").id(), "speed", Scope.FULL, null)
                    .secret();
        }

        private static void enter(Client client, int pattern) {
            String airframe = client.airframe();
            String nose = client.joint(airframe);
            String body = "{\"name\":\"booster to bay\",\"event\":\"drogue\",\"setup\":" + BOOSTER + "}";
            String booster = client.post(airframe + "/joints", body).header("Location");
            for (String joint : List.of(nose, booster)) {
                double charge = (joint.equals(nose) ? 0.80 : 0.95) + 0.02 * pattern;
                test(client, joint, charge, "none");
                test(client, joint, charge + 0.15, pattern % 2 == 0 ? "partial" : "separated");
                if (pattern == PATTERNS - 1 && joint.equals(nose)) {
                    client.put(joint + "/setup", Samples.SETUP.replace("\"value\":340", "\"value\":380"), "If-Match", "*");
                }
                test(client, joint, charge + 0.30, "separated");
            }
        }

        private static void test(Client client, String joint, double charge, String outcome) {
            String report = Samples.test(String.format(java.util.Locale.ROOT, "%.2f", charge), outcome);
            Client.Answer answer = client.post(joint + "/ground-tests", report);
            if (answer.status() != 201) {
                throw new IllegalStateException(answer.raw().body());
            }
        }

        private static List<String> addresses(JsonNode export, String kind) {
            return StreamSupport.stream(export.path(kind).spliterator(), false)
                    .map(row -> "/api/" + kind + "/" + row.path("id").asString())
                    .toList();
        }
    }

    Call get(String path) {
        return new Call(base + path, null, key);
    }

    Call post(String path, String body) {
        return new Call(base + path, body, key);
    }
}
