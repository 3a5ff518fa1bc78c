package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.builder.SpringApplicationBuilder;

/** A process that cannot start says why in one line that names the setting, and fails. */
class RefusedStartTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "server.port=abc | setting server.port: 'abc' is not a whole number from 0 to 65535",
                "server.address=0.0.0.0 | setting server.address: others can reach 0.0.0.0, but access keys are off. "
                        + "Set sunder.access.keys=true (SUNDER_ACCESS_KEYS=true), or server.address=127.0.0.1.",
                "sunder.access.requests-per-minute=many | setting sunder.access.requests-per-minute: 'many' is not a "
                        + "whole number",
                "sunder.access.failed-keys-per-minute=0 | setting sunder.access.failed-keys-per-minute: '0' must be "
                        + "greater than 0",
                "logging.level.root=loud | setting logging.level.root: 'loud' is not one of trace, debug, info, warn, "
                        + "error, fatal, off"
            })
    void aWrongSettingIsNamedInOneLine(String setting, String line) throws Exception {
        assertThat(refusal("--" + setting)).isEqualTo(line);
    }

    @Test
    void aDataFolderThatCannotBeIsNamed() throws Exception {
        Path file = Files.createFile(folder.resolve("file"));
        assertThat(refusal("--sunder.data-folder=" + file))
                .startsWith("setting sunder.data-folder: the database there cannot be read and written: ")
                .contains(file.toString());
    }

    @Test
    void aPortThatAnotherProcessHasIsNamed() throws Exception {
        try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            assertThat(refusal("--server.port=" + other.getLocalPort()))
                    .isEqualTo("setting server.port: another process listens on " + other.getLocalPort()
                            + ". Stop it, or set another port.");
        }
    }

    @Test
    void aDatabaseThatAnotherProcessHasIsNamed() throws Exception {
        try (Connection held = DriverManager.getConnection(url(), "sunder", "")) {
            assertThat(held.isValid(1)).isTrue();
            assertThat(refusal()).startsWith("setting sunder.data-folder: its database is in use by another process");
        }
    }

    @Test
    void aDatabaseFromANewerVersionIsRefused() throws Exception {
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
        assertThat(refusal())
                .startsWith("The database was written by a newer version of Sunder")
                .contains("999");
    }

    private String url() {
        return "jdbc:h2:file:" + folder.resolve("sunder");
    }

    /** What the process said when it failed: one line, besides those that tell how far it came. */
    private String refusal(String... settings) throws IOException, InterruptedException {
        try (StartedService service = new StartedService(folder, settings)) {
            assertThat(service.exitValue()).isNotZero();
            List<String> lines = service.log()
                    .lines()
                    .filter(line -> !line.matches("\\S+  INFO .*"))
                    .toList();
            assertThat(lines).as(service.log()).hasSize(1);
            assertThat(lines.get(0)).contains("ERROR  sunder : ");
            return lines.get(0).replaceFirst(".*? : ", "");
        }
    }
}
