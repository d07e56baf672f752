package brightseam.report;

import brightseam.kernel.TravellerId;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the Data Matrix of a printed record carries: {@code BSREC1 T-1042 57 0AFB…}: the form's name and number, the
 * traveller's label, the number of entries and the last hash, parted by single spaces. Capitals, digits and spaces only
 * (but for the label's hyphen), since Data Matrix packs three of those into two codewords (ISO/IEC 16022, C40, from
 * memory).
 *
 * @param traveller whose record
 * @param entries how many entries it had when it was printed
 * @param hash the last entry's hash, 64 lower-case hexadecimal digits
 */
public record RecordMark(TravellerId traveller, long entries, String hash) {

    private static final String FORM = "BSREC1";
    private static final Pattern PAYLOAD = Pattern.compile(FORM + " (\\S{1,24}) ([1-9]\\d{0,17}) ([0-9A-F]{64})");

    /** Refuses a hash of another form and a count below 1. */
    public RecordMark {
        if (!hash.matches("[0-9a-f]{64}") || entries < 1) {
            throw new IllegalArgumentException("a record has entries and a hash of 64 hexadecimal digits");
        }
    }

    /** As the symbol carries it. */
    public String payload() {
        return FORM + " " + traveller + " " + entries + " " + hash.toUpperCase(Locale.ROOT);
    }

    /** What {@code payload} says; empty where it is nothing of ours. */
    public static Optional<RecordMark> read(String payload) {
        Matcher parts = PAYLOAD.matcher(payload);
        if (!parts.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new RecordMark(new TravellerId(parts.group(1)), Long.parseLong(parts.group(2)),
                    parts.group(3).toLowerCase(Locale.ROOT)));
        } catch (IllegalArgumentException notOurs) {
            return Optional.empty();
        }
    }
}
