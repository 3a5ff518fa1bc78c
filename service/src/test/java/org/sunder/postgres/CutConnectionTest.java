package org.sunder.postgres;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.SunderApplication;

/**
 * The line to the database breaks after it has committed and before it could say so: the caller is told that the test may be
 * stored, and sent again it is there once.
 */
@PostgresTest
class CutConnectionTest {

    @Test
    void aReportWhoseCommitWasNeverConfirmedIsThereOnceWhenSentAgain() throws Exception {
        String direct = PostgresServer.newDatabase();
        try (Line line = new Line(direct);
                var service = new SpringApplicationBuilder(SunderApplication.class)
                        // Each statement goes over the line as its text, so that the one to break at is seen.
                        .run("--server.port=0", "--spring.datasource.url=" + line.address() + "&prepareThreshold=0")) {
            Client client = new Client(service.getEnvironment());
            String joint = client.joint();
            String report = Samples.test("0.80", "partial");
            line.breakAtTheCommitAfter("insert into idempotent_answer");
            var cut = client.post(joint + "/ground-tests", report, "Idempotency-Key", "cut");
            assertThat(line.isWhole()).as("the line broke").isFalse();
            assertThat(cut.status()).as(cut.raw().body()).isEqualTo(503);
            assertThat(cut.header("Retry-After")).isNotEmpty();
            assertThat(cut.body().path("detail").asString()).contains("may be stored or not", "Idempotency-Key");
            assertThat(client.get(joint + "/ground-tests").body().path("items"))
                    .as("committed before the line broke")
                    .hasSize(1);
            var again = client.post(joint + "/ground-tests", report, "Idempotency-Key", "cut");
            assertThat(again.status()).as(again.raw().body()).isEqualTo(201);
            assertThat(client.get(joint + "/ground-tests").body().path("items")).hasSize(1);
            assertThat(client.get(joint + "/next-charge").body())
                    .isEqualTo(again.body().path("next"));
        }
    }

    /** What lies between service and database. */
    private static final class Line implements AutoCloseable {

        private static final int AT_A_TIME = 65_536;

        private final String direct;
        private final ServerSocket ear = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        private final AtomicReference<String> awaited = new AtomicReference<>("");
        private final AtomicBoolean whole = new AtomicBoolean(true);

        Line(String direct) throws IOException {
            this.direct = direct;
            daemon(() -> {
                while (true) {
                    Socket near = ear.accept();
                    Socket far = new Socket(host(), port());
                    // Of an exchange that ends in a commit, what is answered is read and not passed on.
                    AtomicBoolean cut = new AtomicBoolean();
                    daemon(() -> forth(near, far, cut));
                    daemon(() -> back(far, near, cut));
                }
            });
        }

        String address() {
            return direct.replaceFirst("//[^/]+/", "//127.0.0.1:" + ear.getLocalPort() + "/");
        }

        /** Breaks once the transaction that has a statement in it is committed. */
        void breakAtTheCommitAfter(String statement) {
            awaited.set(statement);
        }

        boolean isWhole() {
            return whole.get();
        }

        private void forth(Socket near, Socket far, AtomicBoolean cut) throws IOException {
            byte[] bytes = new byte[AT_A_TIME];
            InputStream from = near.getInputStream();
            boolean written = false;
            for (int n = from.read(bytes); n >= 0; n = from.read(bytes)) {
                String text = new String(bytes, 0, n, StandardCharsets.ISO_8859_1);
                String statement = awaited.get();
                written |= !statement.isEmpty() && text.contains(statement);
                if (written && text.contains("COMMIT")) {
                    awaited.set("");
                    cut.set(true);
                }
                far.getOutputStream().write(bytes, 0, n);
            }
            far.close();
        }

        private void back(Socket far, Socket near, AtomicBoolean cut) throws IOException {
            byte[] bytes = new byte[AT_A_TIME];
            InputStream from = far.getInputStream();
            for (int n = from.read(bytes); n >= 0; n = from.read(bytes)) {
                if (cut.get()) {
                    whole.set(false);
                    break;
                }
                near.getOutputStream().write(bytes, 0, n);
            }
            far.close();
            near.close();
        }

        private String host() {
            return direct.replaceFirst(".*//([^:/]+):\\d+/.*", "$1");
        }

        private int port() {
            return Integer.parseInt(direct.replaceFirst(".*//[^:/]+:(\\d+)/.*", "$1"));
        }

        private interface Work {
            void run() throws IOException;
        }

        private static void daemon(Work work) {
            Thread thread = new Thread(() -> {
                try {
                    work.run();
                } catch (IOException e) {
                    // One end has gone, and this half of the line with it.
                }
            });
            thread.setDaemon(true);
            thread.start();
        }

        @Override
        public void close() throws IOException {
            ear.close();
        }
    }
}
