package brightseam.app;

import static java.io.OutputStream.nullOutputStream;

import brightseam.check.shell.ControlClient;
import brightseam.check.shell.Restore;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.springframework.util.FileSystemUtils;

/**
 * A shop in which nothing is stored meanwhile: the data folder itself where no server runs on it, else a copy that the
 * server makes, which is deleted afterwards.
 *
 * @param folder the data folder or the copy
 * @param keys the folder of the keys that goes with it
 * @param copied where the copy lies; empty where there is none
 */
record StillShop(Path folder, Path keys, Optional<Path> copied) implements AutoCloseable {

    /**
     * The shop of {@code data}; {@code withSecrets}: a copy holds them too.
     *
     * @throws IOException where a server runs on it and made no copy
     */
    static StillShop of(Path data, Path keys, boolean withSecrets, PrintStream out) throws IOException {
        Path work = Files.createTempDirectory("brightseam-copy");
        try {
            Path copy = work.resolve("copy.zip");
            Optional<Integer> asked = ControlClient.ask(data, BackupCommand.COMMAND,
                    List.of(copy.toString(), String.valueOf(withSecrets)), new PrintStream(nullOutputStream()));
            if (asked.isEmpty()) {
                FileSystemUtils.deleteRecursively(work);
                return new StillShop(data, keys, Optional.empty());
            }
            if (asked.get() != 0) {
                throw new IOException("a server runs on " + data + " and could not make a copy of it");
            }
            out.println("A server runs on " + data + ": this looks at a copy that it made just now.");
            Path folder = work.resolve("shop");
            Restore.unpack(copy, folder);
            Files.delete(copy);
            return new StillShop(folder, folder.resolve("keys"), Optional.of(work));
        } catch (IOException failure) {
            FileSystemUtils.deleteRecursively(work);
            throw failure;
        }
    }

    @Override
    public void close() throws IOException {
        if (copied.isPresent()) {
            FileSystemUtils.deleteRecursively(copied.get());
        }
    }
}
