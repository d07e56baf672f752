package brightseam.seal.shell;

import brightseam.seal.NoteKey;
import brightseam.seal.NoteVerifier;
import brightseam.seal.shell.Seals.KeyInUse;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Which keys sign. */
final class Keys {

    private final KeyFolder folder;

    Keys(KeyFolder folder) {
        this.folder = folder;
    }

    String name() {
        return folder.name();
    }

    /** Every key that ever signed, the oldest first. */
    List<KeyInUse> all(Instant now) {
        return folder.made().stream()
                .map(made -> new KeyInUse(made.key(), made.at(), Optional.empty(), true)).toList();
    }

    /** The keys that sign at {@code now}, the newest first. */
    List<NoteKey> signers(Instant now) {
        return all(now).reversed().stream().filter(KeyInUse::active)
                .flatMap(use -> folder.secret(use.key()).stream()).toList();
    }

    /** The newest key's public half. */
    Optional<NoteVerifier> newest(Instant now) {
        return all(now).reversed().stream().map(KeyInUse::key).findFirst();
    }
}
