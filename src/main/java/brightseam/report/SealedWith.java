package brightseam.report;

import java.util.List;

/**
 * The file of evidence that goes with a print.
 *
 * @param head the signed head of the ledger that its entries are proven against
 * @param keys public halves of the keys that signed the head, as text
 * @param file the name under which it is attached to the print
 */
public record SealedWith(RecordMark.Sealed head, List<String> keys, String file) {

    /** Copies the list. */
    public SealedWith {
        keys = List.copyOf(keys);
    }
}
