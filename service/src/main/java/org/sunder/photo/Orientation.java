package org.sunder.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * Which way up a picture is shown, the one thing that is kept of what a camera wrote beside it (Exif 2.32, tag 0x0112 of the first
 * directory of a TIFF block).
 */
final class Orientation {

    /** As it lies in the file. */
    static final int UPRIGHT = 1;

    /** Bytes of a block that tells the orientation alone. */
    private static final int BLOCK = 26;

    private static final int MOST = 8;
    private static final short MAGIC = 42;
    private static final short TAG = 0x0112;
    private static final short SHORT = 3;
    private static final int HEADER = 8;
    private static final int ENTRY = 12;
    private static final int VALUE = 8;
    private static final int UNSIGNED = 0xFFFF;

    private Orientation() {}

    /** The orientation that a TIFF block tells, 1 to 8; upright where it tells none, or is no such block. */
    static int of(byte[] file, int from, int length) {
        ByteBuffer block = ByteBuffer.wrap(file, from, length).slice();
        if (length < HEADER || (block.get(0) != block.get(1)) || (block.get(0) != 'I' && block.get(0) != 'M')) {
            return UPRIGHT;
        }
        block.order(block.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        long directory = Integer.toUnsignedLong(block.getInt(4));
        if (block.getShort(2) != MAGIC || directory + 2 > length) {
            return UPRIGHT;
        }
        int first = (int) directory + 2;
        int entries = block.getShort((int) directory) & UNSIGNED;
        for (int at = first; entries > 0 && at + ENTRY <= length; at += ENTRY, entries--) {
            if (block.getShort(at) == TAG && block.getShort(at + 2) == SHORT && block.getInt(at + 4) == 1) {
                int told = block.getShort(at + VALUE) & UNSIGNED;
                return told >= UPRIGHT && told <= MOST ? told : UPRIGHT;
            }
        }
        return UPRIGHT;
    }

    /** A TIFF block that tells it and nothing else. */
    static byte[] block(int orientation) {
        return ByteBuffer.allocate(BLOCK)
                .put((byte) 'M')
                .put((byte) 'M')
                .putShort(MAGIC)
                .putInt(HEADER)
                .putShort((short) 1)
                .putShort(TAG)
                .putShort(SHORT)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0)
                .putInt(0) // no other directory
                .array();
    }
}
