package brightseam.evidence;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says in words what a file proves, by which key, and what it does not prove. */
public final class VerdictWords {

    /** As the printed record writes times. */
    private static final DateTimeFormatter TIME = PageCheck.TIME;

    /** What a terminal would obey or hide instead of showing it. */
    private static final String UNPRINTABLE = "[\\p{Cc}\\p{Cf}\\p{Co}\\p{Cn}]";

    private final ZoneId zone;
    private final List<String> lines = new ArrayList<>();

    private VerdictWords(ZoneId zone) {
        this.zone = zone;
    }

    /** The lines for a person, times in {@code zone}. */
    public static List<String> of(Verdict verdict, ZoneId zone) {
        VerdictWords words = new VerdictWords(zone);
        switch (verdict) {
            case Verdict.Broken broken -> words.lines.addAll(List.of("DOES NOT FIT", MisfitWords.of(broken.first()),
                    "Nothing in this file counts as proven."));
            case Verdict.Fits fits -> words.say(fits.proof());
        }
        return words.lines.stream().map(line -> line.replaceAll(UNPRINTABLE, "\u25a1")).toList();
    }

    private void say(Proof proof) {
        lines.add(proof.isVouchedFor()
                ? "PROVEN by the key that was given"
                : "FITS TOGETHER, AND NOBODY VOUCHES FOR IT: no key was given");
        proof.vouching().forEach(key -> lines.add("  key " + key));
        proof.stated().forEach(key -> lines.add("  also signed, by a key that only the file itself states: " + key));
        if (proof.demo()) {
            lines.add("DEMO: this was recorded in a demo shop.");
        }
        lines.add("");
        lines.add(proof.isVouchedFor() ? "What is proven" : "What fits together");
        proven(proof);
        lines.add("");
        lines.add("What is not proven");
        notProven(proof);
        lines.add("");
        lines.add("The record of " + proof.traveller() + ", from its entries, to compare with the paper (times of "
                + zone.getId() + ")");
        proof.lines().forEach(this::fact);
    }

    private void proven(Proof proof) {
        int own = proof.covered().getFirst().entries();
        item(proof.traveller() + ": entries 1 to " + own + " stand as they were written, none left out between them;"
                + " the last hash is " + proof.lastHash() + ".");
        item("They and " + (proof.covered().stream().mapToInt(Proof.Covered::entries).sum() - own)
                + " entries of what the record leans on are in the ledger \"" + proof.head().origin() + "\" of "
                + proof.head().size() + " entries, whose root " + proof.head().root().hex() + " is signed"
                + proof.sealedAt().map(time -> " at " + time(time)).orElse("") + ".");
        if (proof.earlierHeads() > 0) {
            item("That ledger grew from each of " + proof.earlierHeads() + " earlier heads in the file, with nothing"
                    + " changed or taken out.");
        }
        proof.paper().ifPresent(paper -> item("The paper belongs to this file: it shows the record up to entry "
                + paper.entries() + (paper.entries() < own ? ", an earlier state" : "")
                + (paper.sameHead() ? ", and names the same head." : "; its mark names no head of this file.")));
        item("In the file: " + proof.covered().stream().map(VerdictWords::covered)
                .collect(Collectors.joining("; ")) + ".");
    }

    private void notProven(Proof proof) {
        if (!proof.isVouchedFor()) {
            item("Who made it. Whoever made this file may have made the keys in it, too. Get the shop's public key"
                    + " another way and give it with --key.");
        }
        item("That what was written down is true. It is what the people named wrote at the time, and no more.");
        long backDated = proof.lines().stream().filter(FactLine::isBackDated).count();
        if (backDated > 0) {
            item("The times of " + backDated + (backDated == 1 ? " entry" : " entries") + " marked below: a head that"
                    + " was signed later does not have it yet. A clock may have been set, or somebody dated it back.");
        }
        item("The times, beyond what the shop's clock and the holder of the key say. A copy of a head that a second"
                + " place kept bounds them.");
        item("What came later. " + (proof.finished()
                ? "The record says that nothing is left to do"
                : "THE RECORD IS NOT FINISHED") + " at entry " + proof.covered().getFirst().to()
                + "; later entries are not in this file.");
        item("The pages of a printed record: no signature covers how they look. Compare them with the lines below.");
        if (!proof.missing().isEmpty()) {
            item("What is named and not in the file: " + String.join(", ", proof.missing()) + ".");
        }
        List<String> parts = proof.covered().stream().filter(part -> !part.isWhole())
                .map(part -> MisfitWords.name(part.stream())).toList();
        if (!parts.isEmpty()) {
            item("That nothing else was written about " + String.join(", ", parts) + ": of these only some entries are"
                    + " in the file.");
        }
        item("Photographs and readings of meters are in the file by their SHA-256 alone.");
    }

    private void fact(FactLine line) {
        String window = line.signer().isPresent() || line.isBackDated() ? window(line.notYetAt(), line.inBy()) : "";
        lines.add(String.format("%7s  %-20s  %s%s%s", line.number(), line.at().map(this::time).orElse("no time"),
                line.what(), window, line.isBackDated() ? " STATES A TIME AT WHICH THE LEDGER DID NOT HAVE IT" : ""));
    }

    private String window(Optional<Instant> notYetAt, Optional<Instant> inBy) {
        return inBy.map(by -> " [in the ledger by " + time(by)
                + notYetAt.map(before -> ", not yet at " + time(before)).orElse("") + "]").orElse("");
    }

    private void item(String words) {
        lines.add(" - " + words);
    }

    private String time(Instant time) {
        return TIME.format(time.atZone(zone));
    }

    private static String covered(Proof.Covered part) {
        String name = MisfitWords.name(part.stream());
        if (part.from() == part.to()) {
            return name + " entry " + part.to();
        }
        return name + " entries " + part.from() + " to " + part.to()
                + (part.entries() == part.to() - part.from() + 1 ? "" : " (" + part.entries() + " of them)");
    }
}
