package org.sunder.exchange;

import java.io.ByteArrayOutputStream;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;
import org.sunder.photo.CleanPhoto;
import org.sunder.photo.Photo;
import org.sunder.photo.Photos;
import org.sunder.problem.ProblemException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.json.JsonMapper;

/**
 * Photos in an export: each with its bytes in Base64, one after the other, so that only one is held at a time. A document holds
 * as many as an import takes; the others follow in further ones.
 */
@Component
public class PhotoRows {

    static final String FIELD = "photos";

    /** In a document without photos: how many there are. */
    static final String LEFT_OUT = "photosLeftOut";

    /** In a document with photos that more follow: after which test's photo the next one begins. */
    static final String AFTER = "photosAfter";

    private static final UUID BEGINNING = new UUID(0, 0);
    private static final long LARGEST_DOCUMENT = 20 * 1024 * 1024L; // what an import takes
    private static final long REST_OF_A_DOCUMENT = 1024;
    private static final long REST_OF_A_ROW = 256;

    /** As text: UUIDs compare by their signed halves, and databases in other ways again. */
    private static final Comparator<Photo> ORDER = Comparator.comparing(photo -> order(photo.testId()));

    /** The form of a row. It stands in no list of tables: a table is read as a whole, and these bytes never are. */
    private static final Table ROW = new Table(
            "photo",
            FIELD,
            List.of(
                    Column.needed("test_id", Form.ID),
                    Column.needed("stored_at", Form.TIME),
                    Column.needed("content", Form.file(CleanPhoto.MOST_BYTES))));

    private final Photos photos;

    PhotoRows(Photos photos) {
        this.photos = photos;
    }

    /** How many there are. */
    int count() {
        return photos.count();
    }

    /** Where each of the documents begins that hold all photos and nothing else: after which test. */
    public List<UUID> beginnings() {
        List<UUID> beginnings = new ArrayList<>();
        UUID from = BEGINNING;
        List<Photo> left = following(from);
        while (!left.isEmpty()) {
            beginnings.add(from);
            int fit = fitting(left, 0);
            from = left.get(fit - 1).testId();
            left = left.subList(fit, left.size());
        }
        return beginnings;
    }

    /**
     * Writes the photos that follow, as many as there is room for.
     *
     * @param written the document so far, to which {@code out} writes
     * @param after after which test's photo; null where the document begins with everything else
     * @return after which the next document begins; null where all are written
     */
    @Nullable UUID write(JsonGenerator out, ByteArrayOutputStream written, @Nullable UUID after) {
        out.flush();
        List<Photo> left = following(after == null ? BEGINNING : after);
        int fit = fitting(left, after == null ? written.size() : 0);
        out.writeArrayPropertyStart(FIELD);
        for (Photo photo : left.subList(0, fit)) {
            out.writeStartObject();
            out.writeStringProperty("testId", photo.testId().toString());
            out.writeStringProperty("storedAt", photo.storedAt().toString());
            out.writeBinaryProperty("content", photos.content(photo));
            out.writeEndObject();
        }
        out.writeEndArray();
        if (fit == left.size()) {
            return null;
        }
        UUID next = fit == 0 ? BEGINNING : left.get(fit - 1).testId();
        out.writeStringProperty(AFTER, next.toString());
        return next;
    }

    /**
     * Takes in the photos of a document, each checked and cleaned as one that is sent.
     *
     * @param json reads row by row out of the parser
     * @param before what was taken in before
     */
    Import.Result take(RowParser parser, JsonMapper json, Import.Result before) {
        if (parser.currentToken() != JsonToken.START_ARRAY) {
            throw Import.fault("/" + FIELD, "a list of rows is needed", "a list");
        }
        Map<UUID, String> known = new HashMap<>();
        photos.all().forEach(photo -> known.put(photo.testId(), photo.digest()));
        int added = before.added();
        int same = before.known();
        for (int i = 0; parser.nextToken() != JsonToken.END_ARRAY; i++) {
            String at = "/" + FIELD + "/" + i;
            parser.beginRow(at);
            RowRules.Row row = new RowRules.Row(ROW, Import.row(ROW, at, json.readTree(parser)));
            parser.endRow();
            UUID test = (UUID) row.get("test_id");
            CleanPhoto photo = cleaned(at, (byte[]) row.get("content"));
            String there = known.putIfAbsent(test, photo.digest());
            if (there == null) {
                add(at, test, photo, (OffsetDateTime) row.get("stored_at"));
                added++;
            } else if (there.equals(photo.digest())) {
                same++;
            } else {
                throw Import.conflict(at, "this test has another photo here already");
            }
        }
        return new Import.Result(added, same);
    }

    private void add(String at, UUID test, CleanPhoto photo, OffsetDateTime storedAt) {
        try {
            photos.takeIn(test, photo, storedAt.toInstant());
        } catch (DataIntegrityViolationException e) {
            throw Import.conflict(at, "the test that this photo shows is not there");
        }
    }

    private static CleanPhoto cleaned(String at, byte[] file) {
        try {
            return CleanPhoto.of(file);
        } catch (ProblemException e) {
            throw Import.fault(
                    at + "/content", String.valueOf(e.getMessage()), "a JPEG or PNG, whole, of at most 5 MB");
        }
    }

    private List<Photo> following(UUID after) {
        return photos.all().stream()
                .filter(photo -> order(photo.testId()).compareTo(order(after)) > 0)
                .sorted(ORDER)
                .toList();
    }

    /** How many of the photos there is room for behind so many bytes. */
    private static int fitting(List<Photo> left, long written) {
        long size = written + REST_OF_A_DOCUMENT;
        int fit = 0;
        for (Photo photo : left) {
            size += REST_OF_A_ROW + Form.textOf(photo.bytes());
            if (size > LARGEST_DOCUMENT) {
                break;
            }
            fit++;
        }
        return fit;
    }

    private static String order(UUID id) {
        return id.toString();
    }
}
