package org.sunder.durability;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.util.concurrent.atomic.AtomicBoolean;
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

    private static final class Channel extends PassedOn {

        Channel(FileChannel base) {
            super(base);
        }

        private static void room() throws IOException {
            if (FULL.get()) {
                throw new IOException("No space left on device");
            }
        }

        @Override
        public int write(ByteBuffer source) throws IOException {
            room();
            return super.write(source);
        }

        @Override
        public synchronized int write(ByteBuffer source, long at) throws IOException {
            room();
            return super.write(source, at);
        }
    }
}
