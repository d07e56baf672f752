package brightseam.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What scanners with every kind of set-up send for one label. */
class WedgeTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 1, 15);
    private static final OwnLabel BIN = new OwnLabel(LabelKind.BIN, "B-0142");

    /** One line per set-up: how it is set up, and what arrives. The check character of B-0142 is 4. */
    @TestFactory
    Stream<DynamicTest> our_label_is_the_same_label_from_every_scanner() {
        String whole = "[)>\u001E06\u001D1BBSB-01424\u001E\u0004";
        assertThat(BIN.payload()).isEqualTo(whole);
        return Stream.of(
                List.of("as it is", whole),
                List.of("with CR", whole + "\r"),
                List.of("with LF", whole + "\n"),
                List.of("with CR LF", whole + "\r\n"),
                List.of("with TAB", whole + "\t"),
                List.of("with CR LF TAB", whole + "\r\n\t"),
                List.of("between STX and ETX", "\u0002" + whole + "\u0003"),
                List.of("with symbology identifier", "]d1" + whole + "\r"),
                List.of("as QR with symbology identifier", "]Q1" + whole),
                List.of("control pictures", "[)>\u241E06\u241D1BBSB-01424\u241E\u2404\r"),
                List.of("EOT swallowed", "[)>\u001E06\u001D1BBSB-01424\u001E\r"),
                List.of("RS swallowed", "[)>06\u001D1BBSB-01424\u0004"),
                List.of("all separators swallowed", "[)>061BBSB-01424\r"),
                List.of("envelope stripped", "1BBSB-01424\r"),
                List.of("caps lock on", "[)>\u001E06\u001D1bbsb-01424\u001E\u0004"))
                .map(line -> DynamicTest.dynamicTest(line.getFirst(),
                        () -> assertThat(parse(RawScan.wedge(line.getLast()))).isEqualTo(BIN)));
    }

    @Test
    void a_scanner_can_be_given_stand_ins_of_its_own() {
        ScanParser parser = new ScanParser(Separators.standard()
                .with("^]", Separators.GS).with("^^", Separators.RS).with("^D", Separators.EOT));

        assertThat(parser.parse(RawScan.wedge("[)>^^06^]P718-2362-1-ND^]Q2^^^D"), TODAY))
                .isInstanceOfSatisfying(SupplierLabel.class,
                        label -> assertThat(label.partNumber()).contains("718-2362-1-ND"));
    }

    @Test
    void a_damaged_label_of_ours_is_refused_and_not_corrected() {
        assertRefused("[)>\u001E06\u001D1BBSB-01434\u001E\u0004", UnreadableReason.CHECK_CHARACTER_WRONG);
        assertRefused("[)>\u001E06\u001DWBSB-01424\u001E\u0004", UnreadableReason.CHECK_CHARACTER_WRONG);
        assertRefused("1BBSB-0142", UnreadableReason.CHECK_CHARACTER_WRONG);
    }

    @Test
    void nothing_and_too_much_are_refused() {
        assertRefused("", UnreadableReason.EMPTY);
        assertRefused("]C1\r\n", UnreadableReason.EMPTY);
        assertRefused("7".repeat(ScanParser.LENGTH_MAX + 1), UnreadableReason.TOO_LONG);
    }

    @Test
    void control_characters_inside_a_plain_code_are_refused() {
        assertRefused("AB\u0007CD", UnreadableReason.CONTROL_CHARACTERS);
        assertRefused("AB\r\nCD\r\n", UnreadableReason.CONTROL_CHARACTERS);
        assertRefused("AB\u202ECD", UnreadableReason.CONTROL_CHARACTERS);
    }

    @Test
    void a_plain_code_stays_plain_and_says_what_it_could_be_only_when_asked() {
        ScanReading reading = parse(RawScan.wedge("]A0T9T3381\r"));

        assertThat(reading).isEqualTo(new PlainCode("T9T3381"));
        assertThat(((PlainCode) reading).readAs(Meaning.LOT)).contains("9T3381");
        assertThat(((PlainCode) reading).readAs(Meaning.QUANTITY)).isEmpty();
    }

    private static void assertRefused(String data, UnreadableReason reason) {
        assertThat(parse(RawScan.wedge(data))).isEqualTo(new Unreadable(reason));
    }

    private static ScanReading parse(RawScan scan) {
        return ScanParser.standard().parse(scan, TODAY);
    }
}
