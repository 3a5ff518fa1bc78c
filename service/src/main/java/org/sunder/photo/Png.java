package org.sunder.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * A PNG, chunk by chunk (W3C PNG, third edition). Kept are the picture and what its colours and the way up need; texts, times, further
 * pictures and whatever follows the end are left out. Its packed data is counted, never kept: there must be just as much as the
 * picture needs.
 */
final class Png {

    static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A};

    private static final Set<String> OF_THE_COLOURS = Set.of("tRNS", "gAMA", "cHRM", "sRGB", "iCCP", "sBIT", "cICP");

    /** By kind of colour: samples of a pixel, and how many bits one may have. */
    private static final Map<Integer, Colour> COLOURS = Map.of(
            0, new Colour(1, Set.of(1, 2, 4, 8, 16)),
            2, new Colour(3, Set.of(8, 16)),
            3, new Colour(1, Set.of(1, 2, 4, 8)),
            4, new Colour(2, Set.of(8, 16)),
            6, new Colour(4, Set.of(8, 16)));

    private static final int OF_A_PALETTE = 3;

    /** First column and row of each pass of an interlaced picture, and its steps. */
    private static final int[][] PASSES = {
        {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
    };

    private static final int LENGTH = 4;
    private static final int TYPE = 4;
    private static final int SUM = 4;
    private static final int HEADER = 13;
    private static final int LARGEST_PALETTE = 3 * 256;
    private static final int BUFFER = 8192;
    private static final int BITS = 8;

    private record Colour(int samples, Set<Integer> depths) {}

    private final Bytes bytes;
    private final ByteArrayOutputStream kept;
    private int at = SIGNATURE.length;
    private int orientation = Orientation.UPRIGHT;
    private boolean palette;
    private boolean data;

    Png(Bytes bytes) {
        this.bytes = bytes;
        this.kept = new ByteArrayOutputStream(bytes.length());
    }

    CleanPhoto cleaned() {
        Chunk header = chunk();
        if (!header.type.equals("IHDR") || header.length != HEADER) {
            throw CleanPhoto.broken("its size is not stated at the beginning");
        }
        long width = bytes.u32(header.from);
        long height = bytes.u32(header.from + 4);
        CleanPhoto.requireSize(width, height);
        Packed packed = new Packed(needed(header.from, width, height));
        try {
            chunks(packed);
        } finally {
            packed.end();
        }
        if (!packed.complete() || (bytes.u8(header.from + 9) == OF_A_PALETTE && !palette)) {
            throw CleanPhoto.broken("the picture in it is not complete");
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length());
        out.writeBytes(SIGNATURE);
        copy(out, header);
        if (orientation != Orientation.UPRIGHT) {
            write(out, "eXIf", Orientation.block(orientation));
        }
        out.writeBytes(kept.toByteArray());
        write(out, "IEND", new byte[0]);
        return new CleanPhoto(PhotoType.PNG, (int) width, (int) height, out.toByteArray());
    }

    /** Takes chunks up to the end of the picture, or leaves them out. */
    private void chunks(Packed packed) {
        for (Chunk chunk = chunk(); !chunk.type.equals("IEND"); chunk = chunk()) {
            if (chunk.type.equals("IDAT")) {
                packed.add(bytes.array(), chunk.from, chunk.length);
                data = true;
                copy(kept, chunk);
            } else if (chunk.type.equals("PLTE")) {
                if (palette || data || chunk.length % 3 != 0 || chunk.length > LARGEST_PALETTE) {
                    throw CleanPhoto.broken("its list of colours cannot be");
                }
                palette = true;
                copy(kept, chunk);
            } else if (chunk.type.equals("eXIf")) {
                orientation = Orientation.of(bytes.array(), chunk.from, chunk.length);
            } else if (OF_THE_COLOURS.contains(chunk.type) && !data) {
                copy(kept, chunk);
            } else if (Character.isUpperCase(chunk.type.charAt(0))) {
                throw CleanPhoto.broken("it has a part that no viewer knows, " + chunk.type);
            }
        }
    }

    /**
     * A part of the file.
     *
     * @param type its name of four letters
     * @param from where its data begins
     * @param length of its data
     */
    private record Chunk(String type, int from, int length) {}

    /** The chunk that stands here, with the right sum at its end; and beyond it. */
    private Chunk chunk() {
        long length = bytes.u32(at);
        bytes.require(at, LENGTH + TYPE + length + SUM);
        int from = at + LENGTH + TYPE;
        CRC32 sum = new CRC32();
        sum.update(bytes.array(), at + LENGTH, TYPE + (int) length);
        String type = new String(bytes.array(), at + LENGTH, TYPE, StandardCharsets.ISO_8859_1);
        if (sum.getValue() != bytes.u32(from + (int) length)) {
            throw CleanPhoto.broken("a part at byte " + at + " was damaged on its way");
        }
        if (!type.chars().allMatch(c -> (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'))) {
            throw CleanPhoto.broken("at byte " + at + " a part should begin");
        }
        at = from + (int) length + SUM;
        return new Chunk(type, from, (int) length);
    }

    /** How many bytes the picture has unpacked. */
    private long needed(int header, long width, long height) {
        int depth = bytes.u8(header + 8);
        Colour colour = COLOURS.get(bytes.u8(header + 9));
        int packing = bytes.u8(header + 10);
        int filtering = bytes.u8(header + 11);
        int interlaced = bytes.u8(header + 12);
        if (colour == null || !colour.depths.contains(depth) || packing != 0 || filtering != 0 || interlaced > 1) {
            throw CleanPhoto.broken("it is of a form that no viewer knows");
        }
        int bits = colour.samples * depth;
        if (interlaced == 0) {
            return rows(width, height, bits);
        }
        long all = 0;
        for (int[] pass : PASSES) {
            all += rows((width - pass[0] + pass[2] - 1) / pass[2], (height - pass[1] + pass[3] - 1) / pass[3], bits);
        }
        return all;
    }

    /** Bytes of so many rows, each with the one that names its filter; none where there is no column. */
    private static long rows(long width, long height, int bits) {
        return width == 0 ? 0 : height * (1 + (width * bits + BITS - 1) / BITS);
    }

    private void copy(ByteArrayOutputStream out, Chunk chunk) {
        int before = LENGTH + TYPE;
        out.write(bytes.array(), chunk.from - before, before + chunk.length + SUM);
    }

    private static void write(ByteArrayOutputStream out, String type, byte[] data) {
        byte[] summed = ByteBuffer.allocate(TYPE + data.length)
                .put(type.getBytes(StandardCharsets.ISO_8859_1))
                .put(data)
                .array();
        CRC32 sum = new CRC32();
        sum.update(summed);
        out.writeBytes(ByteBuffer.allocate(LENGTH).putInt(data.length).array());
        out.writeBytes(summed);
        out.writeBytes(ByteBuffer.allocate(SUM).putInt((int) sum.getValue()).array());
    }

    /** Packed data, unpacked only to be counted, and not beyond what is needed. */
    private static final class Packed {

        private final Inflater inflater = new Inflater();
        private final byte[] buffer = new byte[BUFFER];
        private final long needed;
        private long unpacked;

        Packed(long needed) {
            this.needed = needed;
        }

        void add(byte[] file, int from, int length) {
            inflater.setInput(file, from, length);
            try {
                while (!inflater.finished() && !inflater.needsInput()) {
                    int more = inflater.inflate(buffer);
                    unpacked += more;
                    if (unpacked > needed || inflater.needsDictionary()) {
                        throw CleanPhoto.broken("there is more in it than the picture that it states");
                    }
                }
            } catch (DataFormatException e) {
                throw CleanPhoto.broken("the picture in it cannot be unpacked");
            }
        }

        boolean complete() {
            return inflater.finished() && unpacked == needed;
        }

        void end() {
            inflater.end();
        }
    }
}
