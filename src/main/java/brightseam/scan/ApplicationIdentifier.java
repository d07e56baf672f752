package brightseam.scan;

import java.util.List;
import java.util.Optional;

/**
 * An application identifier of the GS1 General Specifications, section 3. Those named in the tests were compared with
 * the published list, the others are from memory.
 *
 * @param prefix how it begins
 * @param identifierLength characters of the identifier; the last one of four says the decimals in 31nn to 36nn
 * @param lengthMin characters of the value, at least
 * @param lengthMax characters of the value, at most
 * @param numeric whether the value is digits only
 * @param meaning what it says
 */
record ApplicationIdentifier(
        String prefix, int identifierLength, int lengthMin, int lengthMax, boolean numeric, Meaning meaning) {

    private static final List<ApplicationIdentifier> ALL = List.of(
            digits("00", 18, Meaning.PACKAGE),
            digits("01", 14, Meaning.TRADE_ITEM),
            digits("02", 14, Meaning.TRADE_ITEM),
            text("10", 20, Meaning.LOT),
            digits("11", 6, Meaning.PRODUCTION_DATE),
            digits("13", 6, Meaning.PACKAGING_DATE),
            digits("15", 6, Meaning.BEST_BEFORE_DATE),
            digits("17", 6, Meaning.EXPIRY_DATE),
            digits("20", 2, Meaning.OTHER),
            text("21", 20, Meaning.SERIAL),
            text("22", 20, Meaning.OTHER),
            text("240", 30, Meaning.SUPPLIER_PART_NUMBER),
            text("241", 30, Meaning.PART_NUMBER),
            text("250", 30, Meaning.OTHER),
            text("251", 30, Meaning.OTHER),
            upTo("30", 8, Meaning.QUANTITY),
            upTo("37", 8, Meaning.QUANTITY),
            measure("310", Meaning.NET_WEIGHT_KILOGRAMS),
            measure("311", Meaning.LENGTH_METRES),
            measure("330", Meaning.OTHER),
            measure("331", Meaning.OTHER),
            text("400", 30, Meaning.ORDER),
            digits("410", 13, Meaning.OTHER),
            digits("412", 13, Meaning.SUPPLIER),
            digits("414", 13, Meaning.OTHER),
            new ApplicationIdentifier("422", 3, 3, 3, true, Meaning.ORIGIN),
            text("90", 30, Meaning.OTHER),
            text("91", 90, Meaning.OTHER),
            text("92", 90, Meaning.OTHER),
            text("93", 90, Meaning.OTHER),
            text("94", 90, Meaning.OTHER),
            text("95", 90, Meaning.OTHER),
            text("96", 90, Meaning.OTHER),
            text("97", 90, Meaning.OTHER),
            text("98", 90, Meaning.OTHER),
            text("99", 90, Meaning.OTHER));

    /** The identifier that {@code text} begins with at {@code from}. */
    static Optional<ApplicationIdentifier> at(String text, int from) {
        return ALL.stream()
                .filter(known -> text.startsWith(known.prefix, from)
                        && from + known.identifierLength <= text.length())
                .findFirst();
    }

    /**
     * Whether the value ends by its length alone, so that no separator follows: identifiers that begin 00 to 04, 11
     * to 20, 31 to 36 and 41 (GS1 General Specifications, table of predefined lengths, from memory).
     */
    boolean endsByLength() {
        int start = Integer.parseInt(prefix.substring(0, 2));
        return start <= 4 || start >= 11 && start <= 20 || start >= 31 && start <= 36 || start == 41;
    }

    /** Whether the value ends in a check digit. */
    boolean hasCheckDigit() {
        return prefix.equals("00") || prefix.equals("01") || prefix.equals("02") || prefix.startsWith("41");
    }

    /** Whether the value is a date YYMMDD. */
    boolean isDate() {
        return lengthMax == 6 && prefix.startsWith("1");
    }

    /** Whether the identifier's last character says how many decimals the value has. */
    boolean hasDecimals() {
        return identifierLength == 4;
    }

    private static ApplicationIdentifier digits(String prefix, int length, Meaning meaning) {
        return new ApplicationIdentifier(prefix, prefix.length(), length, length, true, meaning);
    }

    private static ApplicationIdentifier upTo(String prefix, int length, Meaning meaning) {
        return new ApplicationIdentifier(prefix, prefix.length(), 1, length, true, meaning);
    }

    private static ApplicationIdentifier text(String prefix, int length, Meaning meaning) {
        return new ApplicationIdentifier(prefix, prefix.length(), 1, length, false, meaning);
    }

    private static ApplicationIdentifier measure(String prefix, Meaning meaning) {
        return new ApplicationIdentifier(prefix, 4, 6, 6, true, meaning);
    }
}
