package brightseam.procedure.shell;

import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.ledger.Outcome;
import brightseam.ledger.Versioned;
import brightseam.ledger.shell.EventStream;
import brightseam.ledger.shell.Ledger;
import brightseam.procedure.ApprovalRefusal;
import brightseam.procedure.ApprovalRefusal.ProcedureChangedSinceShown;
import brightseam.procedure.ApprovalRefusal.ProcedureUnknown;
import brightseam.procedure.ApprovalRefusal.ProcedureUnsound;
import brightseam.procedure.Approvals;
import brightseam.procedure.Candidate;
import brightseam.procedure.CandidateState;
import brightseam.procedure.Procedure;
import brightseam.procedure.ProcedureApproved;
import brightseam.procedure.ProcedureRef;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.shell.ProcedureLoader.Loaded;
import brightseam.procedure.shell.ProcedureLoader.Loading;
import brightseam.procedure.shell.ProcedureLoader.Unsound;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The procedures of the shop. The folder only proposes; what is used was approved by a named person and is read back
 * from the ledger, so an edited, broken or deleted file changes nothing for travellers. Safe for several threads.
 */
public class ProcedureLibrary {

    private final Path folder;
    private final ProcedureLoader loader;
    private final EventStream<Approvals, ProcedureApproved> streams;
    private final Supplier<Set<String>> approvedIds;
    private final Map<ProcedureRef, Procedure> restored = new ConcurrentHashMap<>();
    private volatile Map<String, Loading> files;

    /**
     * Reads {@code folder} once; {@link #reload} reads it again.
     *
     * @param approvedIds the names of all procedures of which a revision was ever approved
     * @throws UncheckedIOException where the folder is there and cannot be listed
     */
    public ProcedureLibrary(Path folder, Vocabulary vocabulary, Ledger ledger, Supplier<Set<String>> approvedIds) {
        this.folder = folder;
        this.loader = new ProcedureLoader(vocabulary);
        this.streams = new EventStream<>(ledger, ProcedureStreams.KIND);
        this.approvedIds = approvedIds;
        reload();
    }

    /**
     * Reads the folder again and returns how each file stands.
     *
     * @throws UncheckedIOException where the folder is there and cannot be listed; the last reading stays
     */
    public List<Candidate> reload() {
        try {
            files = ProcedureFolder.read(folder, loader);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("procedures in " + folder, unreadable);
        }
        return candidates();
    }

    /** How each file of the folder stood when it was last read, by file name. */
    public List<Candidate> candidates() {
        return files.entrySet().stream().map(file -> candidate(file.getKey(), file.getValue())).toList();
    }

    /** The revisions in use, by name: the last approved one of each procedure; travellers are released with these. */
    public List<Procedure> current() {
        return new TreeSet<>(approvedIds.get()).stream()
                .flatMap(id -> approvals(id).last().stream())
                .map(this::restore)
                .toList();
    }

    /** The revision of {@code id} that is in use, where one was ever approved. */
    public Optional<Procedure> current(String id) {
        return approvals(id).last().map(this::restore);
    }

    /** The approved revision of {@code id} with the letter {@code revision}; replaced ones are found too. */
    public Optional<Procedure> revision(String id, String revision) {
        return history(id).stream().filter(approved -> approved.revision().equals(revision)).findFirst()
                .map(this::restore);
    }

    /** The procedure named by {@code ref}, where exactly that was ever approved; replaced revisions are found too. */
    public Optional<Procedure> find(ProcedureRef ref) {
        Procedure known = restored.get(ref);
        return known != null ? Optional.of(known) : approvals(ref.id()).find(ref).map(this::restore);
    }

    /** Everything that was approved of {@code id}, from the first; who, when and the approved text. */
    public List<ProcedureApproved> history(String id) {
        return approvals(id).history();
    }

    /** Approves the file of procedure {@code id} as last read; see {@link #approve(ProcedureRef, Origin)}. */
    public Outcome<Approvals> approve(String id, Origin origin) {
        return approve(id, Optional.empty(), origin);
    }

    /**
     * Approves exactly the file that the person was shown. Whether that person may approve is the caller's question.
     *
     * @return done once it is on disk, or every reason against it: {@link brightseam.procedure.ApprovalRefusal}
     * @throws brightseam.ledger.NotStoredException where the disk failed; nothing is approved then
     */
    public Outcome<Approvals> approve(ProcedureRef shown, Origin origin) {
        return approve(shown.id(), Optional.of(shown), origin);
    }

    /**
     * Approves the file whose bytes are {@code content}, which lies in no folder: one that a newer file has replaced.
     *
     * @param name the name that problems are reported under
     * @throws IllegalArgumentException where it is not sound
     */
    public Outcome<Approvals> approve(String name, byte[] content, Origin origin) {
        if (!(loader.load(name, content) instanceof Loaded loaded)) {
            throw new IllegalArgumentException("not a sound procedure: " + name);
        }
        ProcedureRef ref = loaded.procedure().ref();
        return streams.execute(ref.id(), approved ->
                approved.orElse(Approvals.NONE).approve(ref, loaded.content(), origin));
    }

    private Outcome<Approvals> approve(String id, Optional<ProcedureRef> shown, Origin origin) {
        return streams.execute(id, approved -> decide(id, shown, approved.orElse(Approvals.NONE), origin));
    }

    private Decision<ProcedureApproved> decide(
            String id, Optional<ProcedureRef> shown, Approvals approved, Origin origin) {
        Optional<Loaded> sound = files.values().stream()
                .flatMap(loading -> loading instanceof Loaded loaded ? Stream.of(loaded) : Stream.empty())
                .filter(loaded -> loaded.procedure().ref().id().equals(id))
                .findFirst();
        if (sound.isEmpty()) {
            return Decision.refused(List.of(whyNotSound(id)));
        }
        ProcedureRef found = sound.get().procedure().ref();
        return shown.filter(ref -> !ref.equals(found)).isPresent()
                ? Decision.refused(List.of(new ProcedureChangedSinceShown(id, shown.get().sha256(), found.sha256())))
                : approved.approve(found, sound.get().content(), origin);
    }

    private ApprovalRefusal whyNotSound(String id) {
        return candidates().stream()
                .filter(candidate -> candidate.id().filter(id::equals).isPresent())
                .<ApprovalRefusal>map(bad -> new ProcedureUnsound(
                        id, bad.file(), bad.problems().size(), bad.problems().getFirst().toString()))
                .findFirst()
                .orElse(new ProcedureUnknown(id));
    }

    private Candidate candidate(String file, Loading loading) {
        return switch (loading) {
            case Unsound unsound -> new Candidate(
                    file, unsound.id(), Optional.empty(), CandidateState.BAD, unsound.problems());
            case Loaded loaded -> {
                ProcedureRef ref = loaded.procedure().ref();
                yield new Candidate(file, Optional.of(ref.id()), Optional.of(loaded.procedure()),
                        approvals(ref.id()).state(ref), List.of());
            }
        };
    }

    private Procedure restore(ProcedureApproved approved) {
        return restored.computeIfAbsent(approved.ref(), ref -> {
            Procedure procedure = loader.restore(approved.content());
            if (!procedure.ref().equals(ref)) {
                throw new IllegalStateException("the ledger's text of " + ref.label() + " does not have its hash");
            }
            return procedure;
        });
    }

    private Approvals approvals(String id) {
        return streams.load(id).map(Versioned::state).orElse(Approvals.NONE);
    }
}
