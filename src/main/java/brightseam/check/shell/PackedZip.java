package brightseam.check.shell;

import brightseam.check.shell.BackupManifest.PackedFile;
import brightseam.kernel.shell.OwnerAlone;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A zip file that appears whole, forced onto the disk, for the owner alone, or not at all. Remembers size and hash of
 * what it was given.
 */
public final class PackedZip implements AutoCloseable {

    private final Path target;
    private final Path fresh;
    private final FileChannel channel;
    private final ZipOutputStream zip;
    private final List<PackedFile> packed = new ArrayList<>();
    private boolean finished;

    /**
     * Begins the file that will be {@code target}.
     *
     * @throws IOException where there is one already, or it cannot be written
     */
    public PackedZip(Path target) throws IOException {
        this.target = target.toAbsolutePath().normalize();
        if (Files.exists(this.target)) {
            throw new IOException("there is a file " + this.target + " already");
        }
        this.fresh = this.target.resolveSibling(this.target.getFileName() + ".part");
        Files.deleteIfExists(fresh);
        this.channel = FileChannel.open(
                fresh, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), OwnerAlone.file(fresh));
        this.zip = new ZipOutputStream(new java.io.BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16));
        zip.setLevel(Deflater.BEST_SPEED);
    }

    /** Where it is written until it is whole. */
    public Path unfinished() {
        return fresh;
    }

    /** Adds what {@code in} gives as {@code name}. */
    public PackedFile add(String name, InputStream in) throws IOException {
        DigestInputStream digested = new DigestInputStream(in, sha256());
        zip.putNextEntry(new ZipEntry(name));
        long bytes = digested.transferTo(zip);
        zip.closeEntry();
        PackedFile file = new PackedFile(
                name, bytes, HexFormat.of().formatHex(digested.getMessageDigest().digest()));
        packed.add(file);
        return file;
    }

    /** A stream for one more file, {@code name}; the next one may begin when it is closed. */
    public OutputStream stream(String name) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        return new EntryStream(name);
    }

    /** What was added. */
    List<PackedFile> packed() {
        return List.copyOf(packed);
    }

    /** What was added, for a manifest of another package. */
    public List<Listed> listed() {
        return packed.stream().map(file -> new Listed(file.name(), file.bytes(), file.sha256())).toList();
    }

    /** A file that was added: its name, its bytes, and their SHA-256 in hexadecimal digits. */
    public record Listed(String name, long bytes, String sha256) {}

    /** Brings it onto the disk and gives it its name. */
    public void finish() throws IOException {
        zip.finish();
        zip.flush();
        channel.force(true);
        zip.close();
        Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
        finished = true;
        OwnerAlone.force(target.getParent());
    }

    @Override
    public void close() throws IOException {
        if (!finished) {
            channel.close();
            Files.deleteIfExists(fresh);
        }
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    private final class EntryStream extends OutputStream {
        private final String name;
        private final MessageDigest digest = sha256();
        private long bytes;
        private boolean closed;

        EntryStream(String name) {
            this.name = name;
        }

        @Override
        public void write(int one) throws IOException {
            write(new byte[] {(byte) one}, 0, 1);
        }

        @Override
        public void write(byte[] from, int offset, int length) throws IOException {
            digest.update(from, offset, length);
            bytes += length;
            zip.write(from, offset, length);
        }

        @Override
        public void close() throws IOException {
            if (!closed) {
                closed = true;
                zip.closeEntry();
                packed.add(new PackedFile(name, bytes, HexFormat.of().formatHex(digest.digest())));
            }
        }
    }
}
