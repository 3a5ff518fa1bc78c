package org.sunder.photo.web;

import io.swagger.v3.oas.annotations.media.Schema;
import java.time.Instant;
import java.util.UUID;
import org.sunder.photo.Photo;

/** What is known of a photo, as answered. */
@Schema(name = "Photo", description = "What is known of the photo of a ground test.")
record PhotoView(
        UUID testId,

        @Schema(description = "What kind the bytes are.", example = "image/jpeg")
        String mediaType,

        @Schema(description = "Pixels across, before it is turned the way up that it is shown.", example = "1600")
        int width,

        @Schema(description = "Pixels down, as the width.", example = "1200")
        int height,

        @Schema(description = "Bytes of the file as it is kept.", example = "284113")
        int bytes,

        @Schema(description = "When the service took it in.")
        Instant storedAt) {

    static PhotoView of(Photo photo) {
        return new PhotoView(
                photo.testId(),
                photo.type().mediaType(),
                photo.width(),
                photo.height(),
                photo.bytes(),
                photo.storedAt());
    }
}
