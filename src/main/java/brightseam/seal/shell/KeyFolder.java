package brightseam.seal.shell;

import brightseam.kernel.shell.OwnerAlone;
import brightseam.seal.NoteKey;
import brightseam.seal.NoteVerifier;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The folder of the keys, for the owner alone: {@code log-name}, and for each key {@code <id>.pub} with its public half
 * and the time it was made, and while it may sign {@code <id>.key} with its secret.
 */
final class KeyFolder {

    private static final String NAME = "log-name";
    private static final String PUBLIC = ".pub";
    private static final String SECRET = ".key";
    private static final int NAME_BYTES = 6;
    private static final int LINES = 2;

    private final Path folder;
    private final SecureRandom random = new SecureRandom();

    /** A public half and when it was made. */
    record Made(NoteVerifier key, Instant at) {}

    KeyFolder(Path folder) {
        this.folder = folder;
    }

    Path path() {
        return folder;
    }

    boolean isEmpty() {
        return !Files.exists(folder.resolve(NAME));
    }

    /** Names the log {@code wanted}, for good, or by chance where that is empty; makes its first key. */
    NoteKey begin(String wanted, Instant now) {
        try {
            Folders.makePrivate(folder);
        } catch (IOException failure) {
            throw unwritten(failure);
        }
        byte[] id = new byte[NAME_BYTES];
        random.nextBytes(id);
        String name = wanted.isBlank() ? "brightseam.invalid/" + HexFormat.of().formatHex(id) : wanted.strip();
        NoteKey key = make(name, now);
        beginNamed(name);
        return key;
    }

    /** Gives the log its name for good; makes no key. */
    void beginNamed(String name) {
        try {
            Folders.makePrivate(folder);
            Folders.writePrivate(folder.resolve(NAME), name + "\n");
        } catch (IOException failure) {
            throw unwritten(failure);
        }
    }

    /** The log's name, which stays the same. */
    String name() {
        return read(folder.resolve(NAME)).strip();
    }

    /** A new key, on disk. */
    NoteKey make(String name, Instant now) {
        NoteKey key = NoteKey.generate(name, random);
        try {
            Folders.writePrivate(file(key.verifier(), SECRET), key.secretText() + "\n");
            Folders.writePrivate(file(key.verifier(), PUBLIC), key.verifier().text() + "\n" + now + "\n");
        } catch (IOException failure) {
            throw unwritten(failure);
        }
        return key;
    }

    /** Every public half, the oldest first. */
    List<Made> made() {
        List<Made> made = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return made;
        }
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(file -> file.toString().endsWith(PUBLIC)).forEach(file -> made(file).ifPresent(made::add));
        } catch (IOException failure) {
            throw new UncheckedIOException("the folder of the keys " + folder + " cannot be read", failure);
        }
        made.sort(Comparator.comparing(Made::at));
        return made;
    }

    /** The whole key of {@code verifier}; empty where its secret is not there. */
    Optional<NoteKey> secret(NoteVerifier verifier) {
        Path file = file(verifier, SECRET);
        return Files.exists(file)
                ? NoteKey.parse(read(file)).filter(key -> key.verifier().equals(verifier))
                : Optional.empty();
    }

    /** Forgets {@code verifier}, which never signed. */
    void forget(NoteVerifier verifier) {
        deleteSecret(verifier);
        try {
            Files.deleteIfExists(file(verifier, PUBLIC));
        } catch (IOException failure) {
            throw new UncheckedIOException("a key that never signed cannot be deleted from " + folder, failure);
        }
    }

    /** Forgets the secret of {@code verifier}; its public half stays. */
    void deleteSecret(NoteVerifier verifier) {
        try {
            if (Files.deleteIfExists(file(verifier, SECRET))) {
                OwnerAlone.force(folder);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("a key's secret cannot be deleted from " + folder, failure);
        }
    }

    private static Optional<Made> made(Path file) {
        String[] lines = read(file).split("\n");
        try {
            return lines.length < LINES
                    ? Optional.empty()
                    : NoteVerifier.parse(lines[0]).map(key -> new Made(key, Instant.parse(lines[1])));
        } catch (DateTimeParseException notOne) {
            return Optional.empty();
        }
    }

    private UncheckedIOException unwritten(IOException failure) {
        return new UncheckedIOException("the folder of the keys " + folder + " cannot be written", failure);
    }

    private Path file(NoteVerifier key, String ending) {
        return folder.resolve(key.idHex() + ending);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(file + " cannot be read", failure);
        }
    }
}
