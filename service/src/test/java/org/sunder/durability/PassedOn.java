package org.sunder.durability;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import org.h2.store.fs.FileBase;

/** A file of H2's that passes everything on to another. */
class PassedOn extends FileBase {

    final FileChannel base;

    PassedOn(FileChannel base) {
        this.base = base;
    }

    @Override
    public void force(boolean metaData) throws IOException {
        base.force(metaData);
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
