package brightseam.seal.shell;

import brightseam.seal.shell.Seals.Sealed;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A folder, such as a file share: one file for each head, there whole or not at all, never written a second time. */
final class FolderWitness implements Witness {

    private static final String FORM = "head-\\d{15}\\.txt";

    private final Path folder;

    FolderWitness(Path folder) {
        this.folder = folder;
    }

    @Override
    public String place() {
        return folder.toString();
    }

    @Override
    public void keep(Sealed head) throws IOException {
        refuseMissing();
        Path file = folder.resolve(String.format(Locale.ROOT, "head-%015d.txt", head.size()));
        if (!Files.exists(file)) {
            Folders.write(file, head.note());
        } else if (!Files.readString(file, StandardCharsets.UTF_8).equals(head.note())) {
            throw new IOException("it has another head of " + head.size() + " entries");
        }
    }

    @Override
    public Optional<String> newest() throws IOException {
        refuseMissing();
        try (Stream<Path> files = Files.list(folder)) {
            Optional<Path> last = files.filter(file -> file.getFileName().toString().matches(FORM))
                    .max(Comparator.comparing(file -> file.getFileName().toString()));
            return last.isPresent() ? Optional.of(Files.readString(last.get(), StandardCharsets.UTF_8))
                    : Optional.empty();
        }
    }

    private void refuseMissing() throws IOException {
        if (!Files.isDirectory(folder)) {
            throw new IOException("the folder is not there");
        }
    }
}
