package org.sunder.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** All pictures of pages on one sheet: each page on a phone and at a desk, day and night side by side. */
final class ContactSheet {

    private static final Pattern PICTURE = Pattern.compile("(.+?)((?:-dark)?-(?:390|1280))\\.png");
    private static final List<String> PLACES = List.of("-390", "-dark-390", "-1280", "-dark-1280");
    private static final List<String> WORDS =
            List.of("phone, by day", "phone, by night", "desk, by day", "desk, by night");

    private ContactSheet() {}

    /** Writes index.html beside the pictures of a folder. */
    static void write(Path folder) throws IOException {
        SortedMap<String, TreeSet<String>> pages = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.map(file -> PICTURE.matcher(file.getFileName().toString()))
                    .filter(Matcher::matches)
                    .forEach(found -> pages.computeIfAbsent(found.group(1), name -> new TreeSet<>())
                            .add(found.group(2)));
        }
        List<String> lines = new ArrayList<>();
        lines.add("<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>Pages of Sunder</title><style>"
                + "body{font:1rem/1.4 system-ui,sans-serif;margin:1rem;background:#888}"
                + "section{display:grid;grid-template-columns:390px 390px 1fr 1fr;gap:1rem;align-items:start}"
                + "figure{margin:0}img{width:100%}h2{margin:2rem 0 .5rem}</style></head><body><h1>"
                + pages.size() + " pages and states</h1>");
        lines.add("<p>"
                + String.join(
                        " ", pages.keySet().stream().map(ContactSheet::link).toList()) + "</p>");
        pages.forEach((name, taken) -> {
            lines.add("<h2 id=\"" + name + "\">" + name + "</h2><section>");
            for (int i = 0; i < PLACES.size(); i++) {
                lines.add(taken.contains(PLACES.get(i)) ? figure(name, i) : "<span></span>");
            }
            lines.add("</section>");
        });
        lines.add("</body></html>");
        Files.write(folder.resolve("index.html"), lines);
    }

    private static String link(String name) {
        return "<a href=\"#" + name + "\">" + name + "</a>";
    }

    private static String figure(String name, int place) {
        String file = name + PLACES.get(place) + ".png";
        return "<figure><figcaption>" + WORDS.get(place) + "</figcaption><a href=\"" + file
                + "\"><img loading=\"lazy\" src=\"" + file + "\" alt=\"" + name + ", " + WORDS.get(place)
                + "\"></a></figure>";
    }
}
