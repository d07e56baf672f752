package brightseam.scan;

import static brightseam.scan.Separators.EOT;
import static brightseam.scan.Separators.GS;
import static brightseam.scan.Separators.RS;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The envelope of ISO/IEC 15434: {@code [)>} RS, then formats that each end in RS, then EOT. Format 05 holds GS1
 * element strings, format 06 data identifiers, their fields parted by GS.
 *
 * <p>Where a scanner swallowed separators, one of our own labels is still told by its check character; a supplier's
 * is refused, because where one field ends and the next begins would be a guess.
 */
final class Envelope {

    static final String START = "[)>";

    private static final String HEADER = START + RS;

    private static final Pattern ONE_FIELD = Pattern.compile("\\[\\)>(?<head>" + RS + "?)06" + GS + "?(?<field>[^"
            + GS + RS + EOT + "]*)(?<tail>" + RS + "?)" + EOT + "?");

    private Envelope() {}

    /** What {@code text}, which begins with {@link #START}, says. */
    static ScanReading parse(String text, LocalDate today) {
        Optional<ScanReading> own = ownLabel(text);
        if (own.isPresent()) {
            return own.get();
        }
        if (!text.startsWith(HEADER)) {
            return new Unreadable(UnreadableReason.SEPARATORS_MISSING);
        }
        String body = text.substring(HEADER.length());
        if (body.isEmpty() || body.charAt(body.length() - 1) != RS && body.charAt(body.length() - 1) != EOT) {
            return new Unreadable(UnreadableReason.ENVELOPE_CUT);
        }
        return formats(withoutEnd(body), today);
    }

    /**
     * One of ours where nothing but the one field is in there. A scanner that swallows a separator swallows it
     * everywhere: RS stands at both ends of the format or at neither, else a character was misread in its place.
     */
    private static Optional<ScanReading> ownLabel(String text) {
        Matcher matcher = ONE_FIELD.matcher(text);
        boolean even = matcher.matches() && matcher.group("head").equals(matcher.group("tail"));
        return even ? OwnLabelText.scanned(matcher.group("field")) : Optional.empty();
    }

    private static String withoutEnd(String text) {
        int end = text.length();
        while (end > 0 && (text.charAt(end - 1) == RS || text.charAt(end - 1) == EOT)) {
            end--;
        }
        return text.substring(0, end);
    }

    private static ScanReading formats(String body, LocalDate today) {
        List<Field> fields = new ArrayList<>();
        boolean identifiers = false;
        boolean elements = false;
        for (String format : body.split(String.valueOf(RS), -1)) {
            Fields read = format(format, today);
            switch (read) {
                case Fields.Failed failed -> {
                    return new Unreadable(failed.reason());
                }
                case Fields.Found found -> fields.addAll(found.fields());
            }
            identifiers |= format.startsWith("06");
            elements |= format.startsWith("05");
        }
        LabelSyntax single = elements ? LabelSyntax.ELEMENT_STRINGS : LabelSyntax.DATA_IDENTIFIERS;
        return new SupplierLabel(identifiers && elements ? LabelSyntax.MIXED : single, fields);
    }

    private static Fields format(String format, LocalDate today) {
        if (format.length() < 3 || format.charAt(2) != GS) {
            return new Fields.Failed(UnreadableReason.FORMAT_UNKNOWN);
        }
        String data = format.substring(3);
        return switch (format.substring(0, 2)) {
            case "05" -> ElementString.parse(data, today);
            case "06" -> identified(data);
            default -> new Fields.Failed(UnreadableReason.FORMAT_UNKNOWN);
        };
    }

    /** Fields with data identifiers, parted by GS; every one has to have an identifier and a value. */
    static Fields identified(String data) {
        List<Field> fields = new ArrayList<>();
        for (String part : data.split(String.valueOf(GS), -1)) {
            Optional<Field> field = DataIdentifier.field(part);
            if (field.isEmpty()) {
                return new Fields.Failed(UnreadableReason.FIELD_MALFORMED);
            }
            if (DataIdentifier.isDated(field.get().identifier()) && field.get().date().isEmpty()) {
                return new Fields.Failed(UnreadableReason.DATE_IMPOSSIBLE);
            }
            fields.add(field.get());
        }
        return new Fields.Found(fields);
    }
}
