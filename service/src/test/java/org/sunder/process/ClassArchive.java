package org.sunder.process;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.spi.ToolProvider;

/**
 * Starts of the service in a row, each quicker than without: the class path is made of jars alone, and the first process leaves an
 * archive of its classes when it stops. One that is killed leaves none, and the next start is a slow one.
 */
public final class ClassArchive {

    private final Path archive;
    private final String classPath;

    /**
     * Packs the classes of the service.
     *
     * @param folder where jar and archive may lie
     */
    public ClassArchive(Path folder) {
        this.archive = folder.resolve("classes.jsa");
        Path jar = folder.resolve("classes.jar");
        int failed = ToolProvider.findFirst("jar")
                .orElseThrow()
                .run(
                        System.out,
                        System.err,
                        "--create",
                        "--no-compress",
                        "--file=" + jar,
                        "-C",
                        StartedService.classes().toString(),
                        ".");
        if (failed != 0) {
            throw new IllegalStateException("not packed: " + jar);
        }
        List<String> all = new ArrayList<>(List.of(jar.toString()));
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .filter(part -> part.endsWith(".jar"))
                .forEach(all::add);
        this.classPath = String.join(File.pathSeparator, all);
    }

    /** How Java is started: with the archive where there is one, else so that it leaves one. */
    public List<String> java() {
        String option = Files.exists(archive) ? "-XX:SharedArchiveFile=" : "-XX:ArchiveClassesAtExit=";
        return StartedService.java(classPath, option + archive, "-Xlog:disable", "-Xlog:all=error:stderr");
    }
}
