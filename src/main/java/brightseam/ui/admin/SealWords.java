package brightseam.ui.admin;

import brightseam.seal.NoteVerifier;
import brightseam.seal.shell.Seals.BackDated;
import brightseam.seal.shell.Seals.KeyInUse;
import brightseam.seal.shell.Seals.Sealed;
import brightseam.seal.shell.Seals.WitnessState;
import brightseam.words.Words;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the page of the seals says, in words. */
final class SealWords {

    private static final int LINE_LENGTH = 48;

    private final ZoneId zone;

    SealWords(ZoneId zone) {
        this.zone = zone;
    }

    /** Whether everything is sealed. */
    String standing(Optional<Sealed> latest, long stored, Optional<String> trouble) {
        String upTo = latest.map(head -> "Entries 1 to " + head.size() + " were sealed on "
                + Words.stamp(head.at(), zone) + ".").orElse("Nothing was sealed yet.");
        if (trouble.isPresent()) {
            return "NOTHING IS SEALED ANY MORE: " + trouble.get() + ". " + upTo
                    + " Sign nothing more, run check-ledger, and keep the data folder as it is.";
        }
        long open = stored - latest.map(Sealed::size).orElse(0L);
        return open > 0
                ? upTo + " " + Words.count(open, "entry waits", "entries wait") + " for the next head."
                : upTo + " That is every entry.";
    }

    /** Whether and how long a key signs. */
    String standing(KeyInUse use) {
        return use.until().map(until -> use.active()
                        ? "signs beside the newest until " + Words.stamp(until, zone)
                        : "signed until " + Words.stamp(until, zone))
                .orElse("SIGNS");
    }

    /** What a witness has, or why not. */
    String standing(WitnessState witness) {
        String has = witness.last().map(head -> "has the head over " + head.size() + " entries of "
                + Words.stamp(head.at(), zone)).orElse("has no head since the server started");
        return witness.failure().map(why -> "FAILS: " + why + "; it " + has).orElse(has);
    }

    /** What is odd about an entry's time. */
    String note(BackDated odd) {
        return "says " + Words.stamp(odd.stated(), zone) + ", " + rough(odd.before()) + " before the ledger was sealed"
                + " without it";
    }

    /** The lines of the sheet for the wall. */
    List<String> sheet(String shop, KeyInUse use) {
        List<String> lines = new ArrayList<>();
        lines.add("This is the public key of " + shop + ". It signs the record of every traveller.");
        lines.add("The code above holds the same text as these lines, joined:");
        lines.add("");
        lines.addAll(parts(use.key()));
        lines.add("");
        lines.add("Id " + use.key().idHex() + ", made on " + Words.stamp(use.from(), zone) + ".");
        lines.add("Pin this sheet where visitors see it, and send a copy to customers and auditors.");
        lines.add("Whoever has it can check a record of this shop without asking the shop.");
        lines.add("Where a record comes with another key, ask why before you trust it.");
        return lines;
    }

    /** The key's text cut into pieces that can be read out. */
    static List<String> parts(NoteVerifier key) {
        List<String> parts = new ArrayList<>();
        String text = key.text();
        for (int at = 0; at < text.length(); at += LINE_LENGTH) {
            parts.add(text.substring(at, Math.min(text.length(), at + LINE_LENGTH)));
        }
        return parts;
    }

    /** A point in time for the record. */
    String stamp(Instant at) {
        return Words.stamp(at, zone);
    }

    private static String rough(Duration time) {
        if (time.toDays() > 0) {
            return Words.count(time.toDays(), "day", "days");
        }
        return time.toHours() > 0
                ? time.toHours() + " h " + time.toMinutesPart() + " min"
                : Words.count(time.toMinutes(), "minute", "minutes");
    }
}
