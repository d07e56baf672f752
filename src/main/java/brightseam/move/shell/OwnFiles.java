package brightseam.move.shell;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/** Files for the owner alone. */
final class OwnFiles {

    private OwnFiles() {}

    static void write(Path target, InputStream in) throws IOException {
        Path folder = target.getParent();
        Files.createDirectories(folder);
        boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        if (posix) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        }
        try (in) {
            Files.deleteIfExists(target);
            Files.createFile(target);
            if (posix) {
                Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("rw-------"));
            }
            try (var out = Files.newOutputStream(target)) {
                in.transferTo(out);
            }
        }
    }
}
