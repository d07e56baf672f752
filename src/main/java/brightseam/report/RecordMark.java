package brightseam.report;

import brightseam.kernel.TravellerId;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the Data Matrix of a printed record carries: {@code BSREC1 T-1042 57 0AFB…}: the form's name and number, the
 * traveller's label, the number of entries and the last hash, parted by single spaces. {@code BSREC2} adds the size and
 * the root of the signed head that the file with the evidence is proven against, so that paper and file can be matched.
 * Capitals, digits and spaces only (but for the label's hyphen), since Data Matrix packs three of those into two
 * codewords (ISO/IEC 16022, C40, from memory).
 *
 * @param traveller whose record
 * @param entries how many entries it had when it was printed
 * @param hash the last entry's hash, 64 lower-case hexadecimal digits
 * @param sealed the head of the ledger; empty in the first form
 */
public record RecordMark(TravellerId traveller, long entries, String hash, Optional<Sealed> sealed) {

    private static final String FORM = "BSREC1";
    private static final String SEALED_FORM = "BSREC2";
    private static final String HASH = "[0-9a-f]{64}";
    private static final String NUMBER = "([1-9]\\d{0,17})";
    private static final String DIGITS = "([0-9A-F]{64})";
    private static final Pattern PAYLOAD = Pattern.compile("(?:" + FORM + "|(" + SEALED_FORM + ")) (\\S{1,24}) "
            + NUMBER + " " + DIGITS + "(?: " + NUMBER + " " + DIGITS + ")?");

    /**
     * A signed head of the ledger.
     *
     * @param size how many entries the ledger had
     * @param root of the tree over them, 64 lower-case hexadecimal digits
     */
    public record Sealed(long size, String root) {

        /** Refuses a root of another form and a size below 1. */
        public Sealed {
            if (!root.matches(HASH) || size < 1) {
                throw new IllegalArgumentException("a head has a size and a root of 64 hexadecimal digits");
            }
        }
    }

    /** Refuses a hash of another form and a count below 1. */
    public RecordMark {
        if (!hash.matches(HASH) || entries < 1) {
            throw new IllegalArgumentException("a record has entries and a hash of 64 hexadecimal digits");
        }
    }

    /** The first form, which names no head. */
    public RecordMark(TravellerId traveller, long entries, String hash) {
        this(traveller, entries, hash, Optional.empty());
    }

    /** The same record with the head of the file that goes with it. */
    public RecordMark sealedAt(Sealed head) {
        return new RecordMark(traveller, entries, hash, Optional.of(head));
    }

    /** As the symbol carries it. */
    public String payload() {
        String bare = " " + traveller + " " + entries + " " + hash.toUpperCase(Locale.ROOT);
        return sealed.map(head -> SEALED_FORM + bare + " " + head.size() + " " + head.root().toUpperCase(Locale.ROOT))
                .orElse(FORM + bare);
    }

    /** What {@code payload} says; empty where it is nothing of ours. */
    public static Optional<RecordMark> read(String payload) {
        Matcher parts = PAYLOAD.matcher(payload);
        if (!parts.matches() || (parts.group(1) == null) != (parts.group(5) == null)) {
            return Optional.empty();
        }
        try {
            Optional<Sealed> head = Optional.ofNullable(parts.group(5)).map(size ->
                    new Sealed(Long.parseLong(size), parts.group(6).toLowerCase(Locale.ROOT)));
            return Optional.of(new RecordMark(new TravellerId(parts.group(2)), Long.parseLong(parts.group(3)),
                    parts.group(4).toLowerCase(Locale.ROOT), head));
        } catch (IllegalArgumentException notOurs) {
            return Optional.empty();
        }
    }
}
