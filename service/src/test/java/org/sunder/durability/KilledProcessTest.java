package org.sunder.durability;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sunder.process.StartedService;

/** A process killed under load: every write it acknowledged is there afterwards. */
class KilledProcessTest {

    private static final int ACKNOWLEDGED = 60;

    @TempDir
    Path folder;

    @Test
    void theServiceKeepsWhatItAcknowledged() throws Exception {
        Path database = folder.resolve("sunder");
        String url = "jdbc:h2:file:" + database + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";
        List<String> acknowledged = killedAfter(ServiceUnderLoad.class, url);
        assertThat(namesIn(database)).containsAll(acknowledged);
    }

    @Test
    void theDatabasesDefaultSettingsWouldLoseSome() throws Exception {
        Path database = folder.resolve("plain");
        List<String> acknowledged = killedAfter(PlainDatabaseUnderLoad.class, "jdbc:h2:file:" + database);
        assertThat(namesIn(database)).as("the kill must bite").doesNotContain(acknowledged.get(ACKNOWLEDGED - 1));
    }

    private static List<String> killedAfter(Class<?> program, String url) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(StartedService.java());
        command.addAll(List.of(program.getName(), url));
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<String> acknowledged = new ArrayList<>();
        try (BufferedReader output = process.inputReader()) {
            String line = output.readLine();
            while (line != null && acknowledged.size() < ACKNOWLEDGED) {
                if (line.startsWith("acknowledged ")) {
                    acknowledged.add(line.substring("acknowledged ".length()));
                }
                line = acknowledged.size() < ACKNOWLEDGED ? output.readLine() : null;
            }
        } finally {
            process.destroyForcibly();
            process.waitFor();
        }
        assertThat(acknowledged).hasSize(ACKNOWLEDGED);
        return acknowledged;
    }

    private static Set<String> namesIn(Path database) throws Exception {
        Set<String> names = new HashSet<>();
        try (Connection connection = DriverManager.getConnection("jdbc:h2:file:" + database, "sunder", "");
                ResultSet rows = connection.createStatement().executeQuery("select name from airframe")) {
            while (rows.next()) {
                names.add(rows.getString(1));
            }
        }
        return names;
    }
}
