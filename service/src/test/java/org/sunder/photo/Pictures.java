package org.sunder.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;

/** Pictures drawn for tests, and what cameras write beside theirs. */
public final class Pictures {

    /** Stands in all that is written beside a picture, and must stand in nothing that is kept. */
    public static final String SECRET = "taken behind the shed";

    private static final int AT_THE_END_OF_THE_START = 2;
    private static final int AFTER_THE_HEADER = 33; // of a PNG: signature and first chunk

    private Pictures() {}

    public static byte[] jpeg(int width, int height) {
        return written(drawn(width, height, BufferedImage.TYPE_INT_RGB), "jpeg", false);
    }

    public static byte[] progressiveJpeg(int width, int height) {
        return written(drawn(width, height, BufferedImage.TYPE_INT_RGB), "jpeg", true);
    }

    public static byte[] png(int width, int height) {
        return png(width, height, BufferedImage.TYPE_INT_ARGB, false);
    }

    public static byte[] png(int width, int height, int type, boolean interlaced) {
        return written(drawn(width, height, type), "png", interlaced);
    }

    /** A PNG that packs to about so many bytes, each seed another one. */
    public static byte[] noise(int bytes, long seed) {
        int side = (int) Math.sqrt(bytes / 3.0);
        BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(seed);
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                image.setRGB(x, y, random.nextInt());
            }
        }
        return written(image, "png", false);
    }

    /** A picture as a viewer shows it, not turned. */
    public static BufferedImage shown(byte[] file) {
        try {
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(file));
            if (image == null) {
                throw new AssertionError("no viewer knows this file");
            }
            return image;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A JPEG with a segment right after its start. */
    public static byte[] withSegment(byte[] jpeg, int marker, byte[] payload) {
        ByteBuffer segment = ByteBuffer.allocate(4 + payload.length)
                .put((byte) 0xFF)
                .put((byte) marker)
                .putShort((short) (payload.length + 2))
                .put(payload);
        return inserted(jpeg, AT_THE_END_OF_THE_START, segment.array());
    }

    /** A PNG with a chunk right after its header. */
    public static byte[] withChunk(byte[] png, String type, byte[] data) {
        return inserted(png, AFTER_THE_HEADER, chunk(type, data));
    }

    /** A chunk of a PNG, with the right sum. */
    public static byte[] chunk(String type, byte[] data) {
        byte[] summed = joined(type.getBytes(StandardCharsets.ISO_8859_1), data);
        CRC32 sum = new CRC32();
        sum.update(summed);
        return ByteBuffer.allocate(data.length + 12)
                .putInt(data.length)
                .put(summed)
                .putInt((int) sum.getValue())
                .array();
    }

    /** What a camera writes: the way up, its maker, and where it stood. */
    public static byte[] tiff(int orientation, ByteOrder order) {
        byte[] maker = (SECRET + "\0").getBytes(StandardCharsets.ISO_8859_1);
        int more = 8 + 2 + 3 * 12 + 4;
        ByteBuffer block = ByteBuffer.allocate(more + maker.length + 2 + 12 + 4).order(order);
        block.put((order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM").getBytes(StandardCharsets.ISO_8859_1));
        block.putShort((short) 42).putInt(8).putShort((short) 3);
        entry(block, 0x010F, 2, maker.length, more);
        block.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        entry(block, 0x8825, 4, 1, more + maker.length);
        block.putInt(0).put(maker).putShort((short) 1);
        block.putShort((short) 1).putShort((short) 2).putInt(2).put(new byte[] {'N', 0, 0, 0}); // north
        block.putInt(0);
        return block.array();
    }

    private static void entry(ByteBuffer block, int tag, int type, int count, int value) {
        block.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }

    /** The same as it stands in a JPEG. */
    public static byte[] exif(int orientation, ByteOrder order) {
        return joined("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1), tiff(orientation, order));
    }

    /** Some payload with the secret in it. */
    public static byte[] secret(String name) {
        return (name + "\0" + SECRET).getBytes(StandardCharsets.ISO_8859_1);
    }

    public static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    private static byte[] inserted(byte[] file, int at, byte[] part) {
        return ByteBuffer.allocate(file.length + part.length)
                .put(file, 0, at)
                .put(part)
                .put(file, at, file.length - at)
                .array();
    }

    private static BufferedImage drawn(int width, int height, int type) {
        BufferedImage image = new BufferedImage(width, height, type);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, height);
        pen.setColor(Color.BLUE);
        pen.fillOval(width / 4, height / 4, width / 2, height / 3);
        pen.dispose();
        return image;
    }

    private static byte[] written(BufferedImage image, String format, boolean progressive) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setProgressiveMode(progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
        try (var out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), how);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
