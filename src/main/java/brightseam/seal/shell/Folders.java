package brightseam.seal.shell;

import brightseam.kernel.shell.OwnerAlone;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.Set;

/** Files that appear whole, and with their permissions from the beginning. */
final class Folders {

    private Folders() {}

    /** Makes {@code folder} where it is missing, for the owner alone; closes one that is there to others. */
    static void makePrivate(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder.toAbsolutePath().getParent());
            Files.createDirectory(folder, OwnerAlone.folder(folder));
        } else {
            OwnerAlone.close(folder);
        }
    }

    /** Writes {@code text} to {@code file} for the owner alone; the file is there whole or not at all. */
    static void writePrivate(Path file, String text) throws IOException {
        write(file, text, OwnerAlone.file(file));
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
        OwnerAlone.force(file.toAbsolutePath().getParent());
    }
}
