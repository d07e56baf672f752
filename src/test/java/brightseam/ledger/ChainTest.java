package brightseam.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ChainTest {

    private static final StreamName FIRST = new StreamName("traveller/T-1042");
    private static final StreamName SECOND = new StreamName("traveller/T-1043");
    private static final String OTHER_HASH = "f".repeat(64);

    /** FIPS 180-4, the one-block example. */
    @Test
    void hashes_abc_as_the_standard_says() {
        assertThat(Chain.sha256("abc".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void an_untouched_ledger_has_no_flaw() {
        assertThat(ChainVerifier.verifyLedger(ledger())).isEmpty();
        assertThat(ChainVerifier.verifyLedger(List.of())).isEmpty();
    }

    @Test
    void an_untouched_stream_has_no_flaw() {
        List<Entry> stream = ledger().stream().filter(entry -> entry.stream().equals(FIRST)).toList();
        assertThat(ChainVerifier.verifyStream(FIRST, stream)).isEmpty();
    }

    @Test
    void every_changed_field_of_every_entry_is_named() {
        for (int i = 0; i < ledger().size(); i++) {
            Entry e = ledger().get(i);
            assertThat(flawWith(i, with(e, "position", e.position() + 1))).isInstanceOf(Flaw.PositionBroken.class);
            assertThat(flawWith(i, with(e, "stream", new StreamName("bin/B-1"))))
                    .isInstanceOf(e.version() == 1 ? Flaw.HashBroken.class : Flaw.VersionBroken.class);
            assertThat(flawWith(i, with(e, "version", e.version() + 1))).isInstanceOf(Flaw.VersionBroken.class);
            assertThat(flawWith(i, with(e, "type", "signed.2"))).isInstanceOf(Flaw.HashBroken.class);
            assertThat(flawWith(i, with(e, "type", "Signed\""))).isInstanceOf(Flaw.TypeBroken.class);
            assertThat(flawWith(i, with(e, "json", "{}"))).isInstanceOf(Flaw.HashBroken.class);
            assertThat(flawWith(i, with(e, "previous", OTHER_HASH))).isInstanceOf(Flaw.PreviousBroken.class);
            assertThat(flawWith(i, with(e, "hash", OTHER_HASH))).isInstanceOf(Flaw.HashBroken.class);
        }
    }

    @Test
    void one_flipped_bit_of_content_is_found_wherever_it_is() {
        Entry e = ledger().get(2);
        for (int i = 0; i < e.json().length(); i++) {
            StringBuilder json = new StringBuilder(e.json());
            json.setCharAt(i, (char) (json.charAt(i) ^ 1));
            assertThat(flawWith(2, with(e, "json", json.toString()))).isInstanceOf(Flaw.HashBroken.class);
        }
    }

    @Test
    void a_forged_entry_with_a_hash_of_its_own_breaks_the_next_one() {
        Entry e = ledger().get(0);
        Entry forged = Chain.entry(1, e.stream(), 1, new NewEvent(e.type(), "{\"n\":77}"), e.previous());
        assertThat(flawWith(0, forged)).isInstanceOf(Flaw.PreviousBroken.class);
        assertThat(flawWith(0, forged).position()).isEqualTo(3);
    }

    @Test
    void a_missing_a_repeated_and_a_swapped_entry_are_found() {
        List<Entry> missing = ledger();
        missing.remove(2);
        assertThat(ChainVerifier.verifyLedger(missing)).contains(new Flaw.PositionBroken(4, 3));
        List<Entry> repeated = ledger();
        repeated.add(3, repeated.get(2));
        assertThat(ChainVerifier.verifyLedger(repeated)).contains(new Flaw.PositionBroken(3, 4));
        List<Entry> stream = ledger();
        stream.removeIf(entry -> entry.stream().equals(SECOND));
        stream.remove(1);
        assertThat(ChainVerifier.verifyStream(FIRST, stream)).contains(new Flaw.VersionBroken(5, FIRST, 2, 3));
    }

    @Test
    void an_entry_of_another_stream_is_found() {
        assertThat(ChainVerifier.verifyStream(FIRST, ledger()))
                .contains(new Flaw.StreamBroken(2, FIRST, SECOND));
    }

    @Test
    void a_type_name_that_could_break_the_envelope_is_refused() {
        assertThatThrownBy(() -> new NewEvent("a\",\"version\":9", "{}")).isInstanceOf(IllegalArgumentException.class);
    }

    private static Flaw flawWith(int index, Entry changed) {
        List<Entry> entries = ledger();
        entries.set(index, changed);
        Optional<Flaw> flaw = ChainVerifier.verifyLedger(entries);
        assertThat(flaw).as("changed entry %s", changed).isPresent();
        return flaw.get();
    }

    private static Entry with(Entry e, String field, Object value) {
        return new Entry(
                field.equals("position") ? (long) value : e.position(),
                field.equals("stream") ? (StreamName) value : e.stream(),
                field.equals("version") ? (long) value : e.version(),
                field.equals("type") ? (String) value : e.type(),
                field.equals("json") ? (String) value : e.json(),
                field.equals("previous") ? (String) value : e.previous(),
                field.equals("hash") ? (String) value : e.hash());
    }

    /** Two streams in turn, three entries each. */
    private static List<Entry> ledger() {
        List<Entry> entries = new ArrayList<>();
        String[] previous = {Chain.GENESIS, Chain.GENESIS};
        for (int i = 0; i < 6; i++) {
            NewEvent event = new NewEvent("signed.1", "{\"n\":" + i + "0,\"text\":\"é\"}");
            Entry entry = Chain.entry(i + 1, i % 2 == 0 ? FIRST : SECOND, i / 2 + 1, event, previous[i % 2]);
            entries.add(entry);
            previous[i % 2] = entry.hash();
        }
        return entries;
    }
}
