package org.sunder.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;
import org.sunder.caution.Caution;

/**
 * The script that lets a browser open the field page without network. It names every file of this version; any change of
 * one makes another version, which replaces the kept one as a whole.
 */
@Component
class OfflineWorker {

    private static final int VERSION_DIGITS = 16;

    private final String script;

    OfflineWorker() throws IOException {
        var resolver = new PathMatchingResourcePatternResolver();
        List<Resource> assets = sorted(resolver.getResources("classpath:/static/assets/*"));
        List<Resource> templates = Stream.of(
                        "page/field.html",
                        "page/fragments.html",
                        "page/airframe.html",
                        "page/flight-day.html",
                        "ladder-card.html")
                .<Resource>map(name -> new ClassPathResource("templates/" + name))
                .toList();
        Resource source = new ClassPathResource("worker.js");
        String files = assets.stream()
                .map(asset -> "'/assets/" + asset.getFilename() + "'")
                .collect(Collectors.joining(", ", "[", "]"));
        script = text(source)
                .replace("{{version}}", version(assets, templates, List.of(source)))
                .replace("{{files}}", files);
    }

    /** The script, complete. */
    String script() {
        return script;
    }

    private static List<Resource> sorted(Resource[] found) {
        return Arrays.stream(found)
                .sorted(Comparator.comparing(resource -> Objects.requireNonNull(resource.getFilename())))
                .toList();
    }

    private static String text(Resource resource) throws IOException {
        return resource.getContentAsString(StandardCharsets.UTF_8);
    }

    @SafeVarargs
    private static String version(List<Resource>... lists) throws IOException {
        MessageDigest digest = sha256();
        digest.update(Caution.beforeFiring().getBytes(StandardCharsets.UTF_8)); // the kept page says it, and these
        digest.update(Term.AT_THE_FIELD.toString().getBytes(StandardCharsets.UTF_8));
        for (List<Resource> list : lists) {
            for (Resource resource : list) {
                digest.update(resource.getContentAsByteArray());
            }
        }
        return HexFormat.of().formatHex(digest.digest()).substring(0, VERSION_DIGITS);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
