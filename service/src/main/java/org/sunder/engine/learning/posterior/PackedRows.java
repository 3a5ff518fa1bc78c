package org.sunder.engine.learning.posterior;

import java.util.Arrays;

/**
 * Rows of whole numbers along a smooth curve, each number of bytes what its fourth differences need: these are small where the
 * curve is nearly a cubic, and are written in base 128 (LEB128; DWARF 5, section 7.6) with the sign as the last bit. Nothing is
 * rounded. Immutable.
 */
final class PackedRows {

    private static final int ORDER = 4;
    private static final int MOST_BYTES = 10; // of one number of 64 bits

    private final int length;
    private final byte[] bytes;
    /** Where each row begins. */
    private final int[] starts;

    private PackedRows(int length, byte[] bytes, int[] starts) {
        this.length = length;
        this.bytes = bytes;
        this.starts = starts;
    }

    /**
     * Rows of one length.
     *
     * @param values row after row; not changed
     * @param length of each row
     */
    static PackedRows of(long[] values, int length) {
        int[] starts = new int[values.length / length];
        byte[] bytes = new byte[values.length * 3];
        long[] row = new long[length];
        int at = 0;
        for (int i = 0; i < starts.length; i++) {
            starts[i] = at;
            System.arraycopy(values, i * length, row, 0, length);
            difference(row);
            if (bytes.length < at + length * MOST_BYTES) {
                bytes = Arrays.copyOf(bytes, bytes.length + bytes.length / 2 + length * MOST_BYTES);
            }
            for (long value : row) {
                at = write(value, bytes, at);
            }
        }
        return new PackedRows(length, Arrays.copyOf(bytes, at), starts);
    }

    /** Memory that they take. */
    int size() {
        return bytes.length + starts.length * Integer.BYTES;
    }

    /** Writes one row, from {@code start} on. */
    void read(int number, long[] target, int start) {
        int at = starts[number];
        for (int k = start; k < start + length; k++) {
            int next = bytes[at++];
            long value = next & 0x7F;
            for (int shift = 7; next < 0; shift += 7) {
                next = bytes[at++];
                value |= (next & 0x7FL) << shift;
            }
            target[k] = value >>> 1 ^ -(value & 1);
        }
        for (int order = ORDER; order > 0; order--) {
            for (int k = start + order; k < start + length; k++) {
                target[k] += target[k - 1];
            }
        }
    }

    /** All rows, one after another. */
    long[] all() {
        long[] result = new long[starts.length * length];
        for (int i = 0; i < starts.length; i++) {
            read(i, result, i * length);
        }
        return result;
    }

    /** The first number stays, then follow the first of each order of differences, then those of the fourth. */
    private static void difference(long[] row) {
        for (int order = 1; order <= ORDER; order++) {
            for (int k = row.length - 1; k >= order; k--) {
                row[k] -= row[k - 1];
            }
        }
    }

    private static int write(long value, byte[] bytes, int start) {
        int at = start;
        long rest = value << 1 ^ value >> 63;
        while (rest >>> 7 != 0) {
            bytes[at++] = (byte) (rest | 0x80);
            rest >>>= 7;
        }
        bytes[at++] = (byte) rest;
        return at;
    }
}
