package brightseam.scan;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Data identifiers of ANSI MH10.8.2: up to three digits and a capital in front of a field. The meanings of those
 * that a metal supplier uses; every other one is kept as {@link Meaning#OTHER}. T, 1T, V, 1V and 4L were compared
 * with open tables of the standard, the others are from memory; {@code shared/data-identifiers.yaml} lists them.
 */
final class DataIdentifier {

    static final Map<String, Meaning> MEANINGS = Map.ofEntries(
            Map.entry("P", Meaning.PART_NUMBER),
            Map.entry("1P", Meaning.SUPPLIER_PART_NUMBER),
            Map.entry("2P", Meaning.REVISION),
            Map.entry("S", Meaning.SERIAL),
            Map.entry("18S", Meaning.SERIAL),
            Map.entry("25S", Meaning.SERIAL),
            Map.entry("T", Meaning.LOT),
            Map.entry("1T", Meaning.LOT),
            Map.entry("Q", Meaning.QUANTITY),
            Map.entry("V", Meaning.SUPPLIER),
            Map.entry("1V", Meaning.SUPPLIER),
            Map.entry("17V", Meaning.SUPPLIER),
            Map.entry("K", Meaning.ORDER),
            Map.entry("4L", Meaning.ORIGIN),
            Map.entry("1J", Meaning.PACKAGE),
            Map.entry("9D", Meaning.OTHER_DATE),
            Map.entry("14D", Meaning.EXPIRY_DATE),
            Map.entry("16D", Meaning.PRODUCTION_DATE));

    private static final Pattern FIELD = Pattern.compile("([0-9]{0,3}[A-Z])([\\x20-\\x7E]+)");
    private static final DateTimeFormatter YEAR_MONTH_DAY = DateTimeFormatter.BASIC_ISO_DATE;

    private DataIdentifier() {}

    /** {@code text} as one field; empty where no identifier leads it or nothing printable follows. */
    static Optional<Field> field(String text) {
        Matcher matcher = FIELD.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        String identifier = matcher.group(1);
        String value = matcher.group(2);
        return Optional.of(new Field(
                identifier, value, MEANINGS.getOrDefault(identifier, Meaning.OTHER), date(identifier, value)));
    }

    /** 14D and 16D are YYYYMMDD; what 9D holds is agreed between two parties, so it stays text. */
    private static Optional<LocalDate> date(String identifier, String value) {
        if (!isDated(identifier) || value.length() != 8) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(value, YEAR_MONTH_DAY));
        } catch (DateTimeException notInTheCalendar) {
            return Optional.empty();
        }
    }

    /** Whether a field of {@code identifier} has to name a day. */
    static boolean isDated(String identifier) {
        return identifier.equals("14D") || identifier.equals("16D");
    }
}
