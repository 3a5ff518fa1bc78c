package org.sunder.photo;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Rows of photos: what is told of them in one table, their bytes in another that only {@link #content} reads. */
@Component
class PhotoStore {

    private static final String TOLD =
            "select p.test_id, p.media_type, p.width, p.height, p.bytes, p.digest, p.stored_at from photo p";

    private final JdbcClient jdbc;

    PhotoStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What a flyer keeps altogether. */
    record Total(int photos, long bytes) {}

    /** Lets nobody else change the flyer's photos until the caller's transaction ends. */
    void hold(UUID flyer) {
        jdbc.sql("select id from flyer where id = ? for update")
                .param(flyer)
                .query(UUID.class)
                .single();
    }

    Optional<Photo> find(UUID flyer, UUID test) {
        return jdbc.sql(TOLD + " where p.flyer_id = ? and p.test_id = ?")
                .params(flyer, test)
                .query(PhotoStore::photo)
                .optional();
    }

    List<Photo> of(UUID flyer, Collection<UUID> joints) {
        return joints.isEmpty()
                ? List.of()
                : jdbc.sql(TOLD + " join ground_test t on t.flyer_id = p.flyer_id and t.id = p.test_id"
                                + " where p.flyer_id = :flyer and t.joint_id in (:joints) order by p.test_id")
                        .param("flyer", flyer)
                        .param("joints", joints)
                        .query(PhotoStore::photo)
                        .list();
    }

    List<Photo> all(UUID flyer) {
        return jdbc.sql(TOLD + " where p.flyer_id = ? order by p.test_id")
                .param(flyer)
                .query(PhotoStore::photo)
                .list();
    }

    Total total(UUID flyer) {
        return jdbc.sql("select count(*), coalesce(sum(bytes), 0) from photo where flyer_id = ?")
                .param(flyer)
                .query((row, n) -> new Total(row.getInt(1), row.getLong(2)))
                .single();
    }

    /** The bytes of just that photo; empty where another took its place meanwhile. */
    Optional<byte[]> content(UUID flyer, Photo photo) {
        return jdbc.sql("select c.content from photo_content c"
                        + " join photo p on p.flyer_id = c.flyer_id and p.test_id = c.test_id"
                        + " where c.flyer_id = ? and c.test_id = ? and p.digest = ?")
                .params(flyer, photo.testId(), photo.digest())
                .query((row, n) -> row.getBytes(1))
                .optional();
    }

    void add(UUID flyer, Photo photo, byte[] content) {
        jdbc.sql("insert into photo (flyer_id, test_id, media_type, width, height, bytes, digest, stored_at)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?)")
                .params(flyer, photo.testId(), photo.type().mediaType(), photo.width(), photo.height())
                .params(photo.bytes(), photo.digest(), photo.storedAt().atOffset(ZoneOffset.UTC))
                .update();
        jdbc.sql("insert into photo_content (flyer_id, test_id, content) values (?, ?, ?)")
                .params(flyer, photo.testId(), content)
                .update();
    }

    /** Removes a photo; its bytes go with it. */
    void remove(UUID flyer, UUID test) {
        jdbc.sql("delete from photo where flyer_id = ? and test_id = ?")
                .params(flyer, test)
                .update();
    }

    private static Photo photo(ResultSet row, int number) throws SQLException {
        return new Photo(
                row.getObject(1, UUID.class),
                PhotoType.ofMediaType(row.getString(2)),
                row.getInt(3),
                row.getInt(4),
                row.getInt(5),
                row.getString(6),
                row.getObject(7, OffsetDateTime.class).toInstant());
    }
}
