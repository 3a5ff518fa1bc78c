package org.sunder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The service as a process of its own; its data and its log are in one folder. */
public final class StartedService implements AutoCloseable {

    private static final Pattern PORT = Pattern.compile("Tomcat started on port (\\d+)");

    private final Path folder;
    private final Process process;

    /**
     * Starts it on a free port.
     *
     * @param folder where it keeps data and log
     * @param settings more arguments, e.g. {@code --server.port=80}; the last of a name counts
     */
    public StartedService(Path folder, String... settings) throws IOException {
        this.folder = folder;
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                SunderApplication.class.getName()));
        command.addAll(List.of(settings));
        if (List.of(settings).stream().noneMatch(setting -> setting.startsWith("--server.port"))) {
            command.add("--server.port=0");
        }
        if (List.of(settings).stream().noneMatch(setting -> setting.startsWith("--sunder.data-folder"))) {
            command.add("--sunder.data-folder=" + folder);
        }
        this.process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile())
                .start();
    }

    /** Waits until it listens. */
    public int port() throws IOException, InterruptedException {
        for (int i = 0; i < 1200 && process.isAlive(); i++) {
            Matcher started = PORT.matcher(log());
            if (started.find()) {
                return Integer.parseInt(started.group(1));
            }
            Thread.sleep(100);
        }
        throw new IllegalStateException(log());
    }

    /** Everything it wrote, also to standard error. */
    public String log() throws IOException {
        Path log = folder.resolve("log");
        return Files.exists(log) ? Files.readString(log) : "";
    }

    /** Asks it to stop, as a service manager does. */
    public void stop() {
        process.destroy();
    }

    /** Waits for its end. */
    public int exitValue() throws InterruptedException {
        if (!process.waitFor(120, TimeUnit.SECONDS)) {
            throw new IllegalStateException("still running");
        }
        return process.exitValue();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
