package org.sunder.process;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sunder.Patience;
import org.sunder.SunderApplication;

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
        this(java(), folder, settings);
    }

    /**
     * As above, by a command of its own.
     *
     * @param java how Java is started, up to the name of the program
     */
    public StartedService(List<String> java, Path folder, String... settings) throws IOException {
        this.folder = folder;
        List<String> command = new ArrayList<>(java);
        command.add(SunderApplication.class.getName());
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

    /** How a program of the tests is started: it runs for seconds, so what it runs is not compiled for long. */
    public static List<String> java() {
        return java(System.getProperty("java.class.path"));
    }

    /** The same with another class path, and more options. */
    static List<String> java(String classPath, String... options) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        command.addAll(List.of(options));
        command.addAll(List.of("-cp", classPath));
        return command;
    }

    /** The folder of the classes of the service. */
    static Path classes() {
        try {
            return Path.of(SunderApplication.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Waits until it listens. */
    public int port() throws InterruptedException {
        Patience.until(() -> !process.isAlive() || PORT.matcher(log()).find(), Patience.of(process));
        Matcher started = PORT.matcher(log());
        if (!started.find()) {
            throw new IllegalStateException(log());
        }
        return Integer.parseInt(started.group(1));
    }

    /** Everything it wrote, also to standard error. */
    public String log() {
        Path log = folder.resolve("log");
        try {
            return Files.exists(log) ? Files.readString(log) : "";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Asks it to stop, as a service manager does. */
    public void stop() {
        process.destroy();
    }

    /** Ends it at once, as the kernel does, in the middle of whatever it does. */
    public void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** What moves as long as it does anything. */
    public Supplier<?> movement() {
        return Patience.of(process);
    }

    /** Waits for its end. */
    public int exitValue() throws InterruptedException {
        if (!Patience.until(() -> !process.isAlive(), Patience.of(process))) {
            throw new IllegalStateException("still running");
        }
        return process.exitValue();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
