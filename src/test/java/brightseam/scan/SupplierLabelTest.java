package brightseam.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Suppliers' labels: data identifiers in an envelope, and GS1 element strings. */
class SupplierLabelTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 1, 15);
    private static final String LEGEND = "010506091751001110628S93R\u001D17241000218898847482518646";

    /** An envelope of ISO/IEC 15434 format 06 as an open code base's test data print it. */
    @Test
    void an_envelope_of_format_06_gives_part_and_quantity() {
        SupplierLabel label = supplier("[)>\u001E06\u001DP718-2362-1-ND\u001DQ2\u001E\u0004");

        assertThat(label.syntax()).isEqualTo(LabelSyntax.DATA_IDENTIFIERS);
        assertThat(label.partNumber()).contains("718-2362-1-ND");
        assertThat(label.value(Meaning.QUANTITY)).contains("2");
        assertThat(label.fields()).hasSize(2);
    }

    @Test
    void every_data_identifier_in_the_table_is_read_with_its_meaning() {
        DataIdentifier.MEANINGS.forEach((identifier, meaning) -> {
            SupplierLabel label = supplier("[)>\u001E06\u001D" + identifier + "20260115\u001E\u0004");
            assertThat(label.value(meaning)).as(identifier).contains("20260115");
        });
    }

    @Test
    void dates_in_an_envelope_are_days_of_the_calendar() {
        assertThat(supplier("[)>\u001E06\u001D1T88A\u001D14D20270228\u001E\u0004").date(Meaning.EXPIRY_DATE))
                .contains(LocalDate.of(2027, 2, 28));
        assertRefused("[)>\u001E06\u001D14D20270229\u001E\u0004", UnreadableReason.DATE_IMPOSSIBLE);
    }

    @Test
    void two_fields_that_disagree_give_no_value() {
        assertThat(supplier("[)>\u001E06\u001DT1A\u001D1T2B\u001E\u0004").lot()).isEmpty();
    }

    @Test
    void a_suppliers_envelope_without_its_separators_or_its_end_is_refused() {
        assertRefused("[)>06P718-2362-1-NDQ2", UnreadableReason.SEPARATORS_MISSING);
        assertRefused("[)>06\u001DP718\u001DQ2", UnreadableReason.SEPARATORS_MISSING);
        assertRefused("[)>\u001E06\u001DP718-2362-1-ND\u001DQ2", UnreadableReason.ENVELOPE_CUT);
        assertRefused("[)>\u001E12\u001DMFR7\u001E\u0004", UnreadableReason.FORMAT_UNKNOWN);
        assertRefused("[)>\u001E06\u001D718\u001E\u0004", UnreadableReason.FIELD_MALFORMED);
    }

    @Test
    void an_envelope_holds_several_formats() {
        SupplierLabel label = supplier("[)>\u001E06\u001DP718\u001E05\u001D10AB\u001E\u0004");

        assertThat(label.syntax()).isEqualTo(LabelSyntax.MIXED);
        assertThat(label.lot()).contains("AB");
    }

    /** A published example of a medicine's code (an open repository's test data): 01, 10, 17 and 21. */
    @Test
    void an_element_string_is_taken_apart_by_length_and_separator() {
        for (String scan : new String[] {"]d2" + LEGEND, "]C1" + LEGEND, LEGEND, "\u001D" + LEGEND + "\u001D\r"}) {
            SupplierLabel label = supplier(scan);
            assertThat(label.value(Meaning.TRADE_ITEM)).contains("05060917510011");
            assertThat(label.lot()).contains("628S93R");
            assertThat(label.value(Meaning.SERIAL)).contains("8898847482518646");
            assertThat(label.date(Meaning.EXPIRY_DATE)).contains(LocalDate.of(2024, 10, 31));
        }
    }

    @Test
    void an_unmarked_run_of_digits_is_no_element_string() {
        assertThat(parse("0105060917510011")).isEqualTo(new PlainCode("0105060917510011"));
        assertThat(supplier("]C10105060917510011").value(Meaning.TRADE_ITEM)).contains("05060917510011");
    }

    @Test
    void a_wrong_check_digit_date_length_or_identifier_is_refused() {
        assertRefused("]C10105060917510012", UnreadableReason.CHECK_DIGIT_WRONG);
        assertRefused("]C100376104250021234568", UnreadableReason.CHECK_DIGIT_WRONG);
        assertRefused("]C117261301", UnreadableReason.DATE_IMPOSSIBLE);
        assertRefused("]C1172610", UnreadableReason.FIELD_OUT_OF_FORM);
        assertRefused("]C110" + "A".repeat(21), UnreadableReason.FIELD_OUT_OF_FORM);
        assertRefused("]C18812", UnreadableReason.IDENTIFIER_UNKNOWN);
    }

    @Test
    void a_weight_has_as_many_decimals_as_its_identifier_says() {
        assertThat(supplier("]C13103001250").value(Meaning.NET_WEIGHT_KILOGRAMS)).contains("1.250");
    }

    /** GS1 General Specifications (from memory): 51 or more ahead is the last century, 50 or more behind the next. */
    @Test
    void the_century_of_a_date_follows_from_this_year() {
        assertThat(Gs1Date.read("260131", TODAY)).contains(LocalDate.of(2026, 1, 31));
        assertThat(Gs1Date.read("760131", TODAY)).contains(LocalDate.of(2076, 1, 31));
        assertThat(Gs1Date.read("770131", TODAY)).contains(LocalDate.of(1977, 1, 31));
        assertThat(Gs1Date.read("400131", LocalDate.of(2090, 6, 1))).contains(LocalDate.of(2140, 1, 31));
        assertThat(Gs1Date.read("410131", LocalDate.of(2090, 6, 1))).contains(LocalDate.of(2041, 1, 31));
    }

    @Test
    void day_00_is_the_end_of_the_month() {
        assertThat(Gs1Date.read("280200", TODAY)).contains(LocalDate.of(2028, 2, 29));
        assertThat(Gs1Date.read("281300", TODAY)).isEqualTo(Optional.empty());
    }

    @Test
    void fields_with_separators_but_no_envelope_are_read_only_if_every_identifier_is_known() {
        assertThat(supplier("P718\u001D1T88A\u001DQ2").lot()).contains("88A");
        assertRefused("P718\u001D77X88A", UnreadableReason.STRUCTURE_UNKNOWN);
    }

    private static void assertRefused(String data, UnreadableReason reason) {
        assertThat(parse(data)).isEqualTo(new Unreadable(reason));
    }

    private static SupplierLabel supplier(String data) {
        ScanReading reading = parse(data);
        assertThat(reading).isInstanceOf(SupplierLabel.class);
        return (SupplierLabel) reading;
    }

    private static ScanReading parse(String data) {
        return ScanParser.standard().parse(RawScan.wedge(data), TODAY);
    }
}
