package org.sunder.upkeep;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Stands in the data folder while the tables of an embedded database are changed, and names the copy made before: H2 cannot change
 * tables all or nothing, so a process that ends within leaves a database that no version opens. The next start finds the mark and
 * brings the copy back. The mark is locked for as long as its process lives.
 */
final class ChangeMark {

    private static final Logger LOG = LoggerFactory.getLogger(ChangeMark.class);
    static final String NAME = "tables-are-being-changed";

    private final Path file;
    private final FileChannel held;

    /**
     * Sets the mark.
     *
     * @param folder the data folder
     * @param database the file of the database
     * @param copy the copy of it; empty where it was new, with nothing in it
     */
    ChangeMark(Path folder, Path database, Optional<Path> copy) throws IOException {
        this.file = folder.resolve(NAME);
        Files.createDirectories(folder);
        this.held = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            held.lock();
            String text = database.toAbsolutePath() + "\n"
                    + copy.map(path -> path.toAbsolutePath().toString()).orElse("") + "\n";
            held.truncate(0);
            held.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)));
            held.force(true);
        } catch (IOException | RuntimeException e) {
            held.close();
            throw e;
        }
    }

    /** Takes the mark away: the change has come to an end, well or with words on what failed. */
    void close() throws IOException {
        Files.deleteIfExists(file);
        held.close();
    }

    /**
     * Where a process ended within a change, puts the database back to what it was before.
     *
     * @throws IOException where the copy cannot be read, or not be put back; the mark stays then
     */
    static void bringBack(Path folder) throws IOException {
        Path file = folder.resolve(NAME);
        if (!Files.exists(file)) {
            return;
        }
        try (FileChannel found = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
                FileLock lock = found.tryLock()) {
            if (lock != null) {
                bringBack(file, Channels.newInputStream(found).readAllBytes());
            }
        } catch (OverlappingFileLockException e) {
            // This process is at it elsewhere.
        }
    }

    private static void bringBack(Path file, byte[] text) throws IOException {
        List<String> said = new String(text, StandardCharsets.UTF_8).lines().toList();
        if (said.size() < 2) {
            Files.delete(file); // its process ended before it began
            return;
        }
        Path database = Path.of(said.get(0));
        if (said.get(1).isEmpty()) {
            Files.move(
                    database,
                    database.resolveSibling(database.getFileName() + ".cut-off"),
                    StandardCopyOption.REPLACE_EXISTING);
            Files.delete(file);
            LOG.warn("A first start was cut off while it made the tables; they are made anew");
            return;
        }
        Path copy = Path.of(said.get(1));
        Path back = database.resolveSibling(database.getFileName() + ".back");
        unpack(copy, back);
        Files.move(back, database, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        Files.delete(file);
        Files.delete(copy); // the same is copied again before the change begins anew
        LOG.warn("A change of the tables was cut off; the database is again what it was before, from {}", copy);
    }

    private static void unpack(Path copy, Path to) throws IOException {
        try (InputStream in = Files.newInputStream(copy);
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().endsWith(".mv.db")) {
                    Files.copy(zip, to, StandardCopyOption.REPLACE_EXISTING);
                    force(to);
                    return;
                }
            }
        }
        throw new IOException(copy + " holds no database");
    }

    private static void force(Path file) throws IOException {
        try (FileChannel written = FileChannel.open(file, StandardOpenOption.WRITE)) {
            written.force(true);
        }
    }
}
