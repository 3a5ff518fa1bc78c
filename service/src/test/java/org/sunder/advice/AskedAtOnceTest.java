package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Patience;
import org.sunder.Samples;
import org.sunder.ServiceTest;

/** Several who pack the fleet for a phone while others log to it: nobody waits for ever for another. */
@ServiceTest
class AskedAtOnceTest {

    private static final int JOINTS = 6;
    private static final int PACKING = 4;
    private static final int LOGGING = 2;
    private static final int TIMES = 6;

    @Autowired
    Client client;

    @Test
    void kitsAndReportsAreAllAnswered() throws Exception {
        List<String> joints = IntStream.range(0, JOINTS)
                .mapToObj(i -> client.joint())
                .peek(joint -> client.post(joint + "/ground-tests", Samples.test("0.80", "partial")))
                .toList();
        AtomicInteger answered = new AtomicInteger();
        List<CompletableFuture<Void>> asking = new ArrayList<>();
        for (int who = 0; who < PACKING; who++) {
            asking.add(inItsOwnThread(() -> {
                assertThat(client.get("/api/field-kit?depth=2").status()).isEqualTo(200);
                answered.incrementAndGet();
            }));
        }
        for (int who = 0; who < LOGGING; who++) {
            String joint = joints.get(who);
            asking.add(inItsOwnThread(() -> {
                assertThat(client.post(joint + "/ground-tests", Samples.test("0.9" + answered.get() % 10, "partial"))
                                .status())
                        .isEqualTo(201);
                answered.incrementAndGet();
            }));
        }
        CompletableFuture<Void> all = CompletableFuture.allOf(asking.toArray(CompletableFuture[]::new));
        assertThat(Patience.until(all::isDone, answered::get))
                .as("answered of " + asking.size() * TIMES + ": " + answered)
                .isTrue();
        all.join();
    }

    private static CompletableFuture<Void> inItsOwnThread(Runnable work) {
        return CompletableFuture.runAsync(
                () -> {
                    for (int i = 0; i < TIMES; i++) {
                        work.run();
                    }
                },
                task -> new Thread(task).start());
    }
}
