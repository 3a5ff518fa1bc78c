package org.sunder.durability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.sunder.Client;
import org.sunder.Patience;
import org.sunder.Samples;
import org.sunder.SunderApplication;
import org.sunder.photo.CleanPhoto;
import org.sunder.photo.Pictures;

/** A full disk: changes are refused as passing, reading goes on, and with room again so does writing. */
class FullDiskTest {

    private static final int NEARLY_FULL = 20; // megabytes, of the 32 below which changes are refused
    private static final int ROOM_FOR_A_PHOTO = 36; // megabytes
    private static final int PHOTOS = 6;
    private static final byte[] PHOTO = Pictures.noise(4_500_000, 18);

    @TempDir
    Path folder;

    @AfterEach
    void room() {
        FullDisk.FULL.set(false);
    }

    @Test
    void readingGoesOnWhereNothingCanBeWritten() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(mounted(disk), "a small disk cannot be mounted by this user: the test of a full one is skipped");
        try (ConfigurableApplicationContext service =
                start("--sunder.data-folder=" + disk.resolve("data"), "--sunder.access.keys=true")) {
            Client client = new Client(service.getEnvironment())
                    .with(Files.readString(disk.resolve("data/first-admin-key.txt"))
                            .trim());
            List<String> acknowledged = new ArrayList<>();
            enter(client, acknowledged, 3);
            String exported = client.get("/api/export").raw().body();
            Path filler = disk.resolve("filler");
            fill(filler, disk.toFile().getUsableSpace() - NEARLY_FULL * 1_000_000L);
            assertOnlyReading(client, acknowledged, exported);
            assertThat(client.post("/api/backup", "").status()).isEqualTo(503);
            fill(filler, Long.MAX_VALUE);
            assertThat(disk.toFile().getUsableSpace()).isZero();
            assertOnlyReading(client, acknowledged, exported);
            Files.delete(filler);
            enter(client, acknowledged, 3);
            assertThat(acknowledged)
                    .allSatisfy(path -> assertThat(client.get(path).status()).isEqualTo(200));
        } finally {
            run("umount", disk.toString());
        }
    }

    @Test
    void aDatabaseThatFoundTheDiskFullOpensAgainWithWhatWasAcknowledged() throws Exception {
        FullDisk.register();
        String url = "jdbc:h2:filling:" + folder.resolve("sunder") + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";
        try (ConfigurableApplicationContext service = start("--spring.datasource.url=" + url)) {
            Client client = new Client(service.getEnvironment());
            List<String> acknowledged = new ArrayList<>();
            enter(client, acknowledged, 3);
            FullDisk.FULL.set(true);
            var refused = client.post("/api/airframes", Samples.AIRFRAME);
            assertThat(refused.status()).as(refused.raw().body()).isEqualTo(503);
            assertThat(refused.header("Retry-After")).isNotEmpty();
            FullDisk.FULL.set(false);
            await(client, "/readyz");
            enter(client, acknowledged, 3);
            assertThat(client.get("/api/airframes")
                            .body()
                            .path("items")
                            .valueStream()
                            .map(item -> "/api/airframes/" + item.path("id").asString()))
                    .containsExactlyInAnyOrderElementsOf(acknowledged);
        }
    }

    @Test
    void aPhotoIsKeptWholeOrRefusedAsTheDiskFillsUp() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(mounted(disk), "a small disk cannot be mounted by this user: the test of a full one is skipped");
        try (ConfigurableApplicationContext service = start("--sunder.data-folder=" + disk.resolve("data"))) {
            Client client = new Client(service.getEnvironment());
            List<String> photos = placesForPhotos(client);
            Path filler = disk.resolve("filler");
            fill(filler, disk.toFile().getUsableSpace() - ROOM_FOR_A_PHOTO * 1_000_000L);
            List<CompletableFuture<Client.Answer>> sent = photos.stream()
                    .map(photo ->
                            CompletableFuture.supplyAsync(() -> put(client, photo), work -> new Thread(work).start()))
                    .toList();
            List<Integer> statuses =
                    sent.stream().map(each -> each.join().status()).toList();
            assertThat(statuses).contains(201, 503).containsOnly(201, 503);
            assertThat(disk.toFile().getUsableSpace()).as("what H2 had left").isPositive();
            String exported = client.get("/api/export").raw().body();
            fill(filler, Long.MAX_VALUE);
            for (int i = 0; i < photos.size(); i++) {
                assertThat(put(client, photos.get(i)).status()).as("no room").isEqualTo(503);
                assertThat(isKept(client, photos.get(i))).isEqualTo(statuses.get(i) == 201);
            }
            assertThat(client.get("/api/export").raw().body()).isEqualTo(exported);
            assertThat(client.get("/readyz").status()).isEqualTo(200);
            Files.delete(filler);
            for (int i = 0; i < photos.size(); i++) {
                assertThat(put(client, photos.get(i)).status()).isEqualTo(statuses.get(i) == 201 ? 200 : 201);
            }
            assertThat(photos).allMatch(photo -> isKept(client, photo));
        } finally {
            run("umount", disk.toString());
        }
    }

    /** Addresses where tests that are logged now may have a photo. */
    private static List<String> placesForPhotos(Client client) {
        String joint = client.joint();
        return IntStream.range(0, PHOTOS)
                .mapToObj(i -> client.post(joint + "/ground-tests", Samples.test("0.8" + i, "partial"))
                                .header("Location")
                        + "/photo")
                .toList();
    }

    private static Client.Answer put(Client client, String photo) {
        return client.send(
                client.request(photo, "Content-Type", "image/png").PUT(HttpRequest.BodyPublishers.ofByteArray(PHOTO)));
    }

    /** Whether the photo is there, as it was sent. */
    private static boolean isKept(Client client, String photo) {
        try {
            HttpResponse<byte[]> read = HttpClient.newHttpClient()
                    .send(client.request(photo).build(), HttpResponse.BodyHandlers.ofByteArray());
            assertThat(read.statusCode()).isIn(200, 404);
            return read.statusCode() == 200
                    && Arrays.equals(read.body(), CleanPhoto.of(PHOTO).content());
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void assertOnlyReading(Client client, List<String> acknowledged, String exported) {
        for (int i = 0; i < 5; i++) {
            var refused = client.post("/api/airframes", Samples.AIRFRAME);
            assertThat(refused.status()).as(refused.raw().body()).isEqualTo(503);
            assertThat(refused.header("Retry-After")).isNotEmpty();
            assertThat(refused.body().path("detail").asString()).contains("disk", "Reading goes on");
            assertThat(client.get(acknowledged.get(0)).status()).isEqualTo(200);
            assertThat(client.get("/api/export").raw().body()).isEqualTo(exported);
            assertThat(client.get("/readyz").status()).isEqualTo(200);
        }
    }

    private static void enter(Client client, List<String> acknowledged, int count) {
        for (int i = 0; i < count; i++) {
            var made = client.post("/api/airframes", Samples.AIRFRAME);
            assertThat(made.status()).as(made.raw().body()).isEqualTo(201);
            acknowledged.add(made.header("Location"));
        }
    }

    private static void await(Client client, String path) throws InterruptedException {
        assertThat(Patience.until(() -> client.get(path).status() == 200, Patience.ofThisProcess()))
                .as(path)
                .isTrue();
    }

    private static void fill(Path filler, long bytes) throws IOException {
        try (var out = Files.newOutputStream(filler)) {
            byte[] block = new byte[64 * 1024];
            for (long written = 0; written < bytes; written += block.length) {
                out.write(block);
            }
        } catch (IOException e) {
            // No room left: that was asked for.
        }
    }

    private static boolean mounted(Path disk) throws IOException, InterruptedException {
        boolean done = run("mount", "-t", "tmpfs", "-o", "size=96m", "tmpfs", disk.toString());
        if (!done && System.getenv("CI") != null) {
            throw new IllegalStateException("CI must run the test of a full disk, but no disk can be mounted");
        }
        return done;
    }

    private static boolean run(String... command) throws IOException, InterruptedException {
        try {
            return new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false; // no such command
        }
    }

    private static ConfigurableApplicationContext start(String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.add("--server.port=0");
        return new SpringApplicationBuilder(SunderApplication.class).run(all.toArray(String[]::new));
    }
}
