package brightseam.check.shell;

import brightseam.check.shell.BackupManifest.PackedFile;
import brightseam.kernel.shell.OwnerAlone;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;

/** Where a file of a backup goes, and that it is the one that was packed. */
final class RestoredFile {

    private static final int BUFFER = 1 << 16;
    /** Folders of plain names: no empty one, none that begins with a point. */
    private static final String NAME = "(heads\\.txt|database/brightseam\\.mv\\.db"
            + "|(keys|files)(/[A-Za-z0-9_][A-Za-z0-9_ .+=-]{0,120}){1,5})";

    private RestoredFile() {}

    static boolean isName(String name) {
        return name.matches(NAME);
    }

    /** The file in {@code folder} that {@code name} becomes. */
    static Path target(Path folder, String name) throws IOException {
        String inside = name.startsWith("database/") ? name.substring("database/".length())
                : name.startsWith("files/") ? name.substring("files/".length()) : name;
        Path target = folder.resolve(inside).normalize();
        if (!isName(name) || !target.startsWith(folder) || target.equals(folder)) {
            throw new IOException("it names a file that no backup has: " + name);
        }
        return target;
    }

    /** Writes {@code in} to {@code target}; at most as many bytes as {@code packed} says, and exactly those. */
    static void write(InputStream in, PackedFile packed, Path target) throws IOException {
        Files.createDirectories(target.getParent());
        MessageDigest digest = PackedZip.sha256();
        long bytes = 0;
        try (OutputStream out = Files.newOutputStream(target, java.nio.file.StandardOpenOption.CREATE_NEW)) {
            OwnerAlone.close(target);
            byte[] buffer = new byte[BUFFER];
            for (int read = in.read(buffer); read >= 0 && bytes <= packed.bytes(); read = in.read(buffer)) {
                digest.update(buffer, 0, read);
                out.write(buffer, 0, read);
                bytes += read;
            }
        }
        String sha256 = HexFormat.of().formatHex(digest.digest());
        if (bytes != packed.bytes() || !sha256.equals(packed.sha256())) {
            throw new IOException(packed.name() + " is not the file that was packed: expected " + packed.bytes()
                    + " bytes with SHA-256 " + packed.sha256() + ", found " + bytes + " with " + sha256);
        }
    }
}
