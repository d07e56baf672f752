package brightseam.evidence.shell;

import brightseam.evidence.Evidence;
import brightseam.evidence.EvidenceForm;
import brightseam.kernel.TravellerId;
import brightseam.kernel.shell.ShopClock;
import brightseam.ledger.Chain;
import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.Ledger;
import brightseam.report.RecordMark;
import brightseam.report.SealedWith;
import brightseam.report.TravellerDocument;
import brightseam.report.shell.Records;
import brightseam.seal.NoteVerifier;
import brightseam.seal.SignedNote;
import brightseam.seal.shell.Seals;
import brightseam.seal.shell.Seals.Sealed;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.SortedMap;
import java.util.TreeMap;
import org.springframework.stereotype.Service;

/**
 * The record of a traveller as a file that proves itself: see {@code docs/verify.md}. An unfinished record goes out as
 * far as it has come, and says so.
 */
@Service
public class EvidenceFiles {

    /** Heads that bound times; a record has some dozens of signatures, and each needs two. */
    private static final int HEADS_MAX = 400;

    private final Ledger ledger;
    private final Seals seals;
    private final Records records;
    private final ShopClock clock;

    EvidenceFiles(Ledger ledger, Seals seals, Records records, ShopClock clock) {
        this.ledger = ledger;
        this.seals = seals;
        this.records = records;
        this.clock = clock;
    }

    private record Made(Evidence evidence, Sealed head, List<String> signers) {}

    /**
     * The evidence as JSON, see {@code shared/schemas/evidence.schema.json}.
     *
     * @throws NoSuchElementException where there is no such traveller
     */
    public byte[] json(TravellerId id) {
        return EvidenceForm.write(make(id, own(id)).evidence());
    }

    /** The record on paper with the evidence attached, printed by the shop. Throws as {@link #json}. */
    public byte[] pdf(TravellerId id) {
        return pdf(id, "the shop");
    }

    /** The same, said to be printed by {@code printedBy}. */
    public byte[] pdf(TravellerId id, String printedBy) {
        List<Entry> all = own(id);
        TravellerDocument document = records.document(id).orElseThrow();
        int entries = (int) Math.max(all.size(), document.chain().entries());
        Made made = make(id, own(id).subList(0, entries));
        String name = PdfAttachment.name(id);
        RecordMark.Sealed head = new RecordMark.Sealed(made.head().size(), made.head().root().hex());
        byte[] pages = records.pdf(document, new SealedWith(head, made.signers(), name), printedBy);
        try {
            return PdfAttachment.attach(pages, name, EvidenceForm.write(made.evidence()),
                    PdfAttachment.calendar(clock.now().wall()));
        } catch (IOException impossible) {
            throw new UncheckedIOException("a print that was just made", impossible);
        }
    }

    private List<Entry> own(TravellerId id) {
        List<Entry> own = ledger.read(StreamName.of("traveller", id));
        if (own.isEmpty()) {
            throw new NoSuchElementException("no traveller " + id);
        }
        return own;
    }

    private Made make(TravellerId id, List<Entry> own) {
        SortedMap<StreamName, List<Entry>> leantOn = new EvidenceStreams(ledger).leantOn(own);
        long last = leantOn.values().stream().flatMap(List::stream).mapToLong(Entry::position)
                .reduce(own.getLast().position(), Math::max);
        Sealed head = seals.covering(last);
        List<Evidence.Part> parts = new ArrayList<>();
        parts.add(part(own, head));
        leantOn.values().forEach(entries -> parts.add(part(entries, head)));
        Collection<Sealed> earlier = earlier(own, head);
        List<SignedNote> notes = new ArrayList<>(earlier.stream().map(EvidenceFiles::note).toList());
        notes.add(note(head));
        return new Made(new Evidence(id, head.note(), earlier.stream()
                .map(older -> new Evidence.Head(older.note(), seals.consistency(older, head))).toList(),
                keys(notes), parts), head, keys(List.of(note(head))));
    }

    private Evidence.Part part(List<Entry> entries, Sealed head) {
        return new Evidence.Part(entries.getFirst().stream(), entries.stream().map(entry -> new Evidence.Item(
                Chain.envelope(entry.stream(), entry.version(), entry.type(), entry.json(), entry.previous()),
                entry.position(), seals.inclusion(entry.position(), head))).toList());
    }

    /** The last head before every signature and the first behind it, which bound its time; growing. */
    private Collection<Sealed> earlier(List<Entry> own, Sealed head) {
        TreeMap<Long, Sealed> found = new TreeMap<>();
        for (Entry entry : own) {
            if (found.size() < HEADS_MAX && (entry.json().contains("\"signature\":") || entry.version() == 1)) {
                Seals.SealedWithin within = seals.sealedWithin(entry.position());
                within.after().ifPresent(before -> found.put(before.size(), before));
                within.before().ifPresent(behind -> found.put(behind.size(), behind));
            }
        }
        found.tailMap(head.size(), true).clear();
        return found.values();
    }

    private static SignedNote note(Sealed head) {
        return SignedNote.parse(head.note()).orElseThrow();
    }

    /** The keys that signed {@code notes}, the oldest first. */
    private List<String> keys(List<SignedNote> notes) {
        return seals.keys().stream().map(Seals.KeyInUse::key)
                .filter(key -> notes.stream().anyMatch(note -> note.isSignedBy(key)))
                .map(NoteVerifier::text).distinct().toList();
    }
}
