package brightseam.seal.shell;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** Files that appear whole, and with their permissions from the beginning. */
final class Folders {

    private static final String OWNER_ALONE = "rw-------";
    private static final String OWNER_ALONE_FOLDER = "rwx------";

    private Folders() {}

    /** Makes {@code folder} where it is missing, for the owner alone; closes one that is there to others. */
    static void makePrivate(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder.toAbsolutePath().getParent());
            Files.createDirectory(folder, permissions(folder.toAbsolutePath().getParent(), OWNER_ALONE_FOLDER));
        } else if (isPosix(folder)) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString(OWNER_ALONE_FOLDER));
        }
    }

    /** Writes {@code text} to {@code file} for the owner alone; the file is there whole or not at all. */
    static void writePrivate(Path file, String text) throws IOException {
        write(file, text, permissions(file.toAbsolutePath().getParent(), OWNER_ALONE));
    }

    /** Writes {@code text} to {@code file}; the file is there whole or not at all. */
    static void write(Path file, String text) throws IOException {
        write(file, text, new FileAttribute<?>[0]);
    }

    private static void write(Path file, String text, FileAttribute<?>... attributes) throws IOException {
        Path fresh = file.resolveSibling(file.getFileName() + ".part");
        Files.deleteIfExists(fresh);
        try (FileChannel channel = FileChannel.open(
                fresh, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), attributes)) {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
        Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE);
        force(file.toAbsolutePath().getParent());
    }

    /** Brings a folder's new names onto the disk, where the system lets a folder be opened. */
    static void force(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notOnThisSystem) {
            return;
        }
    }

    private static FileAttribute<?>[] permissions(Path folder, String permissions) {
        return isPosix(folder)
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))}
                : new FileAttribute<?>[0];
    }

    private static boolean isPosix(Path folder) {
        return folder.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
