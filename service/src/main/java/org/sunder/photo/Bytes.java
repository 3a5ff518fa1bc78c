package org.sunder.photo;

import java.util.Arrays;

/** Reads numbers out of a file, the high byte first; what lies beyond its end is a broken photo. */
final class Bytes {

    private static final int BYTE = 0xFF;

    private final byte[] all;

    Bytes(byte[] all) {
        this.all = all;
    }

    int length() {
        return all.length;
    }

    byte[] array() {
        return all;
    }

    int u8(int at) {
        require(at, 1);
        return all[at] & BYTE;
    }

    int u16(int at) {
        return u8(at) << 8 | u8(at + 1);
    }

    long u32(int at) {
        return (long) u16(at) << 16 | u16(at + 2);
    }

    boolean startsWith(int at, byte[] beginning) {
        return at >= 0
                && at + beginning.length <= all.length
                && Arrays.equals(all, at, at + beginning.length, beginning, 0, beginning.length);
    }

    /** Refuses, by throwing, where so much does not follow from there. */
    void require(int at, long many) {
        if (at < 0 || at + many > all.length) {
            throw CleanPhoto.broken("it ends in the middle");
        }
    }
}
