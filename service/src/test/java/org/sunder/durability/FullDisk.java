package org.sunder.durability;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.util.concurrent.atomic.AtomicBoolean;
import org.h2.store.fs.FileBase;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/** A file system for H2 that takes no byte more while it is full. */
public final class FullDisk extends FilePathWrapper {

    static final AtomicBoolean FULL = new AtomicBoolean();

    static void register() {
        FilePath.register(new FullDisk());
    }

    @Override
    public String getScheme() {
        return "filling";
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        return new Channel(super.open(mode));
    }

    private static final class Channel extends FileBase {
        private final FileChannel base;

        Channel(FileChannel base) {
            this.base = base;
        }

        private static void room() throws IOException {
            if (FULL.get()) {
                throw new IOException("No space left on device");
            }
        }

        @Override
        public int write(ByteBuffer source) throws IOException {
            room();
            return base.write(source);
        }

        @Override
        public synchronized int write(ByteBuffer source, long at) throws IOException {
            room();
            return base.write(source, at);
        }

        @Override
        public void force(boolean metaData) throws IOException {
            base.force(metaData);
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
        protected void implCloseChannel() throws IOException {
            base.close();
        }

        @Override
        public FileLock tryLock(long position, long size, boolean shared) throws IOException {
            return base.tryLock(position, size, shared);
        }
    }
}
