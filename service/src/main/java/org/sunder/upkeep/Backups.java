package org.sunder.upkeep;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import javax.sql.DataSource;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.JdbcUtils;
import org.springframework.jdbc.support.MetaDataAccessException;
import org.springframework.stereotype.Component;
import org.sunder.persistence.StorageRoom;

/** Copies of an embedded database, made while it is in use. A database server has means of its own. */
@Component
class Backups {

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss-SSS").withZone(ZoneOffset.UTC);

    private final JdbcTemplate jdbc;
    private final StorageRoom room;
    private final Path folder;
    private final Clock clock;
    private final boolean embedded;

    Backups(DataSource source, StorageRoom room, @Value("${sunder.data-folder}") Path folder, Clock clock)
            throws MetaDataAccessException {
        this.jdbc = new JdbcTemplate(source);
        this.folder = folder.resolve("backups");
        this.room = room;
        this.clock = clock;
        String url = JdbcUtils.extractDatabaseMetaData(source, meta -> meta.getURL());
        this.embedded = url.startsWith("jdbc:h2:") && !url.startsWith("jdbc:h2:mem:");
    }

    /** The file of an embedded database; empty where it does not lie in a folder. */
    Optional<Path> databaseIn(Path place) {
        if (!embedded) {
            return Optional.empty();
        }
        Path file = Path.of(jdbc.queryForObject("select database_path()", String.class) + ".mv.db");
        try {
            return Files.exists(file) && Files.isSameFile(place, file.resolveSibling("."))
                    ? Optional.of(file)
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty(); // no such folder
        }
    }

    /** Returns after what was written to the database is on disk. */
    void onDisk() {
        jdbc.execute("CHECKPOINT SYNC");
    }

    /**
     * Writes a copy.
     *
     * @param reason begins the name of the file
     * @throws org.sunder.problem.ProblemException 503 where the disk has no room for it
     * @return the file; empty where the database is not a file of this service
     */
    Optional<Path> make(String reason) {
        if (!embedded) {
            return Optional.empty();
        }
        room.requireForCopy();
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Path file = folder.resolve(reason + "-" + TIME.format(clock.instant()) + ".zip");
        jdbc.update("backup to ?", file.toAbsolutePath().toString());
        return Optional.of(file);
    }
}
