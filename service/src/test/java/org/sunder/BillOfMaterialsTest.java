package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the jar says is in it: by the build, in the CycloneDX format; and that each part may be given away with it. */
class BillOfMaterialsTest {

    private static final Path BILL = Path.of("target", "classes", "META-INF", "sbom", "application.cdx.json");

    /** Licences, by SPDX identifier, under which a part may lie in a jar that is given away; of several that a part offers one is enough. */
    private static final Set<String> ALLOWED = Set.of(
            "Apache-2.0", "MIT", "BSD-2-Clause", "BSD-3-Clause", "EPL-1.0", "EPL 1.0", "EPL-2.0", "MPL-2.0", "CC0-1.0");

    @Test
    @InThoroughRuns
    void everyPartIsNamedWithALicenceThatIsAllowed() {
        JsonNode bill = new JsonMapper().readTree(BILL.toFile());
        assertThat(bill.path("bomFormat").asString()).isEqualTo("CycloneDX");
        List<String> refused = new ArrayList<>();
        Set<String> names = new TreeSet<>();
        for (JsonNode part : bill.path("components")) {
            names.add(part.path("name").asString());
            assertThat(part.path("hashes").size())
                    .as(part.path("name").asString())
                    .isPositive();
            if (licences(part).stream().noneMatch(ALLOWED::contains)) {
                refused.add(part.path("name").asString() + " " + licences(part));
            }
        }
        assertThat(refused).isEmpty();
        assertThat(names).contains("h2", "postgresql", "hipparchus-core", "caffeine", "spring-boot");
    }

    private static List<String> licences(JsonNode part) {
        List<String> all = new ArrayList<>();
        for (JsonNode each : part.path("licenses")) {
            JsonNode licence = each.path("license");
            all.add(
                    licence.has("id")
                            ? licence.path("id").asString()
                            : licence.path("name").asString());
        }
        return all;
    }
}
