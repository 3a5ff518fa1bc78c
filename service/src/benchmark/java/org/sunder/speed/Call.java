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
 * @param key the key shown, or null for none
 */
record Call(String address, @Nullable String body, @Nullable String key) {

    /**
     * What came back.
     *
     * @param location the Location header, or null
     * @param bytes length of the body, as sent without compression
     */
    record Answer(@Nullable String location, int bytes) {}

    Call(String address, @Nullable String body) {
        this(address, body, null);
    }

    /** Sends it; anything but a success is an error. */
    Answer send() {
        try {
            HttpURLConnection connection =
                    (HttpURLConnection) URI.create(address).toURL().openConnection();
            if (key != null) {
                connection.setRequestProperty("Authorization", "Bearer " + key);
            }
            if (body != null) {
                connection.setDoOutput(true);
                connection.setRequestProperty("Content-Type", "application/json");
                connection.getOutputStream().write(body.getBytes(StandardCharsets.UTF_8));
            }
            try (InputStream answer = connection.getInputStream()) {
                int bytes = answer.readAllBytes().length;
                return new Answer(connection.getHeaderField("Location"), bytes);
            }
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
