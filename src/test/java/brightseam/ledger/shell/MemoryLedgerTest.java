package brightseam.ledger.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MemoryLedgerTest {

    private static final StreamName ONE = new StreamName("test/ONE");
    private static final StreamName TWO = new StreamName("test/TWO");

    private final MemoryLedger ledger = new MemoryLedger();

    @Test
    void entries_are_chained_in_their_stream_and_numbered_through_the_ledger() {
        ledger.append(List.of(append(ONE, 0, "{\"b\":1,\"a\":2}"), append(TWO, 0, "{}"), append(ONE, 1, "{}")));
        List<Entry> one = ledger.read(ONE);
        assertEquals(List.of(1L, 3L), one.stream().map(Entry::position).toList());
        assertEquals(List.of(1L, 2L), one.stream().map(Entry::version).toList());
        assertEquals("0".repeat(64), one.getFirst().previous());
        assertEquals(one.getFirst().hash(), one.getLast().previous());
        assertEquals("{\"a\":2,\"b\":1}", one.getFirst().json());
    }

    @Test
    void of_two_appends_on_the_same_version_the_second_conflicts_and_stores_nothing() {
        ledger.append(List.of(append(ONE, 0, "{}")));
        Appended appended = ledger.append(List.of(append(TWO, 0, "{}"), append(ONE, 0, "{}")));
        assertEquals(new Appended.Conflict(ONE, 0, 1), appended);
        assertTrue(ledger.read(TWO).isEmpty());
        assertEquals(1, ledger.version(ONE));
    }

    @Test
    void listeners_hear_of_stored_entries_until_they_are_closed() throws Exception {
        List<Entry> heard = new ArrayList<>();
        AutoCloseable listening = ledger.onStored(heard::addAll);
        ledger.append(List.of(append(ONE, 0, "{}")));
        ledger.append(List.of(append(ONE, 0, "{}")));
        listening.close();
        ledger.append(List.of(append(ONE, 1, "{}")));
        assertEquals(1, heard.size());
        assertEquals(2, ledger.readAllAfter(0, 10).size());
        assertEquals(1, ledger.readAfter(ONE, 1).size());
    }

    @Test
    void a_failing_ledger_stores_nothing() {
        ledger.failWith("disk full");
        assertInstanceOf(Appended.NotStored.class, ledger.append(List.of(append(ONE, 0, "{}"))));
        assertEquals(0, ledger.version(ONE));
    }

    private static Append append(StreamName stream, long expected, String json) {
        return new Append(stream, expected, List.of(new NewEvent("tested.1", json)));
    }
}
