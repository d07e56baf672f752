package brightseam.move.shell;

import brightseam.check.shell.PackedZip;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** An export that is read: believed only after every file in it has the size and the hash that its list says. */
final class ExportZip implements AutoCloseable {

    private static final int MANIFEST_BYTES_MAX = 100_000_000;
    private static final int PICTURE_BYTES_MAX = 64_000_000;
    private static final int BUFFER = 1 << 16;

    private final ZipFile zip;
    private final ExportManifest manifest;

    ExportZip(Path file) throws IOException {
        this.zip = new ZipFile(file.toFile());
        try {
            this.manifest = ExportManifest.read(bytes(ExportManifest.NAME, MANIFEST_BYTES_MAX));
        } catch (IOException unreadable) {
            zip.close();
            throw unreadable;
        }
    }

    ExportManifest manifest() {
        return manifest;
    }

    /** Reads every file once and compares it with the list. */
    void checkFiles() throws IOException {
        Set<String> names = new HashSet<>(Set.of(ExportManifest.NAME));
        for (PackedZip.Listed listed : manifest.files()) {
            if (!names.add(listed.name())) {
                throw new IOException(listed.name() + " is twice in its list");
            }
            try (DigestInputStream in = new DigestInputStream(stream(listed.name()), sha256())) {
                long bytes = 0;
                byte[] buffer = new byte[BUFFER];
                for (int read = in.read(buffer); read >= 0 && bytes <= listed.bytes(); read = in.read(buffer)) {
                    bytes += read;
                }
                String found = HexFormat.of().formatHex(in.getMessageDigest().digest());
                if (bytes != listed.bytes() || !found.equals(listed.sha256())) {
                    throw new IOException(listed.name() + " is not the file that was exported: expected SHA-256 "
                            + listed.sha256() + ", found " + found);
                }
            }
        }
        if (zip.size() != names.size()) {
            throw new IOException("it holds files that are not in its list");
        }
    }

    InputStream stream(String name) throws IOException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw new IOException("it has no " + name);
        }
        return zip.getInputStream(entry);
    }

    BufferedReader lines(String name) throws IOException {
        return new BufferedReader(new InputStreamReader(stream(name), StandardCharsets.UTF_8), BUFFER);
    }

    byte[] bytes(String name) throws IOException {
        return bytes(name, PICTURE_BYTES_MAX);
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    private byte[] bytes(String name, int max) throws IOException {
        try (InputStream in = stream(name)) {
            byte[] bytes = in.readNBytes(max + 1);
            if (bytes.length > max) {
                throw new IOException(name + " is too long");
            }
            return bytes;
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
