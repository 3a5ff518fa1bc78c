package org.sunder.flaws;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipFile;
import org.apache.maven.artifact.versioning.ComparableVersion;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Published flaws of the parts of a jar: its bill of materials (CycloneDX) held against records in the OSV format
 * (Open Source Vulnerability format, ossf.github.io/osv-schema), without network.
 */
final class KnownFlaws {

    private static final JsonMapper JSON = new JsonMapper();

    /** Version of each part by group:name. */
    private final Map<String, String> parts = new TreeMap<>();

    /**
     * The parts of a bill.
     *
     * @throws IllegalArgumentException if it names none
     */
    KnownFlaws(JsonNode bill) {
        for (JsonNode part : bill.path("components")) {
            parts.put(
                    part.path("group").asString("") + ":" + part.path("name").asString(""),
                    part.path("version").asString(""));
        }
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("the bill names no parts");
        }
    }

    /**
     * What a file of records, zipped as the database is given away for an ecosystem, says of the parts.
     *
     * @return part, version, id and summary of each, in order
     * @throws UncheckedIOException if it cannot be read
     */
    List<String> in(Path zip) {
        List<String> found = new ArrayList<>();
        try (ZipFile file = new ZipFile(zip.toFile())) {
            for (var entry : file.stream()
                    .filter(each -> each.getName().endsWith(".json"))
                    .toList()) {
                found.addAll(in(JSON.readTree(file.getInputStream(entry))));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return found.stream().sorted().toList();
    }

    /** What one record says of the parts. */
    List<String> in(JsonNode flaw) {
        List<String> found = new ArrayList<>();
        for (JsonNode affected : flaw.path("affected")) {
            String name = affected.at("/package/name").asString("");
            String version = parts.get(name);
            if (version != null
                    && affected.at("/package/ecosystem").asString("").equals("Maven")
                    && !flaw.has("withdrawn")
                    && holds(affected, version)) {
                found.add(name + " " + version + ": " + flaw.path("id").asString("") + " "
                        + flaw.path("summary").asString(""));
            }
        }
        return found;
    }

    private static boolean holds(JsonNode affected, String version) {
        for (JsonNode listed : affected.path("versions")) {
            if (listed.asString("").equals(version)) {
                return true;
            }
        }
        for (JsonNode range : affected.path("ranges")) {
            if (range.path("type").asString("").equals("ECOSYSTEM") && within(range.path("events"), version)) {
                return true;
            }
        }
        return false;
    }

    private record Event(ComparableVersion at, boolean begins, boolean after) {}

    /** The schema's rule: of the events in order of their versions, the last one that applies to this version decides. */
    private static boolean within(JsonNode events, String version) {
        List<Event> ordered = new ArrayList<>();
        for (JsonNode event : events) {
            event.forEachEntry((kind, at) -> ordered.add(new Event(
                    new ComparableVersion(at.asString("")), kind.equals("introduced"), kind.equals("last_affected"))));
        }
        ordered.sort(Comparator.comparing(Event::at));
        ComparableVersion own = new ComparableVersion(version);
        boolean holds = false;
        for (Event event : ordered) {
            int order = own.compareTo(event.at());
            if (order > 0 || (order == 0 && !event.after())) {
                holds = event.begins();
            }
        }
        return holds;
    }
}
