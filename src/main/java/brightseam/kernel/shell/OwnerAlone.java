package brightseam.kernel.shell;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Files and folders that only the server's own user may read, where the file system knows of users (POSIX). */
public final class OwnerAlone {

    private static final String FILE = "rw-------";
    private static final String FOLDER = "rwx------";

    private OwnerAlone() {}

    /** What a new file in {@code place} is to be made with, so that it is never open to others. */
    public static FileAttribute<?>[] file(Path place) {
        return attributes(place, FILE);
    }

    /** What a new folder in {@code place} is to be made with, so that it is never open to others. */
    public static FileAttribute<?>[] folder(Path place) {
        return attributes(place, FOLDER);
    }

    /**
     * Closes {@code path}, a file or a folder that is there, to others.
     *
     * @throws IOException where it is not there or not the user's own
     */
    public static void close(Path path) throws IOException {
        if (isPosix(path)) {
            Files.setPosixFilePermissions(
                    path, PosixFilePermissions.fromString(Files.isDirectory(path) ? FOLDER : FILE));
        }
    }

    /** Brings the new names in {@code folder} onto the disk, where the system lets a folder be opened. */
    public static void force(Path folder) {
        try (FileChannel opened = FileChannel.open(folder, StandardOpenOption.READ)) {
            opened.force(true);
        } catch (IOException notOnThisSystem) {
            return;
        }
    }

    private static FileAttribute<?>[] attributes(Path place, String permissions) {
        return isPosix(place)
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))}
                : new FileAttribute<?>[0];
    }

    private static boolean isPosix(Path place) {
        return place.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
