package org.sunder.engine.learning.posterior;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever goes in comes out again, and what is smooth takes little room. */
class PackedRowsTest {

    private static final int LENGTH = 53;

    @Test
    void everyNumberComesBack() {
        Random random = new Random(24);
        long[] any = random.longs(20 * LENGTH).toArray();
        Arrays.fill(any, 0, LENGTH, Long.MIN_VALUE);
        Arrays.fill(any, LENGTH, 2 * LENGTH, Long.MAX_VALUE);
        any[2 * LENGTH] = Long.MIN_VALUE;
        assertSame(any, LENGTH);
        assertSame(random.ints(6).asLongStream().toArray(), 3);
        assertSame(new long[] {-7, 8}, 1);
        assertSame(new long[7 * LENGTH], LENGTH);
    }

    /** A normal log likelihood in units of 2⁻²⁴, with a rounding of each number: three bytes at most, in place of eight. */
    @Test
    void aSmoothCurveTakesLittleRoom() {
        long[] values = new long[100 * LENGTH];
        Arrays.setAll(values, i -> {
            int row = i / LENGTH;
            double z = (i % LENGTH - 26 + row * 0.1) / 4;
            return Math.round(-0.5 * z * z * 0x1p24);
        });
        assertSame(values, LENGTH);
        assertThat(PackedRows.of(values, LENGTH).size()).isLessThan(3 * values.length);
    }

    private static void assertSame(long[] values, int length) {
        long[] given = values.clone();
        PackedRows packed = PackedRows.of(values, length);
        assertThat(values).as("what was given").isEqualTo(given);
        assertThat(packed.all()).isEqualTo(values);
        long[] one = new long[length + 2];
        packed.read(values.length / length - 1, one, 1);
        assertThat(Arrays.copyOfRange(one, 1, length + 1))
                .isEqualTo(Arrays.copyOfRange(values, values.length - length, values.length));
        assertThat(one[0]).isZero();
        assertThat(one[length + 1]).isZero();
    }
}
