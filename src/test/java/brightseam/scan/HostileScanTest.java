package brightseam.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Any string at all is answered. Seeded: the same strings every time. */
class HostileScanTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 1, 15);
    private static final List<String> PIECES = List.of(
            "[)>", "\u001E", "\u001D", "\u0004", "06", "05", "12", "]C1", "]d2", "]Q3", "]", "1B", "BS", "B-0142", "4",
            "1T", "P", "16D", "20260231",
            "01", "05060917510011", "17", "240230", "3109", "310", "00", "\r", "\n", "\t",
            "\u0000", "\u241D", "\u2404", "\uD800", "\uDC00", "\uFFFF", "\u0130",
            "\u00DF", " ", "  ", "-", "*", "p0007a",
            "<b>", "'; --", "\u202E", "S-ACID-1", "T-", "9".repeat(40), " ".repeat(4000));

    @Test
    void no_string_throws_and_no_plain_code_holds_a_control_character() {
        Random random = new Random(15434);
        for (int round = 0; round < 15_000; round++) {
            String data = random.nextInt(4) == 0 ? characters(random) : pieces(random);
            for (ScanSource source : ScanSource.values()) {
                RawScan scan = new RawScan(data, SymbologyIdentifier.leading(data), source);
                ScanReading reading = ScanParser.standard().parse(scan, TODAY);
                assertThat(holdsControlCharacters(reading)).as(data).isFalse();
                assertThat(Expected.only(LabelKind.BIN).refuses(reading)).isNotNull();
            }
        }
    }

    @Test
    void no_single_wrong_character_in_our_label_gives_another_label() {
        OwnLabel bin = new OwnLabel(LabelKind.BIN, "B-0142");
        String payload = bin.payload();
        for (int at = 0; at < payload.length(); at++) {
            for (char wrong = 0; wrong < 256; wrong++) {
                String spoilt = payload.substring(0, at) + wrong + payload.substring(at + 1);
                ScanReading reading = ScanParser.standard().parse(RawScan.wedge(spoilt), TODAY);
                assertThat(reading instanceof OwnLabel other && !other.equals(bin)).as(spoilt).isFalse();
            }
        }
    }

    private static boolean holdsControlCharacters(ScanReading reading) {
        return switch (reading) {
            case OwnLabel own -> own.id().chars().anyMatch(Character::isISOControl);
            case SupplierLabel label -> label.fields().stream()
                    .anyMatch(field -> field.value().chars().anyMatch(Character::isISOControl));
            case PlainCode code -> code.text().chars().anyMatch(Character::isISOControl);
            case Unreadable unreadable -> false;
        };
    }

    private static String pieces(Random random) {
        StringBuilder made = new StringBuilder();
        for (int i = 0; i < random.nextInt(9); i++) {
            made.append(PIECES.get(random.nextInt(PIECES.size())));
        }
        return made.toString();
    }

    private static String characters(Random random) {
        StringBuilder made = new StringBuilder();
        int range = random.nextBoolean() ? 128 : 65_536;
        for (int i = 0; i < random.nextInt(60); i++) {
            made.append((char) random.nextInt(range));
        }
        return made.toString();
    }
}
