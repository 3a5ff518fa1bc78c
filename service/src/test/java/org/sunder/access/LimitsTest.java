package org.sunder.access;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.annotation.DirtiesContext;
import org.sunder.Client;

/** Who asks too often waits; others do not. */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = {
            "spring.datasource.url=jdbc:h2:mem:limits;DB_CLOSE_DELAY=-1",
            "sunder.access.keys=true",
            "sunder.access.requests-per-minute=12",
            "sunder.access.failed-keys-per-minute=3",
            "sunder.data-folder=target/limited"
        })
@Import(Client.class)
@DirtiesContext
class LimitsTest {

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Test
    void aKeyThatAsksTooOftenWaitsAndOthersGoOn() {
        Client busy = client.with(
                keys.issue(CurrentFlyer.LOCAL, "busy", Scope.FULL, null).secret());
        var refused = busy.get("/api/airframes");
        for (int i = 0; i < 60 && refused.status() == 200; i++) {
            assertThat(i)
                    .as("twelve a minute, and what a slow machine gets back meanwhile")
                    .isLessThan(50);
            refused = busy.get("/api/airframes");
        }
        assertThat(refused.status()).isEqualTo(429);
        assertThat(Integer.parseInt(refused.header("Retry-After"))).isBetween(1, 60);
        assertThat(refused.body().path("type").asString()).isEqualTo("/problems/too-many-requests");
        Client other = client.with(
                keys.issue(CurrentFlyer.LOCAL, "other", Scope.FULL, null).secret());
        assertThat(other.get("/api/airframes").status()).isEqualTo(200);
        var wrong = client.with("sunder_wrong").get("/api/airframes");
        assertThat(wrong.status()).isEqualTo(401);
        for (int i = 0; i < 10 && wrong.status() == 401; i++) {
            wrong = client.with("sunder_wrong").get("/api/airframes");
        }
        assertThat(wrong.status()).isEqualTo(429);
        assertThat(other.get("/api/airframes").status())
                .as("a good key is not locked out")
                .isEqualTo(200);
    }
}
