package org.sunder.upkeep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.DriverManager;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.sunder.Client;
import org.sunder.InThoroughRuns;
import org.sunder.Samples;
import org.sunder.SunderApplication;
import org.sunder.exchange.GeneratedFleet;

/** A copy made under load holds what was acknowledged before; one is made before tables change. */
class BackupTest {

    @TempDir
    Path folder;

    @Test
    @InThoroughRuns
    void aCopyMadeUnderLoadIsRestored() throws Exception {
        List<String> before;
        Path copy;
        try (ConfigurableApplicationContext service = start(folder.resolve("live"))) {
            Client client = new Client(service.getEnvironment());
            List<String> entered = new CopyOnWriteArrayList<>();
            AtomicBoolean on = new AtomicBoolean(true);
            Thread load = new Thread(() -> {
                while (on.get()) {
                    entered.add(client.airframe());
                }
            });
            load.start();
            while (entered.size() < 5) {
                Thread.sleep(20);
            }
            before = List.copyOf(entered);
            var made = client.post("/api/backup", "");
            on.set(false);
            load.join();
            assertThat(made.status()).as(made.raw().body()).isEqualTo(200);
            copy = Path.of(made.body().path("file").asString());
        }
        unzip(copy, folder.resolve("restored"));
        try (ConfigurableApplicationContext service = start(folder.resolve("restored"))) {
            Client client = new Client(service.getEnvironment());
            assertThat(before)
                    .allSatisfy(path -> assertThat(client.get(path).status()).isEqualTo(200));
        }
    }

    @Test
    void aCopyUnpackedOverTheDatabaseGivesBackTheSameExport() throws Exception {
        Path live = folder.resolve("data");
        Path copy;
        String exported;
        try (ConfigurableApplicationContext service = start(live)) {
            Client client = new Client(service.getEnvironment());
            new GeneratedFleet(client, 21).enter();
            exported = client.get("/api/export").raw().body();
            copy = Path.of(client.post("/api/backup", "").body().path("file").asString());
            client.airframe();
            assertThat(client.get("/api/export").raw().body()).isNotEqualTo(exported);
        }
        unzip(copy, live);
        try (ConfigurableApplicationContext service = start(live)) {
            Client client = new Client(service.getEnvironment());
            assertThat(client.get("/api/export").raw().body()).isEqualTo(exported);
            assertThat(client.post("/api/airframes", Samples.AIRFRAME).status()).isEqualTo(201);
        }
    }

    @Test
    @InThoroughRuns
    void aCopyIsMadeBeforeTablesChange() throws Exception {
        Path live = folder.resolve("old");
        start(live).close();
        try (var connection = DriverManager.getConnection("jdbc:h2:file:" + live.resolve("sunder"), "sunder", "")) {
            connection.createStatement().execute("alter table ground_test drop column logged_by");
            connection.createStatement().execute("delete from \"flyway_schema_history\" where \"version\" = '13'");
        }
        start(live).close();
        try (Stream<Path> files = Files.list(live.resolve("backups"))) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .singleElement()
                    .satisfies(name -> assertThat(name).startsWith("before-migration-"));
        }
    }

    private static ConfigurableApplicationContext start(Path data) {
        return new SpringApplicationBuilder(SunderApplication.class)
                .run("--server.port=0", "--sunder.data-folder=" + data);
    }

    private static void unzip(Path file, Path to) throws IOException {
        Files.createDirectories(to);
        try (InputStream stream = Files.newInputStream(file);
                ZipInputStream zip = new ZipInputStream(stream)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Files.copy(zip, to.resolve(entry.getName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }
}
