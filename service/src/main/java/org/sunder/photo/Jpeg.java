package org.sunder.photo;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/**
 * A JPEG, segment by segment (ITU-T T.81, annex B). Kept are the tables, the frame, the scans, and of the segments of applications
 * what the colours and the way up need; all others, comments, and whatever follows the end are left out.
 */
final class Jpeg {

    private static final int START = 0xD8;
    private static final int END = 0xD9;
    private static final int SCAN = 0xDA;
    private static final int QUANTIZATION = 0xDB;
    private static final int HUFFMAN = 0xC4;
    private static final int RESTARTS = 0xDD;
    private static final int NEVER_ALONE = 0x01; // a marker without a segment, as are those of restarts
    private static final int FIRST_RESTART = 0xD0;
    private static final int LAST_RESTART = 0xD7;
    private static final int FIRST_FRAME = 0xC0;
    private static final int LAST_SHOWN_FRAME = 0xC2; // baseline, extended and progressive: what browsers show
    private static final int LAST_FRAME = 0xCF;
    private static final int JFIF = 0xE0;
    private static final int EXIF = 0xE1;
    private static final int COLOURS = 0xE2;
    private static final int ADOBE = 0xEE;

    private static final byte[] JFIF_NAME = name("JFIF");
    private static final byte[] EXIF_NAME = name("Exif\0");
    private static final byte[] COLOURS_NAME = name("ICC_PROFILE");
    private static final byte[] ADOBE_NAME = name("Adobe");

    private static final int JFIF_LENGTH = 12; // without its thumbnail
    private static final int FEWEST_JFIF = 14;
    private static final int ADOBE_LENGTH = 12;
    private static final int MOST_SCANS =
            200; // a progressive one has about 10; each is decoded over all of the picture
    private static final int FRAME = 6;
    private static final int OF_COMPONENT = 3;

    private final Bytes bytes;
    private final ByteArrayOutputStream kept;
    private int at = 2;
    private int width;
    private int height;
    private int scans;
    private int orientation = Orientation.UPRIGHT;

    Jpeg(Bytes bytes) {
        this.bytes = bytes;
        this.kept = new ByteArrayOutputStream(bytes.length());
    }

    CleanPhoto cleaned() {
        for (int marker = marker(); marker != END; marker = marker()) {
            if (marker == START
                    || marker == 0
                    || marker == NEVER_ALONE
                    || (marker >= FIRST_RESTART && marker <= LAST_RESTART)) {
                throw CleanPhoto.broken("at byte " + at + " stands something that cannot stand there");
            }
            segment(marker);
        }
        if (scans == 0) {
            throw CleanPhoto.broken("there is no picture in it");
        }
        return new CleanPhoto(PhotoType.JPEG, width, height, written());
    }

    private byte[] written() {
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length());
        write(out, 0xFF, START);
        if (orientation != Orientation.UPRIGHT) {
            byte[] block = Orientation.block(orientation);
            head(out, EXIF, EXIF_NAME.length + block.length);
            out.writeBytes(EXIF_NAME);
            out.writeBytes(block);
        }
        out.writeBytes(kept.toByteArray());
        write(out, 0xFF, END);
        return out.toByteArray();
    }

    /** The next marker, and beyond it; as viewers do, over what stands before it and belongs to nothing. */
    private int marker() {
        while (bytes.u8(at) != 0xFF) {
            at++;
        }
        while (bytes.u8(at) == 0xFF) {
            at++; // any number of these may stand before a marker
        }
        return bytes.u8(at++);
    }

    /** Takes the segment of a marker, or leaves it out; of a scan its data too. */
    private void segment(int marker) {
        int length = bytes.u16(at) - 2;
        int from = at + 2;
        if (length < 0) {
            throw CleanPhoto.broken("at byte " + at + " a part says that it is shorter than nothing");
        }
        bytes.require(from, length);
        at = from + length;
        if (marker == SCAN) {
            scan(from, length);
        } else if (marker >= FIRST_FRAME && marker <= LAST_FRAME && marker != HUFFMAN) {
            frame(marker, from, length);
        } else if (marker == QUANTIZATION || marker == HUFFMAN || marker == RESTARTS) {
            keep(marker, from, length);
        } else {
            ofApplication(marker, from, length);
        }
    }

    private void ofApplication(int marker, int from, int length) {
        if (marker == JFIF && length >= FEWEST_JFIF && bytes.startsWith(from, JFIF_NAME)) {
            head(kept, JFIF, FEWEST_JFIF);
            kept.write(bytes.array(), from, JFIF_LENGTH);
            write(kept, 0, 0); // no thumbnail
        } else if (marker == EXIF
                && orientation == Orientation.UPRIGHT
                && length >= EXIF_NAME.length
                && bytes.startsWith(from, EXIF_NAME)) {
            orientation = Orientation.of(bytes.array(), from + EXIF_NAME.length, length - EXIF_NAME.length);
        } else if (marker == COLOURS && bytes.startsWith(from, COLOURS_NAME)) {
            keep(marker, from, length);
        } else if (marker == ADOBE && length >= ADOBE_LENGTH && bytes.startsWith(from, ADOBE_NAME)) {
            keep(marker, from, ADOBE_LENGTH);
        }
    }

    private void frame(int marker, int from, int length) {
        if (marker > LAST_SHOWN_FRAME) {
            throw new ProblemException(
                    ProblemType.UNSUPPORTED_MEDIA_TYPE,
                    "This is a JPEG of a kind that browsers do not show; baseline and progressive ones are taken.");
        }
        if (width != 0) {
            throw CleanPhoto.broken("it states its size twice");
        }
        int components = length < FRAME ? 0 : bytes.u8(from + FRAME - 1);
        if (components == 0 || length != FRAME + OF_COMPONENT * components || bytes.u8(from) != 8) {
            throw CleanPhoto.broken("its size cannot be read");
        }
        CleanPhoto.requireSize(bytes.u16(from + 3), bytes.u16(from + 1));
        height = bytes.u16(from + 1);
        width = bytes.u16(from + 3);
        keep(marker, from, length);
    }

    private void scan(int from, int length) {
        if (width == 0) {
            throw CleanPhoto.broken("its size is not stated before the picture");
        }
        if (++scans > MOST_SCANS) {
            throw CleanPhoto.broken("it draws the picture more than " + MOST_SCANS + " times over");
        }
        keep(SCAN, from, length);
        int data = at;
        while (!endsData()) {
            at++;
        }
        if (at == data) {
            throw CleanPhoto.broken("there is no picture in it");
        }
        kept.write(bytes.array(), data, at - data);
    }

    /** Whether a marker stands here: neither a byte that only looks like one, nor a restart, which belongs to the data. */
    private boolean endsData() {
        if (bytes.u8(at) != 0xFF) {
            return false;
        }
        int next = bytes.u8(at + 1);
        return next != 0 && !(next >= FIRST_RESTART && next <= LAST_RESTART);
    }

    private void keep(int marker, int from, int length) {
        head(kept, marker, length);
        kept.write(bytes.array(), from, length);
    }

    private static void head(ByteArrayOutputStream out, int marker, int length) {
        write(out, 0xFF, marker);
        write(out, (length + 2) >> 8, length + 2);
    }

    private static void write(ByteArrayOutputStream out, int first, int second) {
        out.write(first);
        out.write(second);
    }

    /** As it begins a segment: followed by a zero. */
    private static byte[] name(String name) {
        return (name + "\0").getBytes(StandardCharsets.ISO_8859_1);
    }
}
