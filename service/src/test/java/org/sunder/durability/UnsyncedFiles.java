package org.sunder.durability;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * A file system for H2 that remembers of each file only what fsync was called for: what a disk with a lost write cache
 * would hold after a power cut.
 */
public final class UnsyncedFiles extends FilePathWrapper {

    private static final Map<String, byte[]> SYNCED = new ConcurrentHashMap<>();

    static void register() {
        FilePath.register(new UnsyncedFiles());
    }

    /** Writes the synced content of every database file in a folder to another folder. */
    static void afterPowerCut(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        for (Map.Entry<String, byte[]> file : SYNCED.entrySet()) {
            Path path = Path.of(file.getKey());
            if (path.startsWith(from)) {
                Files.write(to.resolve(path.getFileName()), file.getValue());
            }
        }
    }

    @Override
    public String getScheme() {
        return "unsynced";
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        return new Channel(getBase().toString(), super.open(mode));
    }

    private static final class Channel extends PassedOn {

        private final String name;

        Channel(String name, FileChannel base) {
            super(base);
            this.name = name;
        }

        @Override
        public void force(boolean metaData) throws IOException {
            super.force(metaData);
            SYNCED.put(name.replaceFirst("^[a-z]+:", ""), content());
        }

        private byte[] content() throws IOException {
            ByteBuffer all = ByteBuffer.allocate((int) base.size());
            int position = 0;
            while (all.hasRemaining()) {
                int read = base.read(all, position);
                if (read < 0) {
                    break;
                }
                position += read;
            }
            return all.array();
        }
    }
}
