package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Whatever is kept has a strong entity tag, and is not sent again while it is unchanged. */
@ServiceTest
class UnchangedTest {

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    @Test
    void nothingKeptIsSentTwice() throws Exception {
        emptyLog.empty();
        String airframe = client.airframe();
        var joint = client.post(airframe + "/joints", Samples.JOINT);
        String test = client.post(joint.header("Location") + "/ground-tests", Samples.test("0.80", "none"))
                .header("Location");
        String loadOut = client.post(airframe + "/load-outs", Samples.loadOut(joint.id()))
                .header("Location");
        String powder = client.post("/api/powders", example("createPowder")).header("Location");
        String batch =
                client.post("/api/pin-batches", example("createPinBatch")).header("Location");
        for (String path : List.of(airframe, joint.header("Location"), test, loadOut, powder, batch)) {
            var read = client.get(path);
            assertThat(read.status()).as(path).isEqualTo(200);
            assertThat(read.header("ETag")).as(path).matches("\"[^\"]+\"");
            var again = client.get(path, "If-None-Match", read.header("ETag"));
            assertThat(again.status()).as(path).isEqualTo(304);
            assertThat(again.raw().body()).isEmpty();
            assertThat(client.get(path, "If-None-Match", "\"other\"").status()).isEqualTo(200);
        }
        String before = client.get(test).header("ETag");
        client.post(test + "/void", "{\"reason\":\"igniter\"}");
        assertThat(client.get(test, "If-None-Match", before).status()).isEqualTo(200);
    }

    private static String example(String operation) throws Exception {
        return Files.readString(Path.of("src", "main", "resources", "openapi", operation + ".request.json"));
    }
}
