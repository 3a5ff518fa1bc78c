package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.zip.ZipInputStream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What an earlier version left: its database, its export, and what it answered of them; see resources/versions. */
public final class EarlierVersion {

    private static final double TOLERANCE = 0.003;

    private final String folder;

    public EarlierVersion(int number) {
        folder = "/versions/" + number + "/";
    }

    private InputStream open(String name) {
        return Objects.requireNonNull(EarlierVersion.class.getResourceAsStream(folder + name), name);
    }

    /** The export. */
    public String export() {
        try (InputStream in = open("export.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts the database into a folder of data. */
    public void unpack(Path into) throws IOException {
        try (ZipInputStream zip = new ZipInputStream(open("sunder.zip"))) {
            String name = Objects.requireNonNull(zip.getNextEntry()).getName();
            Files.write(into.resolve(name), zip.readAllBytes());
        }
    }

    /** Holds what is answered now against what was answered then. */
    public void assertAnswered(Function<String, JsonNode> now) throws IOException {
        try (InputStream in = open("answers.json")) {
            List<String> differences = new ArrayList<>();
            var answers = new JsonMapper().readTree(in).properties();
            assertThat(answers).hasSizeGreaterThan(5);
            answers.forEach(then -> compare(then.getKey(), then.getValue(), now.apply(then.getKey()), differences));
            assertThat(differences).isEmpty();
        }
    }

    private static void compare(String at, JsonNode then, JsonNode now, List<String> differences) {
        if (then.isObject()) {
            then.properties()
                    .forEach(each ->
                            compare(at + "/" + each.getKey(), each.getValue(), now.path(each.getKey()), differences));
        } else if (then.isArray() && now.size() == then.size()) {
            for (int i = 0; i < then.size(); i++) {
                compare(at + "/" + i, then.get(i), now.path(i), differences);
            }
        } else if (!same(then, now)) {
            differences.add(at + ": " + now + ", not " + then);
        }
    }

    private static boolean same(JsonNode then, JsonNode now) {
        if (!then.isNumber() || !now.isNumber()) {
            return then.equals(now);
        }
        double allowed = TOLERANCE * Math.max(1, Math.abs(then.asDouble()));
        return Math.abs(then.asDouble() - now.asDouble()) <= allowed;
    }
}
