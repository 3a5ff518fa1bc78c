package org.sunder.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.sunder.persistence.Digests;

/**
 * Looks, before a database is opened, whether the changes of the tables in this jar are those that it was built with: a jar that was
 * damaged or altered would leave tables that no version knows.
 */
class MigrationChecks implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    /** The digest of each file, and its name; a test holds it against the files. */
    static final String LIST = "db/migrations.sha256";

    private static final String FILES = "classpath*:db/migration/*";

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        ClassLoader loader = context.getClassLoader();
        check(new PathMatchingResourcePatternResolver(loader));
    }

    /**
     * Compares the files with the list.
     *
     * @throws AlteredJar where they differ
     */
    static void check(PathMatchingResourcePatternResolver jar) {
        Map<String, String> there = new TreeMap<>();
        Map<String, String> listed = new TreeMap<>();
        try {
            for (Resource file : jar.getResources(FILES)) {
                there.put(Objects.requireNonNull(file.getFilename()), digest(file));
            }
            Resource list = jar.getResource(LIST);
            if (list.exists()) {
                text(list).lines().map(line -> line.split(" +", 2)).forEach(line -> listed.put(line[1], line[0]));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<String> differences = new ArrayList<>();
        listed.forEach((name, digest) -> {
            if (!there.containsKey(name)) {
                differences.add(name + " is missing");
            } else if (!digest.equals(there.get(name))) {
                differences.add(name + " was altered");
            }
        });
        there.keySet().stream()
                .filter(name -> !listed.containsKey(name))
                .forEach(name -> differences.add(name + " was added"));
        if (!differences.isEmpty()) {
            throw new AlteredJar(differences);
        }
    }

    /** Of the text with the line ends of Unix: a checkout elsewhere may have others. */
    static String digest(Resource file) throws IOException {
        return Digests.sha256(text(file));
    }

    private static String text(Resource file) throws IOException {
        return file.getContentAsString(StandardCharsets.UTF_8).replace("\r\n", "\n");
    }
}
