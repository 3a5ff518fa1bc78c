package org.sunder.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.context.ConfigurableApplicationContext;
import org.sunder.Client;
import org.sunder.EarlierVersion;
import org.sunder.InThoroughRuns;
import org.sunder.Patience;
import org.sunder.SunderApplication;
import org.sunder.process.StartedService;

/** A process that ended while it changed the tables of an embedded database: the next start goes on by itself. */
@ExtendWith(OutputCaptureExtension.class)
class CutOffChangeTest {

    private static final String MARK = "tables-are-being-changed";

    @TempDir
    Path folder;

    @Test
    @InThoroughRuns
    void aDatabaseLeftHalfChangedIsBroughtBackAndThenChangedAsAWhole() throws Exception {
        EarlierVersion seventh = new EarlierVersion(7);
        seventh.unpack(folder);
        Path copy = folder.resolve("copy.zip");
        try (Connection database = DriverManager.getConnection(url(), "sunder", "")) {
            database.createStatement().execute("backup to '" + copy + "'");
            // The first statement of the next change; with it alone no version opens the database.
            database.createStatement()
                    .execute("alter table flyer add column pool_sharing boolean default false not null");
        }
        left(Optional.of(copy));
        try (ConfigurableApplicationContext service = start()) {
            Client client = new Client(service.getEnvironment());
            seventh.assertAnswered(path -> client.get(path).body());
        }
        assertThat(folder.resolve(MARK)).doesNotExist();
        assertThat(copy).as("copied anew before it was changed").doesNotExist();
        try (Stream<Path> backups = Files.list(folder.resolve("backups"))) {
            assertThat(backups).hasSize(1);
        }
    }

    @Test
    @InThoroughRuns
    void aFirstStartThatWasCutOffBeginsAnew() throws Exception {
        try (Connection database = DriverManager.getConnection(url(), "sunder", "")) {
            database.createStatement().execute("create table flyer (id uuid primary key)");
        }
        left(Optional.empty());
        try (ConfigurableApplicationContext service = start()) {
            assertThat(new Client(service.getEnvironment()).joint()).startsWith("/api/joints/");
        }
        assertThat(folder.resolve(MARK)).doesNotExist();
        assertThat(folder.resolve("sunder.mv.db.cut-off")).exists();
    }

    @Test
    void aMarkWhoseProcessLivesOrThatWasNotWrittenChangesNothing() throws Exception {
        byte[] before = {1, 2, 3};
        Files.write(database(), before);
        ChangeMark held = new ChangeMark(folder, database(), Optional.empty());
        ChangeMark.bringBack(folder);
        assertThat(database()).hasBinaryContent(before);
        held.close();
        assertThat(folder.resolve(MARK)).doesNotExist();
        Files.createFile(folder.resolve(MARK));
        ChangeMark.bringBack(folder);
        assertThat(database()).hasBinaryContent(before);
        assertThat(folder.resolve(MARK)).doesNotExist();
    }

    @Test
    void aCopyThatIsGoneIsNamedAndTheMarkStays(CapturedOutput output) throws Exception {
        Files.createFile(database());
        left(Optional.of(folder.resolve("gone.zip")));
        assertThatThrownBy(this::start);
        assertThat(output.toString())
                .contains(
                        "setting sunder.data-folder: a change of the tables in " + folder,
                        "gone.zip",
                        "Restore another backup there and delete the file " + MARK);
        assertThat(folder.resolve(MARK)).exists();
    }

    /** Killed as soon as the mark stands, again and again, until a change comes to its end before the kill. */
    @Test
    @InThoroughRuns
    void aServiceKilledWhileItChangesTheTablesOfAnEarlierVersionAnswersAfterwards() throws Exception {
        EarlierVersion seventh = new EarlierVersion(7);
        seventh.unpack(folder);
        for (int wait : new int[] {0, 30}) {
            try (StartedService service = new StartedService(folder)) {
                Patience patience = new Patience(service.movement());
                while (!Files.exists(folder.resolve(MARK))
                        && !service.log().contains("Tomcat started on port")
                        && patience.lasts()) {
                    Thread.sleep(1);
                }
                Thread.sleep(wait);
                service.kill();
            }
        }
        try (ConfigurableApplicationContext service = start()) {
            Client client = new Client(service.getEnvironment());
            seventh.assertAnswered(path -> client.get(path).body());
        }
    }

    /** The mark as a process leaves it that ends at once. */
    private void left(Optional<Path> copy) throws IOException {
        ChangeMark mark = new ChangeMark(folder, database(), copy);
        byte[] written = Files.readAllBytes(folder.resolve(MARK));
        mark.close();
        Files.write(folder.resolve(MARK), written);
    }

    private Path database() {
        return folder.resolve("sunder.mv.db");
    }

    private String url() {
        return "jdbc:h2:file:" + folder.resolve("sunder");
    }

    private ConfigurableApplicationContext start() {
        return new SpringApplicationBuilder(SunderApplication.class)
                .run("--server.port=0", "--sunder.data-folder=" + folder);
    }
}
