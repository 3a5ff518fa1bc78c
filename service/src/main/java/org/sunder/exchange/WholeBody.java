package org.sunder.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/**
 * A body read to its end, into a file, before anything rests on it: whoever sends slowly holds neither a connection to the database
 * nor the rows that others want, and whoever hangs up has begun nothing.
 */
final class WholeBody implements AutoCloseable {

    private static final int AT_A_TIME = 8192;

    private final Path file;

    /**
     * Reads a body.
     *
     * @throws IOException where it breaks off, or is larger than it may be
     * @throws ProblemException 503 where there is no room for it
     */
    WholeBody(InputStream body) throws IOException {
        this.file = newFile();
        try {
            copy(body);
        } catch (IOException | RuntimeException e) {
            close();
            throw e;
        }
    }

    /** Reads it once more, from the beginning. */
    InputStream open() throws IOException {
        return Files.newInputStream(file);
    }

    @Override
    public void close() throws IOException {
        Files.deleteIfExists(file);
    }

    private void copy(InputStream body) throws IOException {
        try (OutputStream kept = Files.newOutputStream(file)) {
            byte[] part = new byte[AT_A_TIME];
            for (int length = body.read(part); length >= 0; length = body.read(part)) {
                keep(kept, part, length);
            }
        }
    }

    private static void keep(OutputStream kept, byte[] part, int length) {
        try {
            kept.write(part, 0, length);
        } catch (IOException e) {
            throw noRoom(e);
        }
    }

    private static Path newFile() {
        try {
            return Files.createTempFile("sunder-import-", ".json");
        } catch (IOException e) {
            throw noRoom(e);
        }
    }

    private static ProblemException noRoom(IOException e) {
        ProblemException problem = new ProblemException(
                ProblemType.STORAGE_UNAVAILABLE,
                "The folder for temporary files takes nothing more, so nothing was stored. Make room there.",
                List.of());
        problem.initCause(e);
        return problem;
    }
}
