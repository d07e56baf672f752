package brightseam.ledger.shell;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.h2.store.fs.FileBase;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * A file system of H2's, named {@code fragile:}, on top of the real one. It can be full, it can fail to force, and it
 * keeps a copy of the file as it was when it was last forced: what a power cut would leave at the least.
 */
public final class FragileDisk extends FilePathWrapper {

    static volatile boolean full;
    static volatile boolean forceFails;
    static volatile Path forcedCopy;

    static void register() {
        FilePath.register(new FragileDisk());
    }

    static void heal() {
        full = false;
        forceFails = false;
        forcedCopy = null;
    }

    @Override
    public String getScheme() {
        return "fragile";
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        return new FragileFile(getBase().open(mode), Path.of(getBase().toString()));
    }

    private static final class FragileFile extends FileBase {
        private final FileChannel file;
        private final Path path;

        FragileFile(FileChannel file, Path path) {
            this.file = file;
            this.path = path;
        }

        @Override
        public int write(ByteBuffer bytes) throws IOException {
            refuseWhereFull();
            return file.write(bytes);
        }

        @Override
        public synchronized int write(ByteBuffer bytes, long position) throws IOException {
            refuseWhereFull();
            return file.write(bytes, position);
        }

        @Override
        public void force(boolean metaData) throws IOException {
            if (forceFails) {
                throw new IOException("Input/output error");
            }
            file.force(metaData);
            Path copy = forcedCopy;
            if (copy != null) {
                Files.copy(path, copy, StandardCopyOption.REPLACE_EXISTING);
            }
        }

        @Override
        public int read(ByteBuffer bytes) throws IOException {
            return file.read(bytes);
        }

        @Override
        public synchronized int read(ByteBuffer bytes, long position) throws IOException {
            return file.read(bytes, position);
        }

        @Override
        public long position() throws IOException {
            return file.position();
        }

        @Override
        public FileChannel position(long position) throws IOException {
            file.position(position);
            return this;
        }

        @Override
        public long size() throws IOException {
            return file.size();
        }

        @Override
        public FileChannel truncate(long size) throws IOException {
            file.truncate(size);
            return this;
        }

        @Override
        public FileLock tryLock(long position, long size, boolean shared) throws IOException {
            return file.tryLock(position, size, shared);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            file.close();
        }

        private static void refuseWhereFull() throws IOException {
            if (full) {
                throw new IOException("No space left on device");
            }
        }
    }
}
