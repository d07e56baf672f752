package brightseam.evidence;

import brightseam.kernel.TravellerId;
import brightseam.ledger.StreamName;
import brightseam.seal.Checkpoint;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What follows from a file in which everything fits.
 *
 * @param traveller whose record
 * @param head the head of the ledger that everything is proven against
 * @param sealedAt when that head was signed, as the key's holder says
 * @param vouching keys that were given and signed the head; none where no key was given
 * @param stated other keys that signed it, which the file itself names
 * @param earlierHeads how many earlier heads the ledger is shown to have grown from
 * @param lines the record's entries, one line each
 * @param lastHash the hash of the record's last entry
 * @param covered the streams in the file
 * @param missing labels that the record names and the file has no entries of
 * @param finished whether the record says that nothing is left to do
 * @param demo whether any entry was recorded in a demo shop
 * @param paper how the paper stands to the file, where a mark was given
 */
public record Proof(TravellerId traveller, Checkpoint head, Optional<Instant> sealedAt, List<String> vouching,
        List<String> stated, int earlierHeads, List<FactLine> lines, String lastHash, List<Covered> covered,
        List<String> missing, boolean finished, boolean demo, Optional<Paper> paper) {

    /** Copies the lists. */
    public Proof {
        vouching = List.copyOf(vouching);
        stated = List.copyOf(stated);
        lines = List.copyOf(lines);
        covered = List.copyOf(covered);
        missing = List.copyOf(missing);
    }

    /**
     * A stream in the file.
     *
     * @param from the first entry of it
     * @param to the last entry of it
     * @param entries how many there are; fewer than from first to last where some were left out
     */
    public record Covered(StreamName stream, long from, long to, int entries) {

        /** Whether nothing is left out from the first entry of the stream to the last in the file. */
        public boolean isWhole() {
            return from == 1 && entries == to;
        }
    }

    /**
     * A paper that belongs to the file.
     *
     * @param entries how many it shows
     * @param sameHead whether it names a head that is in the file; false for an older form of the mark, too
     */
    public record Paper(long entries, boolean sameHead) {}

    /** Whether somebody's key, given from outside, vouches for it. */
    public boolean isVouchedFor() {
        return !vouching.isEmpty();
    }
}
