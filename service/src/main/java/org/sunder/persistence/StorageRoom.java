package org.sunder.persistence;

import java.io.File;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.MetaDataAccessException;
import org.springframework.stereotype.Component;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/**
 * Room on the disk of an embedded database. H2 closes itself when a write finds none, and with it reading ends; so changes
 * are refused while there is still some.
 */
@Component
public class StorageRoom {

    private static final long RESERVE = 32L * 1024 * 1024;

    private final @Nullable File database;

    StorageRoom(DataSource source) throws MetaDataAccessException {
        this.database = EmbeddedDatabase.isBehind(source) ? file(new JdbcTemplate(source)) : null;
    }

    /** The file of the database, or null where it is in memory. */
    private static @Nullable File file(JdbcTemplate jdbc) {
        String path = jdbc.queryForObject("select database_path()", String.class);
        File found = new File(path + ".mv.db");
        return found.exists() ? found : null;
    }

    /** Whether a small change may be written; always, where the database is no file. */
    public boolean isLeft() {
        return database == null || database.getUsableSpace() >= RESERVE;
    }

    /**
     * Checks that a change may be written.
     *
     * @throws ProblemException 503 where the disk is nearly full
     */
    public void require() {
        if (!isLeft()) {
            throw full();
        }
    }

    /**
     * Checks that a copy of the database may be written beside it.
     *
     * @throws ProblemException 503 where the disk is too full for that
     */
    public void requireForCopy() {
        if (database != null && database.getUsableSpace() - database.length() < RESERVE) {
            throw full();
        }
    }

    private static ProblemException full() {
        return new ProblemException(
                ProblemType.STORAGE_UNAVAILABLE,
                "The disk of the database is nearly full, so nothing was stored. Reading goes on; make room there.");
    }
}
