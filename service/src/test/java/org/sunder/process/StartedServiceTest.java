package org.sunder.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sunder.Patience;
import org.sunder.Samples;

/** The service as a process of its own: how it stops. */
class StartedServiceTest {

    private static final int CALLERS = 8;

    private static final int STOPPED_BY_SIGNAL = 143; // 128 and the number of SIGTERM

    @TempDir
    Path folder;

    /**
     * A caller whose connection is refused, or who is told that the service is being stopped, was not taken; one whose request was
     * taken gets the whole answer.
     */
    @Test
    void aStopSignalLetsRequestsInFlightFinish() throws Exception {
        try (StartedService service = new StartedService(folder)) {
            URI airframes = URI.create("http://127.0.0.1:" + service.port() + "/api/airframes");
            AtomicInteger answered = new AtomicInteger();
            CountDownLatch busy = new CountDownLatch(40);
            List<CompletableFuture<List<String>>> callers = new ArrayList<>();
            for (int i = 0; i < CALLERS; i++) {
                callers.add(CompletableFuture.supplyAsync(
                        () -> enter(airframes, answered, busy), work -> new Thread(work).start()));
            }
            assertThat(Patience.until(() -> busy.getCount() == 0, busy::getCount))
                    .isTrue();
            service.stop();
            List<String> answers =
                    callers.stream().flatMap(caller -> caller.join().stream()).toList();
            assertThat(service.exitValue()).isEqualTo(STOPPED_BY_SIGNAL);
            assertThat(answers).allMatch(answer -> answer.equals("201") || answer.contains("/problems/stopping"));
            assertThat(stored()).as("rows stored against answers that arrived").isEqualTo(answered.get());
        }
    }

    private List<String> enter(URI airframes, AtomicInteger answered, CountDownLatch busy) {
        HttpClient own = HttpClient.newHttpClient();
        HttpRequest request = HttpRequest.newBuilder(airframes)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(Samples.AIRFRAME))
                .build();
        List<String> answers = new ArrayList<>();
        try {
            while (true) {
                HttpResponse<String> answer = own.send(request, HttpResponse.BodyHandlers.ofString());
                if (answer.statusCode() == 201) {
                    answers.add("201");
                    answered.incrementAndGet();
                    busy.countDown();
                } else {
                    answers.add(answer.statusCode() + " " + answer.body());
                }
            }
        } catch (IOException e) {
            return answers; // the door is shut
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private int stored() throws Exception {
        String url = "jdbc:h2:file:" + folder.resolve("sunder");
        try (Connection connection = DriverManager.getConnection(url, "sunder", "");
                ResultSet rows = connection.createStatement().executeQuery("select count(*) from airframe")) {
            rows.next();
            return rows.getInt(1);
        }
    }
}
