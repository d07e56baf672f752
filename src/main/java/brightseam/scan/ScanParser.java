package brightseam.scan;

import static brightseam.scan.Separators.GS;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Turns a scan into a reading. Every string is answered; none throws.
 *
 * @param separators what the shop's scanners send in place of separators
 */
public record ScanParser(Separators separators) {

    /** Characters that a scan may have: a QR code at its largest holds 4,296 capitals and digits. */
    public static final int LENGTH_MAX = 4096;

    /** For scanners that send separators as they are, or as control pictures. */
    public static ScanParser standard() {
        return new ScanParser(Separators.standard());
    }

    /** What {@code scan} says; {@code today} settles the century of six-digit dates. */
    public ScanReading parse(RawScan scan, LocalDate today) {
        if (scan.data().length() > LENGTH_MAX) {
            return new Unreadable(UnreadableReason.TOO_LONG);
        }
        String framed = withoutTerminators(separators.restore(scan.data()));
        Optional<SymbologyIdentifier> symbology = scan.symbology().or(() -> SymbologyIdentifier.leading(framed));
        String text = SymbologyIdentifier.strip(framed);
        if (text.isBlank()) {
            return new Unreadable(UnreadableReason.EMPTY);
        }
        if (text.startsWith(Envelope.START)) {
            return Envelope.parse(text, today);
        }
        return OwnLabelText.scanned(text)
                .or(() -> scan.source() == ScanSource.TYPED ? OwnLabelText.typed(text) : Optional.empty())
                .orElseGet(() -> structured(text, symbology, today));
    }

    /**
     * Element strings where the symbol says so, or where separators are in there and everything checks out; an
     * unmarked run of digits is never taken for one.
     */
    private static ScanReading structured(String text, Optional<SymbologyIdentifier> symbology, LocalDate today) {
        boolean separated = text.indexOf(GS) >= 0;
        boolean marked = symbology.filter(SymbologyIdentifier::marksElementStrings).isPresent();
        if (!marked && !separated) {
            return text.codePoints().allMatch(ScanParser::isShown)
                    ? new PlainCode(text.strip()) : new Unreadable(UnreadableReason.CONTROL_CHARACTERS);
        }
        return switch (ElementString.parse(text, today)) {
            case Fields.Found found -> new SupplierLabel(LabelSyntax.ELEMENT_STRINGS, found.fields());
            case Fields.Failed failed -> marked || text.charAt(0) == GS
                    ? new Unreadable(failed.reason()) : identified(text);
        };
    }

    private static ScanReading identified(String text) {
        return switch (Envelope.identified(text)) {
            case Fields.Found found when found.fields().stream().noneMatch(f -> f.meaning() == Meaning.OTHER) ->
                    new SupplierLabel(LabelSyntax.DATA_IDENTIFIERS, found.fields());
            case Fields.Found unknown -> new Unreadable(UnreadableReason.STRUCTURE_UNKNOWN);
            case Fields.Failed failed -> new Unreadable(UnreadableReason.STRUCTURE_UNKNOWN);
        };
    }

    /** STX before and CR, LF, TAB and ETX after the data are the wedge's own. */
    private static String withoutTerminators(String data) {
        int end = data.length();
        while (end > 0 && "\r\n\t\u0003".indexOf(data.charAt(end - 1)) >= 0) {
            end--;
        }
        int start = end > 0 && data.charAt(0) == 0x02 ? 1 : 0;
        return data.substring(start, end);
    }

    private static boolean isShown(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.UNASSIGNED,
                    Character.PRIVATE_USE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
