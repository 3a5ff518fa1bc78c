package org.sunder.flaws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The audit finds what is known of a part and nothing else; with -Dsunder.osv=all.zip it audits the parts of this jar. */
class KnownFlawsTest {

    /** Two of the ranges of advisory GHSA-jfh8-c2jp-5v3q (CVE-2021-44228), from memory. */
    private static final String ADVISORY = """
            {"id":"GHSA-jfh8-c2jp-5v3q","summary":"Remote code injection","affected":[
              {"package":{"ecosystem":"Maven","name":"org.apache.logging.log4j:log4j-core"},
               "ranges":[{"type":"ECOSYSTEM","events":[{"introduced":"2.13.0"},{"fixed":"2.15.0"}]},
                         {"type":"ECOSYSTEM","events":[{"introduced":"2.4"},{"fixed":"2.12.2"}]}]}]}""";

    private final JsonMapper json = new JsonMapper();

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "2.14.1, true",
        "2.13.0, true",
        "2.15.0, false",
        "2.15.0-rc1, true",
        "2.17.1, false",
        "2.12.1, true",
        "2.12.2, false",
        "2.3.2, false",
        "2.10.0, true" // after 2.4, though not as a text
    })
    void aVersionWithinARangeIsFound(String version, boolean affected) {
        assertThat(new KnownFlaws(bill(version)).in(json.readTree(ADVISORY))).hasSize(affected ? 1 : 0);
    }

    @Test
    void aLastVersionIsAffectedItself() {
        String last = ADVISORY.replace("{\"fixed\":\"2.15.0\"}", "{\"last_affected\":\"2.14.1\"}");
        assertThat(new KnownFlaws(bill("2.14.1")).in(json.readTree(last))).hasSize(1);
        assertThat(new KnownFlaws(bill("2.15.0")).in(json.readTree(last))).isEmpty();
    }

    @Test
    void whatIsWithdrawnOfAnotherKindOrOfAnotherPartIsNot() {
        KnownFlaws flaws = new KnownFlaws(bill("2.14.1"));
        assertThat(flaws.in(json.readTree(ADVISORY.replaceFirst("\\{", "{\"withdrawn\":\"2024-01-01T00:00:00Z\","))))
                .isEmpty();
        assertThat(flaws.in(json.readTree(ADVISORY.replace("\"Maven\"", "\"npm\""))))
                .isEmpty();
        assertThat(flaws.in(json.readTree(ADVISORY.replace("log4j-core", "log4j-api"))))
                .isEmpty();
        assertThatThrownBy(() -> new KnownFlaws(json.readTree("{}"))).hasMessageContaining("names no parts");
    }

    @Test
    void aVersionListedIsFoundWhateverTheRanges() {
        String listed = ADVISORY.replace("\"ranges\"", "\"versions\":[\"2.17.1\"],\"ranges\"");
        assertThat(new KnownFlaws(bill("2.17.1")).in(json.readTree(listed))).hasSize(1);
    }

    @Test
    void aWholeDatabaseIsReadFromItsZip() throws IOException {
        Path zip = folder.resolve("all.zip");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            for (String id : new String[] {"GHSA-1", "GHSA-0"}) {
                out.putNextEntry(new ZipEntry(id + ".json"));
                out.write(ADVISORY.replace("GHSA-jfh8-c2jp-5v3q", id).getBytes(StandardCharsets.UTF_8));
            }
        }
        assertThat(new KnownFlaws(bill("2.14.1")).in(zip))
                .containsExactly(
                        "org.apache.logging.log4j:log4j-core 2.14.1: GHSA-0 Remote code injection",
                        "org.apache.logging.log4j:log4j-core 2.14.1: GHSA-1 Remote code injection");
    }

    /** Only where a database lies on this machine: the build fetches none. */
    @Test
    void noPartOfTheJarHasAKnownFlaw() {
        String database = System.getProperty("sunder.osv", "");
        assumeTrue(!database.isEmpty(), "no database of flaws named by -Dsunder.osv");
        Path bill = Path.of("target", "classes", "META-INF", "sbom", "application.cdx.json");
        assertThat(new KnownFlaws(json.readTree(bill.toFile())).in(Path.of(database)))
                .isEmpty();
    }

    private JsonNode bill(String version) {
        return json.readTree(
                "{\"components\":[{\"group\":\"org.apache.logging.log4j\",\"name\":\"log4j-core\",\"version\":\""
                        + version + "\"}]}");
    }
}
