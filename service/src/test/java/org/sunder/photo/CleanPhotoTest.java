package org.sunder.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.Tag;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** What is kept of a photo, held against an independent reader of what cameras write; and what is no photo. */
class CleanPhotoTest {

    static Stream<Arguments> pictures() {
        return Stream.of(
                Arguments.of("jpeg", Pictures.jpeg(64, 48)),
                Arguments.of("progressive jpeg", Pictures.progressiveJpeg(64, 48)),
                Arguments.of("png", Pictures.png(64, 48)),
                Arguments.of("interlaced png", Pictures.png(61, 47, BufferedImage.TYPE_INT_RGB, true)),
                Arguments.of("interlaced png of one pixel", Pictures.png(1, 1, BufferedImage.TYPE_INT_RGB, true)),
                Arguments.of("png with a palette", Pictures.png(64, 48, BufferedImage.TYPE_BYTE_INDEXED, false)),
                Arguments.of("png of black and white", Pictures.png(61, 48, BufferedImage.TYPE_BYTE_BINARY, false)),
                Arguments.of("png of 16 bits", Pictures.png(64, 48, BufferedImage.TYPE_USHORT_GRAY, true)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void thePictureStaysAsItIsAndCleaningTwiceIsCleaningOnce(String name, byte[] file) {
        CleanPhoto photo = CleanPhoto.of(file);
        BufferedImage before = Pictures.shown(file);
        BufferedImage after = Pictures.shown(photo.content());
        assertThat(photo.width()).isEqualTo(before.getWidth());
        assertThat(photo.height()).isEqualTo(before.getHeight());
        assertThat(pixels(after)).isEqualTo(pixels(before));
        assertThat(CleanPhoto.of(photo.content()).content()).isEqualTo(photo.content());
        assertThat(photo.type()).isEqualTo(name.contains("jpeg") ? PhotoType.JPEG : PhotoType.PNG);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 6, 8})
    void ofWhatACameraWroteOnlyTheWayUpIsKept(int orientation) throws Exception {
        for (ByteOrder order : List.of(ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN)) {
            byte[] jpeg = withAllKinds(Pictures.jpeg(64, 48));
            jpeg = Pictures.withSegment(jpeg, 0xE1, Pictures.exif(orientation, order));
            byte[] png = withAllChunks(Pictures.png(64, 48));
            png = Pictures.withChunk(png, "eXIf", Pictures.tiff(orientation, order));
            for (byte[] file : List.of(jpeg, png)) {
                assertThat(orientationIn(file)).as("the file itself tells it").isEqualTo(orientation);
                assertThat(text(file)).contains(Pictures.SECRET);
                CleanPhoto photo = CleanPhoto.of(file);
                assertThat(text(photo.content())).doesNotContain(Pictures.SECRET);
                assertThat(orientationIn(photo.content())).isEqualTo(orientation == 1 ? null : orientation);
                assertThat(written(photo.content())).isEqualTo(orientation == 1 ? List.of() : List.of("Orientation"));
                assertThat(pixels(Pictures.shown(photo.content()))).isEqualTo(pixels(Pictures.shown(file)));
                assertThat(CleanPhoto.of(photo.content()).content()).isEqualTo(photo.content());
            }
        }
    }

    @Test
    void whatTheColoursNeedIsKept() {
        byte[] profile = "ICC_PROFILE\0\1\1 what the colours are".getBytes(StandardCharsets.ISO_8859_1);
        byte[] adobe = Pictures.joined(
                new byte[] {'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, 1}, Pictures.secret("its maker"));
        byte[] jpeg = Pictures.withSegment(Pictures.withSegment(Pictures.jpeg(8, 8), 0xEE, adobe), 0xE2, profile);
        assertThat(text(CleanPhoto.of(jpeg).content()))
                .contains("what the colours are", "Adobe\0d")
                .doesNotContain(Pictures.SECRET);
        byte[] gamma = {0, 0, (byte) 0xB1, (byte) 0x8F};
        byte[] png = Pictures.withChunk(Pictures.png(8, 8), "gAMA", gamma);
        assertThat(text(CleanPhoto.of(png).content())).contains("gAMA");
    }

    @Test
    void whatFollowsThePictureIsCutOff() {
        for (byte[] file : List.of(Pictures.jpeg(8, 8), Pictures.png(8, 8))) {
            byte[] film = Pictures.joined(file, Pictures.secret("film"), Pictures.jpeg(16, 16));
            assertThat(CleanPhoto.of(film).content())
                    .isEqualTo(CleanPhoto.of(file).content());
        }
    }

    @Test
    void aThumbnailInTheHeadIsCutOff() {
        byte[] head = {'J', 'F', 'I', 'F', 0, 1, 2, 1, 0, 72, 0, 72, 1, 1, 11, 22, 33};
        byte[] jpeg = Pictures.jpeg(8, 8);
        byte[] cleaned = CleanPhoto.of(Pictures.withSegment(jpeg, 0xE0, head)).content();
        assertThat(Arrays.copyOfRange(cleaned, 2, 20))
                .containsExactly(0xFF, 0xE0, 0, 16, 'J', 'F', 'I', 'F', 0, 1, 2, 1, 0, 72, 0, 72, 0, 0);
    }

    @Test
    void aWayUpThatIsNoneIsUpright() throws Exception {
        byte[][] blocks = {
            Pictures.tiff(0, ByteOrder.BIG_ENDIAN),
            Pictures.tiff(9, ByteOrder.BIG_ENDIAN),
            Pictures.tiff(65535, ByteOrder.LITTLE_ENDIAN),
            {},
            {'M', 'M', 0, 42},
            {'M', 'M', 0, 42, (byte) 0xFF, (byte) 0xFF, (byte) 0xFF, (byte) 0xFF},
            {'M', 'M', 0, 42, 0, 0, 0, 8, (byte) 0xFF, (byte) 0xFF},
            {'I', 'I', 42, 0, 7, 0, 0, 0, 1},
            {'I', 'M', 42, 0, 8, 0, 0, 0, 0, 0}
        };
        for (byte[] block : blocks) {
            byte[] exif = Pictures.joined("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1), block);
            byte[] cleaned = CleanPhoto.of(Pictures.withSegment(Pictures.jpeg(8, 8), 0xE1, exif))
                    .content();
            assertThat(orientationIn(cleaned)).isNull();
            byte[] png = CleanPhoto.of(Pictures.withChunk(Pictures.png(8, 8), "eXIf", block))
                    .content();
            assertThat(orientationIn(png)).isNull();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void whatEndsInTheMiddleIsBrokenWhereverItEnds(String name, byte[] file) {
        byte[] whole = CleanPhoto.of(file).content();
        for (int length = 8; length < whole.length; length++) {
            ProblemException refused = refused(Arrays.copyOf(whole, length));
            assertThat(refused.type()).as(name + " of " + length + " bytes").isEqualTo(ProblemType.UNSOUND_PHOTO);
        }
    }

    /** Whatever a file is, it is cleaned or refused; and what is cleaned is clean. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void bytesChangedByChanceAreCleanedOrRefused(String name, byte[] file) {
        Random random = new Random(name.hashCode());
        byte[] secret = name.contains("jpeg") ? withAllKinds(file) : withAllChunks(file);
        for (int i = 0; i < 2000; i++) {
            byte[] changed = secret.clone();
            for (int n = 0; n < 1 + random.nextInt(4); n++) {
                changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
            }
            try {
                byte[] cleaned = CleanPhoto.of(changed).content();
                assertThat(CleanPhoto.of(cleaned).content()).isEqualTo(cleaned);
            } catch (ProblemException refused) {
                assertThat(refused.type()).isIn(ProblemType.UNSOUND_PHOTO, ProblemType.UNSUPPORTED_MEDIA_TYPE);
            }
        }
    }

    @Test
    void aByteThatChangedOnTheWayIsFoundInAPng() {
        byte[] png = Pictures.png(64, 48);
        png[png.length / 2] ^= 1;
        assertThat(refused(png)).hasMessageContaining("damaged");
    }

    @Test
    void moreThanFiftyMillionPixelsAreRefusedBeforeOneIsRead() {
        byte[] jpeg = Pictures.jpeg(64, 48);
        int frame = 0;
        while (!((jpeg[frame] & 0xFF) == 0xFF && (jpeg[frame + 1] & 0xFF) == 0xC0)) {
            frame++;
        }
        ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) 10_000).putShort(frame + 7, (short) 5_001);
        assertThat(refused(jpeg)).hasMessageContaining("5001 by 10000 pixels; 50 million");
        ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) 0);
        assertThat(refused(jpeg)).hasMessageContaining("5001 by 0 pixels");
        assertThat(refused(pngOf(2_000_000_000, 2_000_000_000, new byte[0])))
                .hasMessageContaining("2000000000 by 2000000000 pixels; 50 million");
    }

    @Test
    void aPngThatUnpacksToMoreThanItsPictureIsRefused() {
        byte[] right = new byte[10 * (1 + 10 * 3)];
        assertThat(CleanPhoto.of(pngOf(10, 10, packed(right))).width()).isEqualTo(10);
        byte[] bomb = packed(new byte[50_000_000]);
        assertThat(bomb.length).isLessThan(100_000);
        assertThat(refused(pngOf(10, 10, bomb))).hasMessageContaining("more in it than the picture");
        assertThat(refused(pngOf(10, 10, packed(new byte[right.length + 1])))).hasMessageContaining("more in it");
        assertThat(refused(pngOf(10, 10, packed(new byte[right.length - 1])))).hasMessageContaining("not complete");
        assertThat(refused(pngOf(10, 10, new byte[] {1, 2, 3, 4, 5}))).hasMessageContaining("unpacked");
    }

    @Test
    void whatIsNeitherJpegNorPngIsRefusedWhateverItIsCalled() {
        String[] others = {
            "",
            "GIF89a",
            "<svg xmlns='http://www.w3.org/2000/svg'/>",
            "<html><script>",
            "%PDF-1.7",
            "RIFF....WEBP",
            "PNG",
            "ÿ"
        };
        for (String other : others) {
            assertThat(refused(other.getBytes(StandardCharsets.ISO_8859_1)).type())
                    .as(other)
                    .isEqualTo(ProblemType.UNSUPPORTED_MEDIA_TYPE);
        }
    }

    @Test
    void aJpegThatNoBrowserShowsIsRefused() {
        byte[] jpeg = Pictures.jpeg(8, 8);
        for (int i = 0; i < jpeg.length - 1; i++) {
            if ((jpeg[i] & 0xFF) == 0xFF && (jpeg[i + 1] & 0xFF) == 0xC0) {
                jpeg[i + 1] = (byte) 0xC9; // coded arithmetically
                break;
            }
        }
        assertThat(refused(jpeg).type()).isEqualTo(ProblemType.UNSUPPORTED_MEDIA_TYPE);
    }

    @Test
    void moreThanFiveMegabytesAreRefused() {
        byte[] jpeg = Pictures.jpeg(8, 8);
        byte[] most = Pictures.joined(jpeg, new byte[CleanPhoto.MOST_BYTES - jpeg.length]);
        assertThat(CleanPhoto.of(most).bytes()).isLessThanOrEqualTo(jpeg.length);
        assertThat(refused(Pictures.joined(most, new byte[1])).type()).isEqualTo(ProblemType.BODY_TOO_LARGE);
    }

    private static byte[] withAllKinds(byte[] jpeg) {
        byte[] all = Pictures.withSegment(jpeg, 0xFE, Pictures.secret("a comment"));
        all = Pictures.withSegment(all, 0xED, Pictures.secret("Photoshop 3.0"));
        all = Pictures.withSegment(all, 0xE2, Pictures.secret("MPF"));
        all = Pictures.withSegment(all, 0xE1, Pictures.secret("http://ns.adobe.com/xap/1.0/"));
        all = Pictures.withSegment(all, 0xE0, Pictures.secret("JFXX"));
        return Pictures.joined(all, Pictures.secret("a film"));
    }

    private static byte[] withAllChunks(byte[] png) {
        byte[] all = Pictures.withChunk(png, "tEXt", Pictures.secret("Comment"));
        all = Pictures.withChunk(all, "zTXt", Pictures.secret("Comment"));
        all = Pictures.withChunk(all, "iTXt", Pictures.secret("XML:com.adobe.xmp"));
        all = Pictures.withChunk(all, "tIME", new byte[] {7, (byte) 0xEA, 5, 3, 10, 20, 0});
        all = Pictures.withChunk(all, "prVt", Pictures.secret("own"));
        return Pictures.joined(all, Pictures.secret("a film"));
    }

    /** A PNG of three colours with such packed data. */
    private static byte[] pngOf(int width, int height, byte[] packed) {
        byte[] header = ByteBuffer.allocate(13)
                .putInt(width)
                .putInt(height)
                .put(new byte[] {8, 2, 0, 0, 0})
                .array();
        return Pictures.joined(
                Png.SIGNATURE,
                Pictures.chunk("IHDR", header),
                Pictures.chunk("IDAT", packed),
                Pictures.chunk("IEND", new byte[0]));
    }

    private static byte[] packed(byte[] data) {
        Deflater deflater = new Deflater();
        deflater.setInput(data);
        deflater.finish();
        byte[] out = new byte[data.length / 500 + 1000];
        int length = deflater.deflate(out);
        assertThat(deflater.finished()).isTrue();
        deflater.end();
        return Arrays.copyOf(out, length);
    }

    private static ProblemException refused(byte[] file) {
        ProblemException refused = catchThrowableOfType(ProblemException.class, () -> CleanPhoto.of(file));
        assertThat(refused).isNotNull();
        return refused;
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    private static String text(byte[] file) {
        return new String(file, StandardCharsets.ISO_8859_1);
    }

    private static Metadata read(byte[] file) throws IOException, ImageProcessingException {
        return ImageMetadataReader.readMetadata(new ByteArrayInputStream(file));
    }

    private static @Nullable Integer orientationIn(byte[] file) throws IOException, ImageProcessingException {
        ExifIFD0Directory directory = read(file).getFirstDirectoryOfType(ExifIFD0Directory.class);
        return directory == null ? null : directory.getInteger(ExifDirectoryBase.TAG_ORIENTATION);
    }

    /** Names of all that a reader finds in what a camera wrote. */
    private static List<String> written(byte[] file) throws IOException, ImageProcessingException {
        return Stream.of(read(file))
                .flatMap(metadata -> {
                    List<Directory> all = new java.util.ArrayList<>();
                    metadata.getDirectories().forEach(all::add);
                    return all.stream();
                })
                .filter(directory -> !List.of(
                                "JPEG", "JFIF", "Huffman", "File Type", "PNG-IHDR", "PNG-PLTE", "PNG-sBIT")
                        .contains(directory.getName()))
                .flatMap(directory -> directory.getTags().stream())
                .map(Tag::getTagName)
                .toList();
    }
}
