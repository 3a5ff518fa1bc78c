package org.sunder.photo;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The kinds of picture that a photo may be. */
public enum PhotoType {
    JPEG("image/jpeg", "jpg"),
    PNG("image/png", "png");

    private static final int JPEG_BEGINS = 0xFFD8;

    private final String mediaType;
    private final String ending;

    PhotoType(String mediaType, String ending) {
        this.mediaType = mediaType;
        this.ending = ending;
    }

    /** Its media type. */
    public String mediaType() {
        return mediaType;
    }

    /** What the name of its file ends with, without the dot. */
    public String ending() {
        return ending;
    }

    /** Whether a Content-Type names one of them; which of the two it is, the bytes tell. */
    public static boolean named(@Nullable String contentType) {
        if (contentType == null) {
            return false;
        }
        String type = contentType.replaceAll(";.*", "").trim().toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).anyMatch(known -> known.mediaType.equals(type));
    }

    /** The kind that bytes begin as, whatever they were called. */
    static Optional<PhotoType> of(Bytes bytes) {
        if (bytes.startsWith(0, Png.SIGNATURE)) {
            return Optional.of(PNG);
        }
        return bytes.length() >= 2 && bytes.u16(0) == JPEG_BEGINS ? Optional.of(JPEG) : Optional.empty();
    }

    /** The kind with that media type. */
    static PhotoType ofMediaType(String mediaType) {
        return Arrays.stream(values())
                .filter(known -> known.mediaType.equals(mediaType))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no photo in the database: " + mediaType));
    }
}
