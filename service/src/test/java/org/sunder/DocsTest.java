package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the documents point at exists. */
class DocsTest {

    private static final Path TOP = Path.of("..");
    private static final Pattern LINK = Pattern.compile("\\]\\((?!https?:)([^)#]+)");
    private static final Pattern TEST = Pattern.compile("`(\\w+Test)(?:\\.(\\w+))?`");
    private static final Pattern PACKAGE = Pattern.compile("(?m)^  ([a-z]+)/ ");

    static Stream<Path> documents() throws IOException {
        List<Path> found;
        try (Stream<Path> docs = Files.list(Path.of("docs"))) {
            found = docs.filter(path -> path.toString().endsWith(".md")).toList();
        } catch (java.nio.file.NoSuchFileException e) {
            found = List.of();
        }
        return Stream.concat(Stream.of(TOP.resolve("README.md"), TOP.resolve("DEVELOPERS.md")), found.stream());
    }

    @ParameterizedTest
    @MethodSource("documents")
    void linksLeadSomewhere(Path document) throws IOException {
        Matcher link = LINK.matcher(Files.readString(document));
        while (link.find()) {
            assertThat(document.resolveSibling(link.group(1))).exists();
        }
    }

    @ParameterizedTest
    @MethodSource("documents")
    void testsNamedAreThere(Path document) throws IOException {
        Matcher test = TEST.matcher(Files.readString(document));
        while (test.find()) {
            List<Path> found;
            try (Stream<Path> files = Files.walk(Path.of("src", "test", "java"))) {
                found = files.filter(file -> file.endsWith(test.group(1) + ".java"))
                        .toList();
            }
            assertThat(found).as(test.group(1)).hasSize(1);
            if (test.group(2) != null) {
                assertThat(Files.readString(found.get(0))).contains(" void " + test.group(2) + "(");
            }
        }
    }

    @Test
    void theMapNamesEveryPackageAndNoOther() throws IOException {
        Matcher named = PACKAGE.matcher(Files.readString(TOP.resolve("DEVELOPERS.md")));
        List<String> map = named.results().map(found -> found.group(1)).toList();
        try (Stream<Path> folders = Files.list(Path.of("src/main/java/org/sunder"))) {
            assertThat(map)
                    .containsExactlyInAnyOrderElementsOf(folders.filter(Files::isDirectory)
                            .map(folder -> folder.getFileName().toString())
                            .toList());
        }
    }

    @Test
    void theCommandsOfTheReadmeAreThoseOfCi() throws IOException {
        assertThat(Files.readString(TOP.resolve("README.md"))).contains("mvn verify");
        assertThat(Files.readString(TOP.resolve(".ci/run"))).contains("verify");
        assertThat(TOP.resolve("sample-requests/walk.sh")).isExecutable();
    }
}
