package org.sunder.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EarlierVersion;
import org.sunder.EmptyLog;
import org.sunder.ServiceTest;

/** An export of an earlier version is taken in, and answered as it was then. */
@ServiceTest
class EarlierExportTest {

    @Autowired
    Client client;

    @Autowired
    EmptyLog log;

    @Test
    void isAnsweredAsItWas() throws IOException {
        log.empty();
        EarlierVersion seventh = new EarlierVersion(7);
        var taken = client.post("/api/import", seventh.export());
        assertThat(taken.status()).as(taken.raw().body()).isEqualTo(200);
        seventh.assertAnswered(path -> client.get(path).body());
        log.empty();
    }
}
