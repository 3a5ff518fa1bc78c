package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.json.JsonMapper;

/** What the documents point at exists. */
class DocsTest {

    private static final Path TOP = Path.of("..");
    private static final Pattern LINK = Pattern.compile("\\]\\((?!https?:)([^)#]+)");
    private static final Pattern PACKAGE = Pattern.compile("(?m)^  ([a-z]+)/ ");

    private static final Pattern SETTING = Pattern.compile(
            "\\b(?:(?:SUNDER|SPRING|SERVER|LOGGING|MANAGEMENT)_[A-Z_]+[A-Z]"
                    + "|(?:sunder\\.(?:access|data)|spring|server|logging|management)[.-][a-z][a-z.-]+[a-z])\\b(?!\\.(?:jar|env|java))");

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

    /** As the environment writes it, such as SPRING_DATASOURCE_URL, and with dots, such as {@code spring.datasource.url}. */
    @ParameterizedTest
    @MethodSource("documents")
    void everySettingNamedIsOne(Path document) throws IOException {
        Set<String> known = settings();
        assertThat(known).contains("sunderaccesshosts", "serveraddress");
        assertThat(SETTING.matcher(Files.readString(document)).results().map(MatchResult::group))
                .allSatisfy(name -> assertThat(known).contains(letters(name)));
    }

    @Test
    void theTableOfSettingsHasThemAll() throws IOException {
        String text = Files.readString(Path.of("docs/club-server.md"));
        List<String> rows = Pattern.compile("(?m)^\\| `(sunder\\.[a-z.-]+)` \\|")
                .matcher(text)
                .results()
                .map(row -> row.group(1))
                .toList();
        assertThat(rows)
                .containsExactlyInAnyOrder(
                        "sunder.access.keys",
                        "sunder.access.hosts",
                        "sunder.access.requests-per-minute",
                        "sunder.access.failed-keys-per-minute",
                        "sunder.data-folder",
                        "sunder.database-url");
    }

    /** Ours, and those that the libraries on the class path describe. */
    private static Set<String> settings() throws IOException {
        Set<String> names = new HashSet<>(Set.of(
                "sunderdatafolder",
                "sunderdatabaseurl",
                "sunderaccesskeys",
                "sunderaccesshosts",
                "sunderaccessrequestsperminute",
                "sunderaccessfailedkeysperminute"));
        JsonMapper json = new JsonMapper();
        for (URL described : Collections.list(
                DocsTest.class.getClassLoader().getResources("META-INF/spring-configuration-metadata.json"))) {
            try (InputStream in = described.openStream()) {
                json.readTree(in)
                        .path("properties")
                        .valueStream()
                        .forEach(property ->
                                names.add(letters(property.path("name").asString())));
            }
        }
        return names;
    }

    private static String letters(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    }
}
