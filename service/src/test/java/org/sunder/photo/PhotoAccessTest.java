package org.sunder.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.access.AccessKeys;
import org.sunder.access.Flyer;
import org.sunder.access.Flyers;
import org.sunder.access.KeyedServiceTest;
import org.sunder.access.Scope;

/** Who may do what with a photo, beyond what the matrix of operations says. */
@KeyedServiceTest
class PhotoAccessTest {

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    @Test
    void aKeyThatOnlyLogsAddsAPhotoAndChangesNone() {
        Flyer owner = flyers.enter("owner");
        Client full = holder(owner, Scope.FULL);
        Client phone = holder(owner, Scope.LOG_ONLY);
        String photo = full.post(full.joint() + "/ground-tests", Samples.test("0.80", "none"))
                        .header("Location")
                + "/photo";
        assertThat(put(phone, photo, Pictures.jpeg(20, 20)).status()).isEqualTo(201);
        assertThat(put(phone, photo, Pictures.jpeg(20, 20)).status())
                .as("sent twice")
                .isEqualTo(200);
        assertThat(put(phone, photo, Pictures.png(20, 20), "If-Match", "*").status())
                .isEqualTo(403);
        assertThat(phone.delete(photo, "If-Match", "*").status()).isEqualTo(403);
        assertThat(put(holder(owner, Scope.READ_ONLY), photo, Pictures.jpeg(20, 20))
                        .status())
                .isEqualTo(403);
        assertThat(put(client, photo, new byte[300_000]).status()).isEqualTo(401);
        assertThat(put(full, photo, Pictures.png(20, 20), "If-Match", "*").status())
                .isEqualTo(200);
        Client stranger = holder(flyers.enter("stranger"), Scope.FULL);
        assertThat(stranger.get(photo).status()).isEqualTo(404);
        assertThat(put(stranger, photo, Pictures.jpeg(20, 20)).status()).isEqualTo(404);
        assertThat(stranger.delete(photo, "If-Match", "*").status()).isEqualTo(404);
        assertThat(full.get(photo).status()).isEqualTo(200);
        assertThat(stranger.get("/api/export?photos=true").raw().body()).contains("\"photos\":[]");
    }

    private Client holder(Flyer flyer, Scope scope) {
        return client.with(keys.issue(flyer.id(), "a key", scope, null).secret());
    }

    private static Client.Answer put(Client asker, String path, byte[] file, String... headers) {
        return asker.send(asker.request(path, headers)
                .header("Content-Type", "image/jpeg")
                .PUT(BodyPublishers.ofByteArray(file)));
    }
}
