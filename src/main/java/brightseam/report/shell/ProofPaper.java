package brightseam.report.shell;

import brightseam.report.Phrases;
import brightseam.report.RecordMark;
import brightseam.report.SealedWith;
import brightseam.report.TravellerDocument;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.w3c.dom.Element;

/** Writes who signed on what authority, and what ties the print to the ledger. */
final class ProofPaper {

    private final Sheet sheet;

    ProofPaper(Sheet sheet) {
        this.sheet = sheet;
    }

    void write(TravellerDocument told, RecordMark mark, Optional<SealedWith> evidence) {
        sheet.add(sheet.body(), "h2", "", "Authority");
        Element rows = sheet.table(sheet.body(), "list list-two",
                Sheet.heads("", "Name", "", "Badge", "", "Roles when signing", "", "Stamp", "", "Signatures",
                        "", "Meaning"));
        told.authority().forEach(person -> sheet.row(rows, List.of(person.name(), person.badge().value(),
                Phrases.roles(person.roles()), person.stamp().orElse("–"), String.valueOf(person.signatures()),
                person.meanings().stream().map(Phrases::meaning).collect(Collectors.joining(", ")))));
        Element proof = sheet.add(sheet.body(), "div", "proof");
        sheet.add(proof, "h2", "", "Chain");
        Element facts = sheet.add(proof, "table", "facts");
        sheet.fact(facts, "Entries", String.valueOf(told.chain().entries()));
        sheet.fact(facts, "Last hash", told.chain().lastHash());
        sheet.fact(facts, "Checked", told.chain().flaw().map(flaw -> "BROKEN: " + flaw)
                .orElse("when this was printed every hash was derived anew from the stored entries, and all fit"));
        sheet.fact(facts, "Data Matrix", mark.payload());
        sheet.add(proof, "p", "notice", "Each entry's SHA-256 is taken over its canonical JSON (RFC 8785) and the hash"
                + " of the entry before it, so the last hash stands for the whole record. An entry written later makes"
                + " this print an earlier state of the record, not a false one.");
        evidence.ifPresent(this::seal);
    }

    private void seal(SealedWith evidence) {
        Element proof = sheet.add(sheet.body(), "div", "proof");
        sheet.add(proof, "h2", "", "Seal");
        Element facts = sheet.add(proof, "table", "facts");
        sheet.fact(facts, "Ledger", evidence.head().size() + " entries");
        sheet.fact(facts, "Root", evidence.head().root());
        evidence.keys().forEach(key -> sheet.fact(facts, "Signed by", key));
        sheet.fact(facts, "Attached", evidence.file());
        sheet.add(proof, "p", "notice", "The attached file holds the entries themselves, their places in the ledger and"
                + " its signed head. Whoever has the shop's public key from the shop itself can check it without asking"
                + " any server: verify, then this file, then --key and the key. No signature covers how these pages"
                + " look: compare them with what the check reads out of the entries.");
    }
}
