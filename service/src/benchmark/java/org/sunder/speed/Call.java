package org.sunder.speed;

import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * A request that is sent again and again over kept connections.
 *
 * @param address the whole address
 * @param body what is posted, or null for a GET
 */
record Call(String address, @Nullable String body) {

    /** Sends it and answers the Location header, if there is one. */
    @Nullable String send() {
        try {
            HttpURLConnection connection =
                    (HttpURLConnection) URI.create(address).toURL().openConnection();
            if (body != null) {
                connection.setDoOutput(true);
                connection.setRequestProperty("Content-Type", "application/json");
                connection.getOutputStream().write(body.getBytes(StandardCharsets.UTF_8));
            }
            try (InputStream answer = connection.getInputStream()) {
                answer.readAllBytes();
            }
            return connection.getHeaderField("Location");
        } catch (IOException e) {
            throw new IllegalStateException(address + ": " + e.getMessage(), e);
        }
    }

    /** Milliseconds it takes. */
    double time() {
        long start = System.nanoTime();
        send();
        return (System.nanoTime() - start) / 1e6;
    }
}
