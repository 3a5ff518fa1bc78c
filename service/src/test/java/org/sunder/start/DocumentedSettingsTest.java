package org.sunder.start;

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
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;

/** The settings that documents name, in text, service unit and container recipe, are settings. */
class DocumentedSettingsTest {

    private static final Pattern IN_ENVIRONMENT =
            Pattern.compile("\\b(?:SUNDER|SPRING|SERVER|LOGGING|MANAGEMENT)_[A-Z_]*[A-Z]\\b");
    private static final Pattern DOTTED = Pattern.compile(
            "(?<![\\w-])(?:sunder\\.(?:access|data)|spring\\.|server\\.|logging\\.|management\\.)[a-z.-]*[a-z]\\b");
    private static final Pattern ROW = Pattern.compile("(?m)^\\| `(sunder\\.[a-z.-]+)` \\|");

    @ParameterizedTest
    @ValueSource(strings = {"../README.md", "docs/club-server.md"})
    void everySettingNamedIsOne(String document) throws IOException {
        String text = Files.readString(Path.of(document));
        Set<String> known = settings();
        List<String> dotted = named(DOTTED, text);
        List<String> inEnvironment = named(IN_ENVIRONMENT, text);
        assertThat(dotted).isNotEmpty();
        assertThat(inEnvironment).contains("SUNDER_ACCESS_HOSTS", "SERVER_ADDRESS");
        assertThat(dotted).filteredOn(name -> !known.contains(letters(name))).isEmpty();
        assertThat(inEnvironment)
                .filteredOn(name -> !known.contains(letters(name)))
                .isEmpty();
    }

    @Test
    void theTableHasEverySettingOfOurs() throws IOException {
        String text = Files.readString(Path.of("docs/club-server.md"));
        assertThat(ROW.matcher(text).results().map(row -> row.group(1)))
                .containsExactlyInAnyOrderElementsOf(SettingChecks.KNOWN);
    }

    private static List<String> named(Pattern pattern, String text) {
        return pattern.matcher(text).results().map(MatchResult::group).toList();
    }

    /** Ours, and those that the libraries on the class path describe. */
    private static Set<String> settings() throws IOException {
        Set<String> names = new HashSet<>();
        SettingChecks.KNOWN.forEach(name -> names.add(letters(name)));
        JsonMapper json = new JsonMapper();
        for (URL described : Collections.list(DocumentedSettingsTest.class
                .getClassLoader()
                .getResources("META-INF/spring-configuration-metadata.json"))) {
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
