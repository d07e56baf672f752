package brightseam.evidence;

import brightseam.ledger.StreamName;
import brightseam.report.RecordMark;
import brightseam.seal.NoteVerifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Checks a file of evidence from its bytes alone: form, signatures, growth of the ledger, every hash, chain and path,
 * and whether the entries say the same of one another. Knows no server, no database and no clock.
 */
public final class EvidenceVerifier {

    private static final String CLOSED = "closed";

    private final List<NoteVerifier> given;
    private final Optional<String> mark;

    /**
     * Trusts {@code given} alone.
     *
     * @param given public keys that came another way than the file; none shows only whether the file fits together
     * @param mark what a scanner read off the paper, where there is one
     */
    public EvidenceVerifier(List<NoteVerifier> given, Optional<String> mark) {
        this.given = List.copyOf(given);
        this.mark = mark;
    }

    /** What {@code bytes} come to; the first thing that does not fit ends it. */
    public Verdict verify(byte[] bytes) {
        Checked<Proof> checked = switch (EvidenceForm.read(bytes)) {
            case EvidenceForm.Reading.Unreadable wrong ->
                    new Checked.Wrong<>(new Misfit.Unreadable(wrong.byteNumber(), wrong.why()));
            case EvidenceForm.Reading.Read read -> check(read.evidence());
        };
        return switch (checked) {
            case Checked.Wrong<Proof> wrong -> new Verdict.Broken(wrong.misfit());
            case Checked.Right<Proof> right -> new Verdict.Fits(right.value());
        };
    }

    private Checked<Proof> check(Evidence evidence) {
        return Keys.of(given, evidence.keys()).then(keys -> Heads.of(evidence, keys)).then(heads ->
                Entries.of(evidence, heads.checkpoint()).then(entries -> Sense.misfit(entries)
                        .<Checked<Proof>>map(Checked.Wrong::new)
                        .orElseGet(() -> paper(heads, entries, evidence).then(paper ->
                                new Checked.Right<>(proof(evidence, heads, entries, paper))))));
    }

    private Checked<Optional<Proof.Paper>> paper(
            Heads heads, Map<StreamName, List<ReadEntry>> entries, Evidence evidence) {
        if (mark.isEmpty()) {
            return new Checked.Right<>(Optional.empty());
        }
        return RecordMark.read(mark.get())
                .map(read -> PaperCheck.of(read, evidence, heads, entries.values().iterator().next()))
                .orElseGet(() -> new Checked.Wrong<>(new Misfit.MarkUnreadable(mark.get())));
    }

    private Proof proof(Evidence evidence, Heads heads, Map<StreamName, List<ReadEntry>> entries,
            Optional<Proof.Paper> paper) {
        List<ReadEntry> own = entries.values().iterator().next();
        List<Proof.Covered> covered = new ArrayList<>();
        entries.forEach((stream, all) -> covered.add(new Proof.Covered(stream, all.getFirst().entry().version(),
                all.getLast().entry().version(), all.size())));
        List<String> missing = Leanings.of(own.stream().map(ReadEntry::content)).stream()
                .filter(thing -> thing.streams().stream().noneMatch(entries::containsKey))
                .map(Leanings.Thing::label).distinct().sorted().toList();
        boolean demo = own.stream().anyMatch(read -> read.content().at("origin", "demo")
                .equals(Optional.of(new Json.Truth(true))));
        return new Proof(evidence.traveller(), heads.checkpoint(), heads.inBy(heads.checkpoint().size()),
                heads.signers().stream().filter(given::contains).map(NoteVerifier::text).toList(),
                heads.signers().stream().filter(key -> !given.contains(key)).map(NoteVerifier::text).toList(),
                heads.earlier(), FactLines.of(own, heads), own.getLast().entry().hash(), covered, missing,
                own.getLast().kind().equals(CLOSED), demo, paper);
    }
}
