package brightseam.check.shell;

import brightseam.seal.NoteVerifier;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Public keys in the folder of the keys, as text, or in a file. */
public final class PublicKeys {

    private static final String NAME = "log-name";
    private static final String PUBLIC = ".pub";

    private PublicKeys() {}

    /** Every public half in {@code folder}. */
    public static List<NoteVerifier> inFolder(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<NoteVerifier> keys = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(path -> path.toString().endsWith(PUBLIC)).sorted().toList()) {
                Files.readString(file, StandardCharsets.UTF_8).lines().findFirst().flatMap(NoteVerifier::parse)
                        .ifPresent(keys::add);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("the folder of the keys " + folder + " cannot be read", failure);
        }
        return keys;
    }

    /** The ledger's name as the folder of the keys says it. */
    static Optional<String> origin(Path folder) {
        Path file = folder.resolve(NAME);
        try {
            return Files.exists(file)
                    ? Optional.of(Files.readString(file, StandardCharsets.UTF_8).strip())
                    : Optional.empty();
        } catch (IOException failure) {
            throw new UncheckedIOException(file + " cannot be read", failure);
        }
    }

    /** The public key that is {@code given}, or that the file of that name holds; empty where it is none. */
    public static Optional<NoteVerifier> given(String given) {
        Optional<NoteVerifier> typed = NoteVerifier.parse(given);
        try {
            return typed.isPresent() || !Files.isRegularFile(Path.of(given))
                    ? typed
                    : Files.readString(Path.of(given), StandardCharsets.UTF_8).lines().findFirst()
                            .flatMap(NoteVerifier::parse);
        } catch (IOException | java.nio.file.InvalidPathException unreadable) {
            return Optional.empty();
        }
    }
}
