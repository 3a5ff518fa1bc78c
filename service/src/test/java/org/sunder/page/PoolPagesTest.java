package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What others' rockets teach, on pages: what an answer rests on, what the pool does for a joint, and the two switches. */
class PoolPagesTest extends OneJoint {

    private static final Path FILE = Path.of("src", "main", "resources", "openapi", "takeInPoolSnapshot.request.json");
    private static final int DEEPEST = 4;

    @AfterEach
    void withoutIt() {
        emptyLog.empty();
    }

    @Test
    void withoutASnapshotItSaysWhatIsMissing() {
        assertThat(read("/pool"))
                .contains("There is nothing from others yet", "You share nothing", "None yet.")
                .doesNotContain("Move to snapshot", "What it says of a rocket");
        assertThat(read(page(joint) + "/pool")).contains("There is nothing from others yet");
        var refused = submitted("/pool/renew", "");
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.body()).contains("five or more flyers");
    }

    @Test
    void aSnapshotIsMovedToUsedAndLeft() throws IOException {
        takeIn("");
        assertThat(read("/pool"))
                .contains("rest on your own tests alone, so far", "Move to snapshot 1", "given by our &quot;club&quot;")
                .contains("What it says of a rocket not yet tested", "Save snapshot 1 as a file");
        assertThat(submitted("/pool/move", "").statusCode()).isEqualTo(302);
        assertThat(read("/pool"))
                .contains("Your answers rest on snapshot 1", "12 flyers and 164 counted tests", "yours now")
                .doesNotContain("Move to snapshot");
        submitted("/pool/using", "on=false");
        assertThat(read("/pool")).contains("You work without the pool", "Use it");
        submitted("/pool/using", "on=true");
        assertThat(read("/pool")).contains("Your answers rest on snapshot 1");
        submitted("/pool/sharing", "on=true");
        assertThat(read("/pool")).contains("You share your tests", "Stop sharing");
    }

    /** The sentence that the page promises, with the numbers of the two ladders. */
    @Test
    void aJointSaysHowManyTestsItSaves() throws IOException {
        takeIn("&use=true");
        assertThat(read(page(joint) + "/plan")).contains("href=\"" + page(joint) + "/pool\"");
        String with =
                client.get(joint + "/ladder?depth=4").body().path("doneAfter").toString();
        String page = read(page(joint) + "/pool");
        client.put("/api/pool/using", "{\"using\":false}");
        String without =
                client.get(joint + "/ladder?depth=4").body().path("doneAfter").toString();
        assertThat(with).isNotEqualTo(without);
        assertThat(likely(with)).isLessThan(likely(without));
        assertThat(words(page))
                .contains("With the pool's experience " + likely(with) + " more tests are likely, without it "
                        + (likely(without) > DEEPEST ? "more than " + DEEPEST : likely(without)));
    }

    private static String words(String page) {
        return page.replace("&#39;", "'");
    }

    private static int likely(String doneAfter) {
        String[] chances = doneAfter.replaceAll("[\\[\\]]", "").split(",", -1);
        for (int tests = 0; tests < chances.length; tests++) {
            if (Double.parseDouble(chances[tests]) >= 0.5) {
                return tests;
            }
        }
        return chances.length;
    }

    private void takeIn(String more) throws IOException {
        assertThat(client.post("/api/pool/snapshots?givenBy=our%20%22club%22" + more, Files.readString(FILE))
                        .status())
                .isEqualTo(201);
    }

    @Test
    void theExampleLearnsNothingFromOthers() throws IOException {
        takeIn("&use=true");
        submitted("/example", "");
        String plan = read("/");
        assertThat(plan).contains("invented");
        String page = client.get("/joints/" + exampleJoint() + "/pool", "Accept", "text/html")
                .raw()
                .body();
        assertThat(page).contains("The example learns nothing from others");
        assertThat(client.get("/api/joints/" + exampleJoint() + "/next-charge")
                        .body()
                        .path("basis")
                        .has("poolSnapshot"))
                .isFalse();
    }

    private String exampleJoint() {
        for (var airframe : client.get("/api/airframes").body().path("items")) {
            if (airframe.path("name").asString().contains("example")) {
                return client.get("/api/airframes/" + airframe.path("id").asString() + "/joints")
                        .body()
                        .path("items")
                        .get(0)
                        .path("id")
                        .asString();
            }
        }
        throw new AssertionError("no example");
    }
}
