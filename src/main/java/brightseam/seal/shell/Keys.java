package brightseam.seal.shell;

import brightseam.kernel.Origin;
import brightseam.ledger.Outcome;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.seal.Checkpoint;
import brightseam.seal.KeyHistory;
import brightseam.seal.LogEvent;
import brightseam.seal.NoteKey;
import brightseam.seal.NoteVerifier;
import brightseam.seal.SignedNote;
import brightseam.seal.shell.Seals.KeyInUse;
import brightseam.seal.shell.Seals.Sealed;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which keys sign: the ledger says which one follows which, the folder has their secrets. */
final class Keys {

    private final KeyFolder folder;
    private final EventStream<KeyHistory, LogEvent> streams;
    private final Map<String, NoteKey> secrets = new HashMap<>();

    Keys(KeyFolder folder, Ledger ledger) {
        this.folder = folder;
        this.streams = new EventStream<>(ledger, LogStreams.KIND);
    }

    KeyFolder folder() {
        return folder;
    }

    /** Every key that ever signed, the oldest first. */
    List<KeyInUse> all(Instant now) {
        List<KeyInUse> all = new ArrayList<>();
        known().ifPresent(history -> history.uses().forEach(use -> NoteVerifier.parse(use.key())
                .ifPresent(key -> all.add(new KeyInUse(key, use.from(), use.until(), use.isActive(now))))));
        return all;
    }

    /**
     * The keys that sign at {@code now}, the newest first. Forgets the secrets of those that sign no more.
     *
     * @throws IllegalStateException where the newest key's secret is gone
     */
    synchronized List<NoteKey> signers(Instant now) {
        List<NoteKey> signers = new ArrayList<>();
        for (KeyInUse use : all(now).reversed()) {
            if (use.active()) {
                secret(use.key()).ifPresent(signers::add);
            } else {
                secrets.remove(use.key().text());
                folder.deleteSecret(use.key());
            }
        }
        if (signers.isEmpty() || !signers.getFirst().verifier().text().equals(history().newest().key())) {
            throw new IllegalStateException("the newest key's secret is not in " + folder.path());
        }
        return signers;
    }

    /** Whether the newest key can sign. */
    synchronized boolean isReady() {
        return !folder.isEmpty() && known().flatMap(history -> NoteVerifier.parse(history.newest().key()))
                .flatMap(this::secret).isPresent();
    }

    /**
     * Makes a new key take over; see {@link KeyHistory#rotate}. Where the disk failed, the new key stays in the folder:
     * the rotation may be found after a restart.
     */
    synchronized Outcome<KeyHistory> rotate(Duration overlap, boolean isLost, String reason, Origin origin) {
        return rotate(history(), overlap, isLost, reason, origin);
    }

    /** Makes a new key where the secret, or the whole folder, is gone; {@code head} says what signed before. */
    synchronized void replaceLost(Sealed head, String reason, Origin origin) {
        SignedNote note = SignedNote.parse(head.note()).orElseThrow();
        if (folder.isEmpty()) {
            folder.beginNamed(Checkpoint.parse(note.text()).orElseThrow().origin());
        }
        SignedNote.Line line = note.lines().getFirst();
        KeyHistory.Use unknown = new KeyHistory.Use(
                line.name() + "+" + HexFormat.of().formatHex(line.id()), head.at(), Optional.empty());
        KeyHistory before = known().orElseGet(() -> new KeyHistory(List.of(unknown)));
        rotate(before, Duration.ZERO, true, reason, origin);
    }

    private Outcome<KeyHistory> rotate(KeyHistory first, Duration overlap, boolean isLost, String reason,
            Origin origin) {
        NoteKey next = folder.make(folder.name(), origin.at().wall());
        Outcome<KeyHistory> outcome = streams.execute(LogStreams.KEYS,
                stored -> stored.orElse(first).rotate(next.verifier(), overlap, isLost, reason, origin));
        if (outcome instanceof Outcome.Refused) {
            folder.forget(next.verifier());
        }
        return outcome;
    }

    private KeyHistory history() {
        return known().orElseThrow(() -> new IllegalStateException("no key is in " + folder.path()));
    }

    /** From the ledger; before the first rotation the oldest key of the folder. */
    private Optional<KeyHistory> known() {
        return streams.load(LogStreams.KEYS).map(Versioned::state).or(() -> folder.made().stream().findFirst()
                .map(first -> KeyHistory.of(first.key(), first.at())));
    }

    private Optional<NoteKey> secret(NoteVerifier key) {
        Optional<NoteKey> known = Optional.ofNullable(secrets.get(key.text())).or(() -> folder.secret(key));
        known.ifPresent(secret -> secrets.put(key.text(), secret));
        return known;
    }
}
