package org.sunder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The table of security requirements names each requirement of levels 1 and 2 once, and says of each what holds it. */
class SecurityTableTest {

    private static final Path TABLE = Path.of("docs", "security.md");

    /**
     * How many requirements of levels 1 and 2 each section of the standard (OWASP ASVS 5.0.0) has; within a section they come first,
     * so these are the numbers 1 up to it. Sections of level 3 alone are left out.
     */
    private static final String SECTIONS = """
            1.1 2, 1.2 9, 1.3 11, 1.4 3, 1.5 2, 2.1 3, 2.2 3, 2.3 4, 2.4 1, 3.2 2, 3.3 4, 3.4 6, 3.5 5, 3.7 2, 4.1 3, 4.2 1, 4.3 2,
            4.4 4, 5.1 1, 5.2 3, 5.3 2, 5.4 3, 6.1 3, 6.2 12, 6.3 4, 6.4 4, 6.5 5, 6.6 3, 6.8 4, 7.1 3, 7.2 4, 7.3 2, 7.4 5, 7.5 2,
            7.6 2, 8.1 2, 8.2 3, 8.3 1, 8.4 1, 9.1 3, 9.2 4, 10.1 2, 10.2 2, 10.3 4, 10.4 11, 10.5 5, 10.6 2, 10.7 3, 11.1 2, 11.2 3,
            11.3 3, 11.4 4, 11.5 1, 11.6 1, 12.1 3, 12.2 2, 12.3 4, 13.1 1, 13.2 5, 13.3 2, 13.4 5, 14.1 2, 14.2 4, 14.3 3, 15.1 3,
            15.2 3, 15.3 7, 16.1 1, 16.2 5, 16.3 4, 16.4 3, 16.5 3, 17.1 1, 17.2 4, 17.3 2""";

    private static final int BOTH_LEVELS = 253;
    private static final Pattern ROW = Pattern.compile("(?m)^\\| ([\\d., –]+) \\| (.+) \\| (.+) \\|$");
    private static final Pattern NUMBERS = Pattern.compile("(\\d+\\.\\d+)\\.(\\d+)(?:–(\\d+))?");

    @Test
    void namesEachRequirementOnce() throws IOException {
        List<String> named = new ArrayList<>();
        Matcher row = ROW.matcher(Files.readString(TABLE));
        while (row.find()) {
            Matcher numbers = NUMBERS.matcher(row.group(1));
            while (numbers.find()) {
                int first = Integer.parseInt(numbers.group(2));
                int last = numbers.group(3) == null ? first : Integer.parseInt(numbers.group(3));
                String section = numbers.group(1);
                IntStream.rangeClosed(first, last).forEach(number -> named.add(section + "." + number));
            }
        }
        assertThat(named).containsExactlyInAnyOrderElementsOf(all());
    }

    @Test
    void saysOfEachWhatHoldsIt() throws IOException {
        Map<String, String> unsaid = new TreeMap<>();
        Matcher row = ROW.matcher(Files.readString(TABLE));
        while (row.find()) {
            String held = row.group(3);
            if (!held.matches("(Does not apply|Falls short|The modules' tests: |`\\w+Test).*")) {
                unsaid.put(row.group(1), held);
            }
        }
        assertThat(unsaid).isEmpty();
    }

    private static List<String> all() {
        List<String> all = new ArrayList<>();
        Matcher section = Pattern.compile("(\\d+\\.\\d+) (\\d+)").matcher(SECTIONS);
        while (section.find()) {
            String name = section.group(1);
            IntStream.rangeClosed(1, Integer.parseInt(section.group(2)))
                    .forEach(number -> all.add(name + "." + number));
        }
        assertThat(all).hasSize(BOTH_LEVELS);
        return all;
    }
}
