package org.sunder.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.util.FileSystemUtils;
import org.sunder.InThoroughRuns;
import org.sunder.SunderApplication;

/**
 * A process that cannot start says why in one line that names the setting, and fails. That the process ends is shown once
 * early and once late in its start; the other settings are refused by starts within this process, which cost less.
 */
@ExtendWith(OutputCaptureExtension.class)
class RefusedStartTest {

    private static final String WRONG_PORT = "setting server.port: 'abc' is not a whole number from 0 to 65535";

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "server.address=0.0.0.0 | setting server.address: others can reach 0.0.0.0, but access keys are off. "
                        + "Set sunder.access.keys=true (SUNDER_ACCESS_KEYS=true), or server.address=127.0.0.1.",
                "sunder.access.requests-per-minute=many | setting sunder.access.requests-per-minute: 'many' is not a "
                        + "whole number",
                "sunder.access.failed-keys-per-minute=0 | setting sunder.access.failed-keys-per-minute: '0' must be "
                        + "greater than 0"
            })
    void aWrongSettingIsNamedInOneLine(String setting, String line, CapturedOutput output) {
        assertThat(refusal(output, "--" + setting)).isEqualTo(line);
    }

    @Test
    void aProcessThatIsRefusedFails() throws Exception {
        assertThat(refusalOfAProcess("--server.port=abc")).isEqualTo(WRONG_PORT);
    }

    @Test
    void aWrongLevelOfTheLogIsNamed() throws Exception {
        assertThat(refusalOfAProcess("--logging.level.root=loud"))
                .isEqualTo(
                        "setting logging.level.root: 'loud' is not one of trace, debug, info, warn, error, fatal, off");
    }

    @Test
    void aDataFolderThatCannotBeIsNamed(CapturedOutput output) throws Exception {
        Path file = Files.createFile(folder.resolve("file"));
        assertThat(refusal(output, "--sunder.data-folder=" + file))
                .startsWith("setting sunder.data-folder: the database there cannot be read and written: ")
                .contains(file.toString());
    }

    @Test
    @InThoroughRuns
    void aPortThatAnotherProcessHasIsNamed() throws Exception {
        try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            assertThat(refusalOfAProcess("--server.port=" + other.getLocalPort()))
                    .isEqualTo("setting server.port: another process listens on " + other.getLocalPort()
                            + ". Stop it, or set another port.");
        }
    }

    @Test
    @InThoroughRuns
    void aDatabaseThatAnotherProcessHasIsNamed() throws Exception {
        try (Connection held = DriverManager.getConnection(url(), "sunder", "")) {
            assertThat(held.isValid(1)).isTrue();
            assertThat(refusalOfAProcess())
                    .startsWith("setting sunder.data-folder: its database is in use by another process");
        }
    }

    @Test
    void aDatabaseFromANewerVersionIsRefused(CapturedOutput output) throws Exception {
        new SpringApplicationBuilder(SunderApplication.class)
                .run("--server.port=0", "--sunder.data-folder=" + folder)
                .close();
        try (Connection connection = DriverManager.getConnection(url(), "sunder", "")) {
            connection
                    .createStatement()
                    .execute("insert into \"flyway_schema_history\" (\"installed_rank\", \"version\", \"description\","
                            + " \"type\", \"script\", \"checksum\", \"installed_by\", \"execution_time\", \"success\")"
                            + " values (999, '999', 'from the future', 'SQL', 'V999__from_the_future.sql', 1, 'x', 1,"
                            + " true)");
        }
        assertThat(refusal(output))
                .startsWith("The database was written by a newer version of Sunder")
                .contains("999");
    }

    @Test
    @InThoroughRuns
    void aJarWhoseMigrationsWereAlteredIsRefusedAndOpensNothing() throws Exception {
        Path altered = folder.resolve("altered");
        Path classes = StartedService.classes();
        FileSystemUtils.copyRecursively(classes, altered);
        Files.writeString(
                altered.resolve("db/migration/V2__stock.sql"), "-- one line more\n", StandardOpenOption.APPEND);
        String classPath = System.getProperty("java.class.path").replace(classes.toString(), altered.toString());
        assertThat(classPath).contains(altered.toString());
        try (StartedService service = new StartedService(StartedService.java(classPath), folder)) {
            assertThat(service.exitValue()).isNotZero();
            assertThat(theOneLine(service.log()))
                    .isEqualTo("The changes of the tables in this jar are not those that it was built with:"
                            + " V2__stock.sql was altered. No database was opened. Fetch the jar again, or build it"
                            + " anew.");
        }
        assertThat(folder.resolve("sunder.mv.db")).doesNotExist();
    }

    @Test
    @InThoroughRuns
    void aChangeOfTheTablesThatFailsIsNamedWithTheWayBack(CapturedOutput output) throws Exception {
        new SpringApplicationBuilder(SunderApplication.class)
                .run("--server.port=0", "--sunder.data-folder=" + folder)
                .close();
        try (Connection connection = DriverManager.getConnection(url(), "sunder", "")) {
            // The newest tables are there, and nothing says that its change came to an end.
            connection
                    .createStatement()
                    .execute("delete from \"flyway_schema_history\" where \"installed_rank\" ="
                            + " (select max(\"installed_rank\") from \"flyway_schema_history\")");
        }
        assertThat(refusal(output))
                .startsWith("A change of the tables failed. ")
                .containsPattern("V\\d+__\\w+\\.sql")
                .contains("backups/before-migration-");
        assertThat(folder.resolve("backups")).isNotEmptyDirectory();
    }

    private String url() {
        return "jdbc:h2:file:" + folder.resolve("sunder");
    }

    private String refusal(CapturedOutput output, String... settings) {
        List<String> arguments = new ArrayList<>(List.of("--server.port=0"));
        arguments.addAll(List.of(settings));
        if (arguments.stream().noneMatch(setting -> setting.startsWith("--sunder.data-folder"))) {
            arguments.add("--sunder.data-folder=" + folder);
        }
        int before = output.length();
        assertThatThrownBy(
                () -> new SpringApplicationBuilder(SunderApplication.class).run(arguments.toArray(String[]::new)));
        return theOneLine(output.toString().substring(before));
    }

    private String refusalOfAProcess(String... settings) throws IOException, InterruptedException {
        try (StartedService service = new StartedService(folder, settings)) {
            assertThat(service.exitValue()).isNotZero();
            return theOneLine(service.log());
        }
    }

    /** What was said of a start that failed: one line, besides those that tell how far it came. */
    private static String theOneLine(String log) {
        List<String> lines =
                log.lines().filter(line -> !line.matches("\\S+  INFO .*")).toList();
        assertThat(lines).as(log).hasSize(1);
        assertThat(lines.get(0)).contains("ERROR  sunder : ");
        return lines.get(0).replaceFirst(".*? : ", "");
    }
}
