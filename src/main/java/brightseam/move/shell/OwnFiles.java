package brightseam.move.shell;

import brightseam.kernel.shell.OwnerAlone;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files for the owner alone. */
final class OwnFiles {

    private OwnFiles() {}

    static void write(Path target, InputStream in) throws IOException {
        Path folder = target.getParent();
        Files.createDirectories(folder);
        OwnerAlone.close(folder);
        try (in) {
            Files.deleteIfExists(target);
            Files.createFile(target, OwnerAlone.file(folder));
            try (var out = Files.newOutputStream(target)) {
                in.transferTo(out);
            }
        }
    }
}
