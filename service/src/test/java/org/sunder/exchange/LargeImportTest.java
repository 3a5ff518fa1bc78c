package org.sunder.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.InThoroughRuns;
import org.sunder.Thorough;
import org.sunder.access.AccessKeys;
import org.sunder.access.Flyers;
import org.sunder.access.KeyedServiceTest;
import org.sunder.access.Scope;

/** An import of 20 MB is taken in, one byte more is not; no body of that size fills the memory. */
@KeyedServiceTest
class LargeImportTest {

    private static final int LIMIT = 20 * 1024 * 1024;
    private static final int ROWS_OF = Thorough.count(2_000_000, 15_000_000); // the rest of the file is blank

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    Client one;
    Client other;
    String empty = "";

    @BeforeEach
    void prepare() {
        one = flyer();
        other = flyer();
        empty = other.get("/api/export").raw().body();
    }

    @Test
    void takesInTwentyMegabytesAndNotOneByteMore() {
        String large = CopiedFleet.ofOneAirframe(one).ofSize(ROWS_OF);
        String padded = large + " ".repeat(LIMIT - large.length());
        assertThat(padded.getBytes(StandardCharsets.UTF_8)).hasSize(LIMIT);
        assertRefused(413, other.post("/api/import", padded + " "));
        assertRefused(413, streamed(padded + " "));
        var taken = other.post("/api/import", padded);
        assertThat(taken.status()).as(taken.raw().body()).isEqualTo(200);
        assertThat(other.get("/api/export").raw().body()).isEqualTo(large);
    }

    @Test
    @InThoroughRuns
    void rowsAlreadyReadWhenTheLimitIsReachedAreNotKept() {
        String few = CopiedFleet.ofOneAirframe(one).ofSize(20_000);
        assertRefused(413, streamed(few.substring(0, few.length() - 2) + " ".repeat(LIMIT) + "]}"));
    }

    @Test
    void aRowOfNothingButBracketsIsNamed() {
        String begun = "{\"format\":\"sunder-export\",\"version\":1,\"airframes\":[";
        String wide = "[" + "[],".repeat(6_000_000) + "[]]";
        var refused = other.post("/api/import", begun + wide + "]}");
        assertRefused(400, refused);
        assertThat(refused.fault("/airframes/0").path("detail").asString()).contains("more in it than any row can");
        assertRefused(400, other.post("/api/import", begun + "[".repeat(6_000_000)));
        assertRefused(400, other.post("/api/import", begun + "{\"id\":\"" + "x".repeat(19_000_000) + "\"}]}"));
    }

    private void assertRefused(int status, Client.Answer answer) {
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(status);
        assertThat(answer.header("Content-Type")).startsWith("application/problem+json");
        assertThat(other.get("/api/export").raw().body()).isEqualTo(empty);
    }

    private Client.Answer streamed(String body) {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        return other.send(other.request("/api/import")
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(bytes))));
    }

    private Client flyer() {
        return client.with(keys.issue(flyers.enter("someone").id(), "test", Scope.FULL, null)
                .secret());
    }
}
