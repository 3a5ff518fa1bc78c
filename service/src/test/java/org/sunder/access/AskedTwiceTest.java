package org.sunder.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.sunder.Client;

/** Flyers and keys asked for twice are made once; a key is shown once all the same. */
@KeyedServiceTest
class AskedTwiceTest {

    private static final String PHONE = "{\"name\":\"phone\",\"scope\":\"log-only\"}";
    private static final String PHONE_IN_OTHER_WORDS = "{ \"scope\": \"log-only\",\n \"name\": \"phone\" }";
    private static final String LAPTOP = "{\"name\":\"laptop\",\"scope\":\"full\"}";

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    @Autowired
    JdbcTemplate jdbc;

    Client admin;
    Client full;

    @BeforeEach
    void prepare() {
        admin = client.with(
                keys.issue(CurrentFlyer.LOCAL, "admin", Scope.ADMIN, null).secret());
        full = client.with(keys.issue(flyers.enter("someone").id(), "full", Scope.FULL, null)
                .secret());
    }

    @Test
    void aKeyAskedForTwiceIsMadeOnceAndNamed() {
        var made = full.post("/api/access-keys", PHONE, "Idempotency-Key", "a");
        assertThat(made.status()).isEqualTo(201);
        assertThat(made.header("Location"))
                .isEqualTo("/api/access-keys/" + made.body().path("id").asString());
        assertShownOnce(made, full.post("/api/access-keys", PHONE_IN_OTHER_WORDS, "Idempotency-Key", "a"));
        assertThat(full.get("/api/access-keys").body().path("items")).hasSize(2);
        String secret = made.body().path("key").asString();
        assertThat(client.with(secret).get("/api/airframes").status()).isEqualTo(200);
        assertThat(full.post("/api/access-keys", LAPTOP, "Idempotency-Key", "a").status())
                .isEqualTo(422);
        assertThat(full.post("/api/access-keys", PHONE, "Idempotency-Key", "b").status())
                .isEqualTo(201);
    }

    @Test
    void aFlyersKeyAskedForTwiceIsMadeOnceAndNamed() {
        String one = admin.post("/api/flyers", "{\"name\":\"one\"}").header("Location") + "/access-keys";
        String other = admin.post("/api/flyers", "{\"name\":\"other\"}").header("Location") + "/access-keys";
        var made = admin.post(one, PHONE, "Idempotency-Key", "flyer");
        assertThat(made.status()).isEqualTo(201);
        assertShownOnce(made, admin.post(one, PHONE, "Idempotency-Key", "flyer"));
        assertThat(admin.get(one).body().path("items")).hasSize(1);
        assertThat(admin.post(one, LAPTOP, "Idempotency-Key", "flyer").status()).isEqualTo(422);
        assertThat(admin.post(other, PHONE, "Idempotency-Key", "flyer").status())
                .isEqualTo(201);
    }

    @Test
    void aFlyerEnteredTwiceIsOneFlyer() {
        String name = "{\"name\":\"entered once\"}";
        var made = admin.post("/api/flyers", name, "Idempotency-Key", "entered");
        var again = admin.post("/api/flyers", name, "Idempotency-Key", "entered");
        assertThat(made.status()).isEqualTo(201);
        assertThat(again.status()).isEqualTo(201);
        assertThat(again.raw().body()).isEqualTo(made.raw().body());
        assertThat(again.header("Location")).isEqualTo(made.header("Location"));
        assertThat(admin.post("/api/flyers", "{\"name\":\"x\"}", "Idempotency-Key", "entered")
                        .status())
                .isEqualTo(422);
        assertThat(flyers.all().stream().map(Flyer::name)).containsOnlyOnce("entered once");
    }

    @Test
    void noStoredAnswerHoldsAKey() {
        String secret = full.post("/api/access-keys", PHONE, "Idempotency-Key", "kept")
                .body()
                .path("key")
                .asString();
        String unseen = secret.substring(secret.length() - 20);
        List<String> kept = jdbc.queryForList("select * from idempotent_answer where idempotency_key = 'kept'").stream()
                .map(String::valueOf)
                .toList();
        assertThat(kept).singleElement().asString().doesNotContain(unseen);
    }

    @Test
    void manyEqualRequestsAtOnceMakeOneKey() {
        List<Client.Answer> answers = IntStream.range(0, 32)
                .mapToObj(i -> CompletableFuture.supplyAsync(
                        () -> full.post("/api/access-keys", PHONE, "Idempotency-Key", "many"),
                        work -> new Thread(work).start()))
                .toList()
                .stream()
                .map(CompletableFuture::join)
                .toList();
        assertThat(answers.stream().map(Client.Answer::status))
                .containsOnlyOnce(201)
                .allMatch(status -> status == 201 || status == 409);
        assertThat(full.get("/api/access-keys").body().path("items")).hasSize(2);
    }

    private static void assertShownOnce(Client.Answer made, Client.Answer again) {
        assertThat(again.status()).as(again.raw().body()).isEqualTo(409);
        assertThat(again.body().path("type").asString()).isEqualTo("/problems/shown-once");
        assertThat(again.body().path("detail").asString())
                .contains(made.body().path("id").asString())
                .contains(made.body().path("prefix").asString())
                .contains("shown once", "revoke it", "new Idempotency-Key");
        assertThat(again.raw().body()).doesNotContain(made.body().path("key").asString());
    }
}
