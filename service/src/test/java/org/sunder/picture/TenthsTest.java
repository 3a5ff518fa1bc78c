package org.sunder.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Lengths to a tenth, against the JDK's formatter. */
class TenthsTest {

    @Test
    void areThoseOfTheFormatter() {
        Random random = new Random(4);
        for (int i = 0; i < 100_000; i++) {
            double length = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(5));
            String written = Tenths.add(new StringBuilder(), length).toString();
            assertThat(written)
                    .isEqualTo(String.format(Locale.ROOT, "%.1f", length)
                            .replaceAll("\\.0$", "")
                            .replaceAll("^-0$", "0"));
        }
    }

    @Test
    void halvesGoAwayFromZero() {
        assertThat(Tenths.add(new StringBuilder(), 2.25)).hasToString("2.3");
        assertThat(Tenths.add(new StringBuilder(), -2.25)).hasToString("-2.3");
        assertThat(Tenths.add(new StringBuilder(), 129.96)).hasToString("130");
        assertThat(Tenths.add(new StringBuilder(), -0.04)).hasToString("0");
    }
}
