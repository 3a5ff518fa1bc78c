package org.sunder.durability;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.h2.store.fs.FileBase;
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

    private static final class Channel extends FileBase {

        private final String name;
        private final FileChannel base;

        Channel(String name, FileChannel base) {
            this.name = name;
            this.base = base;
        }

        @Override
        public void force(boolean metaData) throws IOException {
            base.force(metaData);
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

        @Override
        public long position() throws IOException {
            return base.position();
        }

        @Override
        public FileChannel position(long newPosition) throws IOException {
            base.position(newPosition);
            return this;
        }

        @Override
        public int read(ByteBuffer target) throws IOException {
            return base.read(target);
        }

        @Override
        public synchronized int read(ByteBuffer target, long at) throws IOException {
            return base.read(target, at);
        }

        @Override
        public long size() throws IOException {
            return base.size();
        }

        @Override
        public FileChannel truncate(long size) throws IOException {
            base.truncate(size);
            return this;
        }

        @Override
        public int write(ByteBuffer source) throws IOException {
            return base.write(source);
        }

        @Override
        public synchronized int write(ByteBuffer source, long at) throws IOException {
            return base.write(source, at);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            base.close();
        }

        @Override
        public FileLock tryLock(long position, long size, boolean shared) throws IOException {
            return base.tryLock(position, size, shared);
        }
    }
}
