package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.sunder.engine.learning.model.Priors;

/** The list of changes begins with the version that is built, its model and its tables. */
class ChangesTest {

    private static final Pattern FIRST =
            Pattern.compile("(?m)^## (\\S+)( \\(in the making\\))?\n\nModel (\\S+), tables (\\d+)\\.$");
    private static final Pattern BUILT =
            Pattern.compile("<artifactId>sunder</artifactId>\\s*<version>([^<]+)</version>");
    private static final Pattern MIGRATION = Pattern.compile("V(\\d+)__.*");

    @Test
    void beginsWithWhatIsBuilt() throws IOException {
        Matcher first = FIRST.matcher(Files.readString(Path.of("docs", "changes.md")));
        assertThat(first.find()).isTrue();
        Matcher built = BUILT.matcher(Files.readString(Path.of("..", "pom.xml")));
        assertThat(built.find()).isTrue();
        assertThat(first.group(1) + (first.group(2) == null ? "" : "-SNAPSHOT")).isEqualTo(built.group(1));
        assertThat(first.group(3)).isEqualTo(Priors.MODEL);
        assertThat(Integer.parseInt(first.group(4))).isEqualTo(newest());
    }

    private static int newest() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src", "main", "resources", "db", "migration"))) {
            return files.map(file -> MIGRATION.matcher(file.getFileName().toString()))
                    .filter(Matcher::matches)
                    .mapToInt(file -> Integer.parseInt(file.group(1)))
                    .max()
                    .orElseThrow();
        }
    }
}
