package brightseam.seal.shell;

import brightseam.seal.shell.Seals.Sealed;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/** What does not fit at a start, with the evidence. */
sealed interface Unfit {

    /** Heads are there, and the secret of the newest key is not. */
    record KeyMissing(Path folder) implements Unfit {}

    /** The database has heads, and the file has none. */
    record FileMissing(Path file) implements Unfit {}

    /** The last head of the file cannot be read, or none of the keys signed it. */
    record NotOurs(Path file) implements Unfit {}

    /** Entries at the end are gone. The last one that is there says that it happened at {@code lastAt}. */
    record Shorter(long found, Optional<Instant> lastAt) implements Unfit {}

    /** As many entries, and others than were sealed. */
    record Other() implements Unfit {}

    /** What a person reads; {@code head} is the last one. */
    default String words(Sealed head) {
        String sealed = "The last signed head covers " + head.size() + " entries and was made at " + head.at() + ".";
        return switch (this) {
            case KeyMissing key -> "The key that signs the ledger is not in " + key.folder() + ", and the ledger was"
                    + " signed with it. " + sealed + " Put the folder of the keys back from where it was kept."
                    + goOn(head, "a new key then takes over, and everybody who pinned the old one has to be told");
            case FileMissing heads -> "The signed heads in " + heads.file() + " are gone, and the database was sealed. "
                    + sealed + " Put the file back from a backup or from a witness."
                    + goOn(head, "the file is then made anew from the database, which proves less than the file did");
            case NotOurs heads -> "The last head in " + heads.file() + " is not one that this shop's keys signed. Put"
                    + " the file, and the folder of the keys, back from where they were kept."
                    + goOn(head, "heads are then made anew over what is there");
            case Shorter shorter -> "The ledger is shorter than what was sealed. " + sealed + " The database has "
                    + shorter.found() + ": " + (head.size() - shorter.found()) + " entries are missing, everything"
                    + shorter.lastAt().map(at -> " after " + at).orElse("") + ". Restore the newest backup of the"
                    + " database." + goOn(head, "those entries are then given up");
            case Other other -> "The ledger is not the one that was sealed: the database has other entries than the"
                    + " head was signed over. " + sealed + " Restore the newest backup of the database; check-ledger"
                    + " names the first entry that does not fit."
                    + goOn(head, "what is there now then counts, altered or not");
        };
    }

    private static String goOn(Sealed head, String consequence) {
        return " Only where that cannot be had: start once with --brightseam.loss-noted=\"" + head.size()
                + ": <your name>: <why>\"; " + consequence + ", and the ledger says so under that name for ever.";
    }
}
