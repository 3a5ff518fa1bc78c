package org.sunder.photo;

import org.sunder.persistence.Digests;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/**
 * A photo with nothing in it but the picture. What came along (place and time, the camera, comments, a thumbnail, a film or a
 * second picture behind the first) is left out; the picture itself is not touched, so nothing of its quality is lost. Which way
 * up it is shown is kept. Cleaning what is clean gives the same bytes.
 */
public final class CleanPhoto {

    /** Most bytes of a file. */
    public static final int MOST_BYTES = 5 * 1024 * 1024;

    /** Most pixels that a photo may state; more would be a bomb for whoever shows it. */
    static final long MOST_PIXELS = 50_000_000;

    private final PhotoType type;
    private final int width;
    private final int height;
    private final byte[] content;
    private final String digest;

    CleanPhoto(PhotoType type, int width, int height, byte[] content) {
        this.type = type;
        this.width = width;
        this.height = height;
        this.content = content;
        this.digest = Digests.sha256(content);
    }

    /**
     * Checks a file and takes out of it what is not the picture. No pixel is decoded: the parts that the file is made of are
     * walked through, and of a PNG the packed data counted.
     *
     * @throws ProblemException 415 for what is neither JPEG nor PNG, 413 for more than 5 MB, 422 for what is broken or states
     *     more than 50 million pixels
     */
    public static CleanPhoto of(byte[] file) {
        Bytes bytes = new Bytes(file);
        PhotoType type = PhotoType.of(bytes)
                .orElseThrow(() -> new ProblemException(
                        ProblemType.UNSUPPORTED_MEDIA_TYPE,
                        file.length == 0
                                ? "There is no photo in the body."
                                : "What was sent is neither a JPEG nor a PNG, whatever it is called."));
        if (file.length > MOST_BYTES) {
            throw new ProblemException(ProblemType.BODY_TOO_LARGE, "A photo may have 5 MB at most.");
        }
        return type == PhotoType.PNG ? new Png(bytes).cleaned() : new Jpeg(bytes).cleaned();
    }

    /** What kind it is. */
    public PhotoType type() {
        return type;
    }

    /** Pixels across, before it is turned the way up that it is shown. */
    public int width() {
        return width;
    }

    /** Pixels down, as {@link #width}. */
    public int height() {
        return height;
    }

    /** The file. */
    public byte[] content() {
        return content.clone();
    }

    /** How many bytes the file has. */
    public int bytes() {
        return content.length;
    }

    /** SHA-256 of the file, in hexadecimal: photos with the same are the same. */
    public String digest() {
        return digest;
    }

    /** Refuses, by throwing, dimensions that cannot be or are too large. */
    static void requireSize(long width, long height) {
        if (width == 0 || height == 0) {
            throw broken("it states " + width + " by " + height + " pixels");
        }
        if (width * height > MOST_PIXELS) {
            throw new ProblemException(
                    ProblemType.UNSOUND_PHOTO,
                    "The photo states " + width + " by " + height + " pixels; 50 million altogether are allowed.");
        }
    }

    /** What is wrong with a file, as the rest of a sentence. */
    static ProblemException broken(String what) {
        return new ProblemException(ProblemType.UNSOUND_PHOTO, "The photo is broken: " + what + ".");
    }
}
