package org.sunder.page;

import java.util.Collection;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.sunder.photo.Photo;
import org.sunder.photo.Photos;

/**
 * The photo of a firing on a page.
 *
 * @param address where it is read
 * @param tag what a change of it must name
 */
record PhotoSheet(String address, String tag) {

    /** Those of the firings at some joints, by firing. */
    static Map<UUID, PhotoSheet> of(Photos photos, Collection<UUID> joints) {
        return photos.of(joints).stream()
                .collect(Collectors.toMap(Photo::testId, photo -> new PhotoSheet(photo.address(), photo.tag())));
    }
}
