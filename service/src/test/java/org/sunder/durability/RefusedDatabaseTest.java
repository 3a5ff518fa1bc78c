package org.sunder.durability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.sunder.SunderApplication;

/** A database that cannot be opened is refused in clear words. */
@ExtendWith(OutputCaptureExtension.class)
class RefusedDatabaseTest {

    @TempDir
    Path folder;

    @Test
    void refusesADatabaseFromANewerVersion(CapturedOutput output) throws Exception {
        String url = "jdbc:h2:file:" + folder.resolve("sunder");
        start(url).close();
        try (Connection connection = DriverManager.getConnection(url, "sunder", "")) {
            connection
                    .createStatement()
                    .execute("insert into \"flyway_schema_history\" (\"installed_rank\", \"version\", \"description\","
                            + " \"type\", \"script\", \"checksum\", \"installed_by\", \"execution_time\", \"success\")"
                            + " values (999, '999', 'from the future', 'SQL', 'V999__from_the_future.sql', 1, 'x', 1,"
                            + " true)");
        }
        assertThatThrownBy(() -> start(url)).isNotNull();
        assertThat(output.getOut()).contains("written by a newer version of Sunder");
    }

    @Test
    void refusesAFileThatAnotherProcessHasOpen(CapturedOutput output) throws Exception {
        Path file = folder.resolve("sunder");
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        PlainDatabaseUnderLoad.class.getName(),
                        "jdbc:h2:file:" + file)
                .start();
        try {
            assertThat(other.inputReader().readLine()).startsWith("acknowledged");
            assertThatThrownBy(() -> start("jdbc:h2:file:" + file)).isNotNull();
        } finally {
            other.destroyForcibly().waitFor();
        }
        assertThat(output.getOut()).contains("in use by another process");
    }

    private static org.springframework.context.ConfigurableApplicationContext start(String url) {
        return new SpringApplicationBuilder(SunderApplication.class)
                .run("--server.port=0", "--spring.datasource.url=" + url);
    }
}
