package org.sunder.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.sunder.Client;
import org.sunder.Samples;

/** The log holds no key, and no line that a caller wrote. */
@KeyedServiceTest
@ExtendWith(OutputCaptureExtension.class)
class LogTest {

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    @Test
    void noKeyStandsInIt(CapturedOutput output) {
        String secret =
                keys.issue(flyers.enter("a").id(), "test", Scope.FULL, null).secret();
        Client full = client.with(secret);
        full.airframe();
        full.post("/api/airframes", "{\"name\":\"" + secret + "\",\"units\":\"" + secret + "\"}");
        full.get("/api/airframes?cursor=" + secret);
        full.get("/nothing/" + secret);
        String other = full.post("/api/access-keys", "{\"name\":\"b\",\"scope\":\"full\"}")
                .body()
                .path("key")
                .asString();
        String wrong = "sunder_wrongwrongwrong";
        client.with(wrong).get("/api/airframes");
        assertThat(output.getAll()).doesNotContain(secret).doesNotContain(other).doesNotContain(wrong);
    }

    @Test
    void whoComesInAndWhoIsRefusedStandsInIt(CapturedOutput output) {
        UUID flyer = flyers.enter("a").id();
        IssuedKey guest = keys.issue(flyer, "guest", Scope.READ_ONLY, null);
        UUID session =
                keys.openSession(keys.find(guest.secret()).orElseThrow()).key().id();
        client.with("sunder_wrong").get("/api/airframes");
        client.with(guest.secret()).post("/api/airframes", Samples.AIRFRAME);
        keys.revoke(flyer, guest.key().id());
        String key = " key " + guest.key().id() + " of flyer " + flyer;
        assertThat(output.getAll())
                .contains("The" + key + " was made: read-only")
                .contains("The session " + session + " of flyer " + flyer + " was made")
                .contains("A key was refused, from 127.0.0.1")
                .contains("Not allowed to the" + key + ": POST /api/airframes")
                .contains("The" + key + " was revoked");
    }

    @Test
    void noLineOfACallerStandsInIt(CapturedOutput output) {
        LoggerFactory.getLogger("org.sunder.access").warn("asked for {}", "a\r\n2026-05-03 ERROR forged\nforged");
        assertThat(output.getAll().lines().filter(line -> line.contains("asked for")))
                .singleElement()
                .asString()
                .endsWith("asked for a 2026-05-03 ERROR forged forged");
        assertThat(output.getAll().lines()).noneMatch(line -> line.startsWith("2026-05-03 ERROR"));
    }
}
