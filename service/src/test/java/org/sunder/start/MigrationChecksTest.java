package org.sunder.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.core.io.FileSystemResource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.util.FileSystemUtils;

/** A jar whose changes of the tables are not those that it was built with is refused, each difference by its name. */
class MigrationChecksTest {

    private static final Path SOURCES = Path.of("src", "main", "resources", "db");

    @TempDir
    Path jar;

    @BeforeEach
    void likeOurs() throws IOException {
        FileSystemUtils.copyRecursively(SOURCES, jar.resolve("db"));
    }

    /** Written anew with {@code -Dmigrations.write=true}. */
    @Test
    void theListNamesEveryFileAsItIs() throws IOException {
        Path list = Path.of("src", "main", "resources", MigrationChecks.LIST);
        List<String> lines;
        try (Stream<Path> files = Files.list(SOURCES.resolve("migration"))) {
            lines = files.sorted(Comparator.comparingInt(MigrationChecksTest::version))
                    .map(MigrationChecksTest::line)
                    .toList();
        }
        if (Boolean.getBoolean("migrations.write")) {
            Files.write(list, lines);
        }
        assertThat(Files.readAllLines(list))
                .as("write it anew with -Dtest=MigrationChecksTest -Dmigrations.write=true")
                .isEqualTo(lines);
    }

    @Test
    void takesWhatItWasBuiltWith() throws IOException {
        check();
    }

    @Test
    void takesOtherLineEnds() throws IOException {
        Path file = migration("V2__stock.sql");
        Files.writeString(file, Files.readString(file).replace("\n", "\r\n"));
        check();
    }

    @Test
    void namesEveryDifference() throws IOException {
        Files.writeString(migration("V2__stock.sql"), "\n-- one line more", StandardOpenOption.APPEND);
        Files.delete(migration("V4__access_keys.sql"));
        Files.writeString(migration("V3_1__more.sql"), "drop table ground_test;");
        assertThatThrownBy(this::check)
                .isInstanceOf(AlteredJar.class)
                .hasMessage("V2__stock.sql was altered, V4__access_keys.sql is missing, V3_1__more.sql was added");
    }

    @Test
    void refusesAJarWithoutItsList() throws IOException {
        Files.delete(jar.resolve(MigrationChecks.LIST));
        assertThatThrownBy(this::check)
                .isInstanceOf(AlteredJar.class)
                .hasMessageContaining("V1__airframes_and_ground_tests.sql was added");
    }

    private Path migration(String name) {
        return jar.resolve("db").resolve("migration").resolve(name);
    }

    private void check() throws IOException {
        try (URLClassLoader loader = new URLClassLoader(new URL[] {jar.toUri().toURL()}, null)) {
            MigrationChecks.check(new PathMatchingResourcePatternResolver(loader));
        }
    }

    private static int version(Path file) {
        return Integer.parseInt(file.getFileName().toString().replaceFirst("V(\\d+)__.*", "$1"));
    }

    private static String line(Path file) {
        try {
            return MigrationChecks.digest(new FileSystemResource(file)) + "  " + file.getFileName();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
