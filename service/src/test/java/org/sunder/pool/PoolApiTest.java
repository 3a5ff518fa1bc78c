package org.sunder.pool;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.access.AccessKeys;
import org.sunder.access.Flyer;
import org.sunder.access.Flyers;
import org.sunder.access.KeyedServiceTest;
import org.sunder.access.Scope;

/** What flyers who share teach another one, over HTTP: who is in it, what answers rest on it, and what it never tells. */
@KeyedServiceTest
class PoolApiTest {

    private static final String SNAPSHOTS = "/api/pool/snapshots";
    private static final String[] OUTCOMES = {"none", "partial", "separated"};
    private static final double PATTERN = 0.8;
    private static final double STEP = 0.1; // g

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    @Autowired
    EmptyLog log;

    Client keeper;
    String pattern;
    final List<UUID> entered = new ArrayList<>();

    @BeforeEach
    void nobodyShares() {
        log.empty();
        keeper = with("keeper", Scope.ADMIN);
        Client first = with("pattern", Scope.FULL);
        fire(first, first.joint(), PATTERN);
        pattern = first.get("/api/export").raw().body();
        for (int i = 0; i < OUTCOMES.length; i++) {
            String charge = String.format(Locale.ROOT, "%.2f", PATTERN + STEP * i);
            assertThat(pattern).contains("\"chargeValue\":\"" + charge + "\"");
            pattern = pattern.replace("\"chargeValue\":\"" + charge, "\"chargeValue\":\"charge " + i);
        }
    }

    @AfterEach
    void leavesNoSnapshot() {
        log.empty();
    }

    private Client with(String name, Scope scope) {
        Flyer flyer = flyers.enter(name);
        entered.add(flyer.id());
        return client.with(keys.issue(flyer.id(), name, scope, null).secret());
    }

    /** Flyers with one joint each, three tests at it, alike but for their charges. */
    private List<Client> tested(int count) {
        return IntStream.range(0, count).mapToObj(i -> tested(0.80 + 0.02 * i)).toList();
    }

    /** Taken in from an export, which is quicker than to log each. */
    private Client tested(double grams) {
        Client flyer = with("flyer", Scope.FULL);
        String log = pattern;
        for (int i = 0; i < OUTCOMES.length; i++) {
            log = log.replace("charge " + i, String.format(Locale.ROOT, "%.2f", grams + STEP * i));
        }
        var taken = flyer.post("/api/import", log);
        assertThat(taken.status()).as(taken.raw().body()).isEqualTo(200);
        return flyer;
    }

    private static void fire(Client flyer, String joint, double grams) {
        for (int i = 0; i < OUTCOMES.length; i++) {
            String charge = String.format(Locale.ROOT, "%.2f", grams + STEP * i);
            assertThat(flyer.post(joint + "/ground-tests", Samples.test(charge, OUTCOMES[i]))
                            .status())
                    .isEqualTo(201);
        }
    }

    private static void share(Client flyer, boolean sharing) {
        assertThat(flyer.put("/api/pool/sharing", "{\"sharing\":" + sharing + "}")
                        .status())
                .isEqualTo(200);
    }

    private static String chargeOf(Client flyer, String joint) {
        return flyer.get(joint + "/next-charge").body().path("charge").toString();
    }

    @Test
    void nothingIsSharedOrMadeUntilEnoughChoseTo() {
        List<Client> flyers = tested(5);
        assertThat(flyers.get(0).get("/api/pool").body().path("sharing").asBoolean())
                .isFalse();
        assertThat(keeper.post("/api/pool/renew", "").status()).isEqualTo(409);
        flyers.subList(0, 4).forEach(flyer -> share(flyer, true));
        Client twoTests = with("two tests", Scope.FULL);
        String joint = twoTests.joint();
        twoTests.post(joint + "/ground-tests", Samples.test("0.80", "none"));
        twoTests.post(joint + "/ground-tests", Samples.test("0.90", "partial"));
        share(twoTests, true);
        var refused = keeper.post("/api/pool/renew", "");
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.body().path("detail").asString()).contains("five or more");
        share(flyers.get(4), true);
        var made = keeper.post("/api/pool/renew", "");
        assertThat(made.status()).as(made.raw().body()).isEqualTo(200);
        assertThat(made.body().path("flyers").asInt()).isEqualTo(5);
        assertThat(made.body().path("tests").asInt()).isEqualTo(15);
    }

    /** As the operation that does the same; what only an admin key may do is not on the page of others. */
    @Test
    void onlyTheKeeperMakesOne() {
        Client flyer = with("flyer", Scope.FULL);
        Client guest = with("guest", Scope.READ_ONLY);
        assertThat(press(flyer, "/pool/renew", "")).isEqualTo(403);
        assertThat(press(guest, "/pool/sharing", "on=true")).isEqualTo(403);
        assertThat(press(flyer, "/pool/sharing", "on=true")).isEqualTo(302);
        assertThat(flyer.get("/pool", "Accept", "text/html").raw().body()).doesNotContain("Make one now", "take-in");
        assertThat(keeper.get("/pool", "Accept", "text/html").raw().body()).contains("Make one now", "take-in");
    }

    private static int press(Client flyer, String path, String form) {
        return flyer.send(flyer.request(path, "Accept", "text/html", "Sec-Fetch-Site", "same-origin")
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form)))
                .status();
    }

    @Test
    void anAnswerNamesItsSnapshotAndMovesOnlyWithASetupOrOnRequest() {
        tested(6).forEach(flyer -> share(flyer, true));
        Client newcomer = with("newcomer", Scope.FULL);
        String first = newcomer.joint();
        String alone = chargeOf(newcomer, first);
        keeper.post("/api/pool/renew", "");
        var before = newcomer.get(first + "/next-charge");
        assertThat(before.body().path("basis").has("poolSnapshot")).isFalse();
        assertThat(chargeOf(newcomer, first)).isEqualTo(alone);
        var pool = newcomer.get("/api/pool").body();
        assertThat(pool.has("snapshot")).isFalse();
        assertThat(pool.path("newest").path("number").asInt()).isEqualTo(1);
        newcomer.joint();
        assertThat(basis(newcomer, first)).isEqualTo(1);

        tested(3).forEach(flyer -> share(flyer, true));
        assertThat(keeper.post("/api/pool/renew", "").body().path("number").asInt())
                .isEqualTo(2);
        var logged = newcomer.post(first + "/ground-tests", Samples.test("0.80", "none"));
        assertThat(logged.body()
                        .path("nextCharge")
                        .path("basis")
                        .path("poolSnapshot")
                        .asInt(1))
                .isEqualTo(1);
        assertThat(basis(newcomer, first)).isEqualTo(1);
        newcomer.post("/api/pool/move", "");
        assertThat(basis(newcomer, first)).isEqualTo(2);

        newcomer.put("/api/pool/using", "{\"using\":false}");
        assertThat(newcomer.get(first + "/next-charge").body().path("basis").has("poolSnapshot"))
                .isFalse();
        newcomer.joint();
        assertThat(newcomer.get(first + "/next-charge").body().path("basis").has("poolSnapshot"))
                .isFalse();
        newcomer.put("/api/pool/using", "{\"using\":true}");
        assertThat(basis(newcomer, first)).isEqualTo(2);
    }

    private static int basis(Client flyer, String joint) {
        return flyer.get(joint + "/next-charge")
                .body()
                .path("basis")
                .path("poolSnapshot")
                .asInt(-1);
    }

    /** The pool narrows what is believed of a joint nobody has tested. */
    @Test
    void whatOthersTestedNarrowsWhatIsBelieved() {
        tested(8).forEach(flyer -> share(flyer, true));
        Client newcomer = with("newcomer", Scope.FULL);
        String joint = newcomer.joint();
        var alone = newcomer.get(joint + "/estimate").body().path("correction");
        keeper.post("/api/pool/renew", "");
        newcomer.post("/api/pool/move", "");
        assertThat(newcomer.get(joint + "/next-charge")
                        .body()
                        .at("/reason/text")
                        .asString())
                .contains("the rockets of 8 other flyers showed");
        var taught = newcomer.get(joint + "/estimate").body().path("correction");
        assertThat(taught.path("high").asDouble() / taught.path("low").asDouble())
                .isLessThan(
                        0.9 * alone.path("high").asDouble() / alone.path("low").asDouble());
    }

    /** Two successive snapshots differ by at least three flyers' part, whether they came, went or tested. */
    @Test
    void fewerThanThreeChangesMakeNoSnapshot() {
        List<Client> flyers = tested(7);
        flyers.forEach(flyer -> share(flyer, true));
        keeper.post("/api/pool/renew", "");
        assertThat(keeper.post("/api/pool/renew", "").status()).isEqualTo(409);
        share(flyers.get(0), false);
        String more = flyers.get(1).joint();
        flyers.get(1).post(more + "/ground-tests", Samples.test("0.80", "none"));
        flyers.get(2).post("/api/airframes", "{\"name\":\"untested\",\"units\":\"metric\"}");
        var refused = keeper.post("/api/pool/renew", "");
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.body().path("detail").asString()).contains("at least three");
        share(tested(0.9), true);
        assertThat(keeper.post("/api/pool/renew", "").body().path("flyers").asInt())
                .isEqualTo(7);
    }

    /** Who is left with fewer than five others is told nothing; who ended sharing is in no later snapshot. */
    @Test
    void oneOfFiveLearnsNothingFromFour() {
        List<Client> flyers = tested(5);
        flyers.forEach(flyer -> share(flyer, true));
        keeper.post("/api/pool/renew", "");
        flyers.get(0).post("/api/pool/move", "");
        String joint = flyers.get(0).joint();
        assertThat(flyers.get(0)
                        .get(joint + "/next-charge")
                        .body()
                        .path("basis")
                        .has("poolSnapshot"))
                .isFalse();
        Client other = with("other", Scope.FULL);
        assertThat(basis(other, other.joint())).isEqualTo(1);
    }

    /** Which of two flyers logged which tests cannot be read from a snapshot: swapped, the file is the same to the last byte. */
    @Test
    void aSnapshotDoesNotTellWhoLoggedWhat() {
        List<Double> charges = List.of(0.70, 0.75, 0.80, 0.90, 1.00, 1.10);
        charges.forEach(grams -> share(tested(grams), true));
        keeper.post("/api/pool/renew", "");
        String one = keeper.get(SNAPSHOTS + "/1").raw().body();
        for (UUID id : entered) {
            assertThat(one).doesNotContain(id.toString());
        }
        assertThat(pattern).contains("\"loggedBy\":\"pattern\"");
        assertThat(one).as("what keys are called").doesNotContain("loggedBy", "pattern");
        log.empty();
        entered.clear();
        keeper = with("keeper", Scope.ADMIN);
        for (int i = charges.size() - 1; i >= 0; i--) {
            share(tested(charges.get(i)), true);
        }
        keeper.post("/api/pool/renew", "");
        assertThat(keeper.get(SNAPSHOTS + "/1").raw().body()).isEqualTo(one);
    }

    @Test
    void aFileGoesFromOneServiceToAnother() {
        tested(6).forEach(flyer -> share(flyer, true));
        keeper.post("/api/pool/renew", "");
        String file = keeper.get(SNAPSHOTS + "/1").raw().body();
        log.empty(); // the other service
        var taken = keeper.post(SNAPSHOTS + "?givenBy=the%20club&use=true", file);
        assertThat(taken.status()).as(taken.raw().body()).isEqualTo(201);
        assertThat(taken.body().path("givenBy").asString()).isEqualTo("the club");
        assertThat(keeper.get(taken.header("Location")).raw().body()).isEqualTo(file);
        String joint = keeper.joint();
        assertThat(basis(keeper, joint)).isEqualTo(1);
        assertThat(keeper.post(SNAPSHOTS + "?givenBy=again", file).header("Location"))
                .isEqualTo(taken.header("Location"));
        assertThat(keeper.get(SNAPSHOTS + "?limit=1").body().path("items").size())
                .isEqualTo(1);
    }

    @Test
    void aDamagedOrForeignFileIsRefusedWithReasons() {
        tested(6).forEach(flyer -> share(flyer, true));
        keeper.post("/api/pool/renew", "");
        String file = keeper.get(SNAPSHOTS + "/1").raw().body();
        refused(file.replace("\"tests\":18", "\"tests\":19"), "/checksum", "damaged");
        refused(file.replace("sunder-pool", "another"), "/schema", "another kind");
        refused(file.replace("\"version\":1", "\"version\":2"), "/version", "not known here");
        refused(file.replace("\"model\":\"1.0\"", "\"model\":\"9.0\""), "/model", "another version of the model");
        refused(file.replace("\"flyers\":6", "\"flyers\":2"), "/flyers", "five flyers");
        refused(
                file.replaceFirst("\"logCorrection\":-?[0-9.]+", "\"logCorrection\":7"),
                "/learned/0/logCorrection",
                "no pool says so");
        refused(
                file.replaceFirst("\"scatter\":[0-9.]+", "\"scatter\":0.0001"),
                "/learned/0/covariance/scatter",
                "no pool says so");
        refused(
                file.replaceFirst("\"scatterBand\":-?[0-9.]+", "\"scatterBand\":5"),
                "/learned/0/covariance",
                "vary together");
        refused(file.replaceFirst("\"weight\":[0-9.]+", "\"weight\":0.001"), "/learned", "do not add to 1");
        refused(file.replaceFirst("\"weight\":[0-9.]+,", ""), "/learned/0/weight", "needed");
        refused(file.replaceFirst("\"date\":\"[^\"]*\"", "\"date\":\"yesterday\""), "/date", "no date");
        assertThat(keeper.post(SNAPSHOTS + "?givenBy=%20", file)
                        .fault("givenBy")
                        .path("detail")
                        .asString())
                .contains("who gave");
        assertThat(keeper.get(SNAPSHOTS).body().path("items").size()).isEqualTo(1);
    }

    private void refused(String file, String pointer, String why) {
        var answer = keeper.post(SNAPSHOTS + "?givenBy=someone", file);
        assertThat(answer.status()).as(answer.raw().body()).isEqualTo(400);
        assertThat(answer.fault(pointer).path("detail").asString())
                .as(answer.raw().body())
                .contains(why);
    }
}
