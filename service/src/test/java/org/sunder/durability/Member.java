package org.sunder.durability;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.sunder.Samples;
import tools.jackson.databind.JsonNode;

/** A flyer with a rocket that parts at two joints, and phones that log to them, each with a key of its own. */
final class Member {

    private static final int PHONES = 3;
    private static final List<String> ANSWERS = List.of("/next-charge", "/flight-charge");

    private final Caller service;
    private final List<String> joints = new ArrayList<>();
    private final List<Phone> phones = new ArrayList<>();
    private final Map<String, String> acknowledged = new LinkedHashMap<>();

    /**
     * Enters one.
     *
     * @param keeper asks by the key of whoever looks after the service
     */
    Member(Caller keeper, String name, Random random) throws IOException {
        String flyer = entered(keeper, name);
        this.service = keeper.with(key(keeper, flyer, "full"));
        String airframe = "/api/airframes/"
                + service.enter("/api/airframes", Samples.AIRFRAME).path("id").asString();
        for (String joint : List.of("nose", "tail")) {
            JsonNode made = service.enter(airframe + "/joints", Samples.JOINT.replace("nose to bay", joint));
            joints.add("/api/joints/" + made.path("id").asString());
        }
        for (int i = 1; i <= PHONES; i++) {
            Caller own = keeper.with(key(keeper, flyer, "log-only"));
            phones.add(new Phone(name + " phone " + i, own, joints, new Random(random.nextLong())));
        }
    }

    /** Enters a flyer. @return its address */
    static String entered(Caller keeper, String name) throws IOException {
        return "/api/flyers/"
                + keeper.enter("/api/flyers", "{\"name\":\"" + name + "\"}")
                        .path("id")
                        .asString();
    }

    /** Gives a flyer a key. @return its text */
    static String key(Caller keeper, String flyer, String scope) throws IOException {
        String asked = "{\"name\":\"key\",\"scope\":\"" + scope + "\"}";
        return keeper.enter(flyer + "/access-keys", asked).path("key").asString();
    }

    List<Phone> phones() {
        return phones;
    }

    /**
     * Holds the log against what was acknowledged, each test there once and no other, and the answers against those that another
     * service works out from the log alone.
     */
    void check(FreshService fresh) throws IOException {
        phones.forEach(phone -> acknowledged.putAll(phone.takeAcknowledged()));
        Caller.Answer export = service.get("/api/export");
        assertThat(export.status()).as(export.body()).isEqualTo(200);
        List<String> logged = new ArrayList<>();
        for (JsonNode test : export.json().path("groundTests")) {
            logged.add(test.path("notes").asString() + " " + test.path("id").asString());
        }
        assertThat(logged)
                .containsExactlyInAnyOrderElementsOf(acknowledged.entrySet().stream()
                        .map(report -> report.getKey() + " " + report.getValue())
                        .toList());
        Caller anew = fresh.told(export.body());
        assertThat(anew.get("/api/export")).isEqualTo(export);
        for (String joint : joints) {
            for (String answer : ANSWERS) {
                assertThat(said(service, joint + answer)).as(joint + answer).isEqualTo(said(anew, joint + answer));
            }
        }
    }

    /** What is answered, but for the name of the request. */
    private static String said(Caller caller, String path) throws IOException {
        Caller.Answer answer = caller.get(path);
        return answer.status() + " " + answer.body().replaceFirst("\"requestId\":\"[^\"]*\"", "");
    }

    int acknowledged() {
        return acknowledged.size();
    }
}
