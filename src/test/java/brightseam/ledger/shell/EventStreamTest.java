package brightseam.ledger.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.Decision;
import brightseam.kernel.Refusal;
import brightseam.kernel.Rules;
import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.ledger.StreamName;
import brightseam.ledger.Versioned;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class EventStreamTest {

    private static final int PIECES_MAX = 5;

    private record Sawn(int pieces) {}

    private record RackFull(int pieces) implements Refusal {
        @Override
        public String code() {
            return "rack-full";
        }
    }

    private static final StreamKind<Integer, Sawn> RACKS = new StreamKind<>(
            "rack",
            new EventCodec<>(Map.of("rack-sawn.1", Sawn.class)),
            (before, event) -> before.orElse(0) + event.pieces());

    private final MemoryLedger memory = new MemoryLedger();

    @Test
    void what_was_stored_is_loaded_with_its_version() {
        EventStream<Integer, Sawn> racks = new EventStream<>(memory, RACKS);
        assertEquals(Optional.empty(), racks.load("R-1"));
        racks.execute("R-1", saw(2));
        racks.execute("R-1", saw(3));
        assertEquals(Optional.of(new Versioned<>(5, 2)), racks.load("R-1"));
    }

    @Test
    void a_remembered_state_takes_in_what_others_stored_since() {
        EventStream<Integer, Sawn> here = new EventStream<>(memory, RACKS);
        EventStream<Integer, Sawn> there = new EventStream<>(memory, RACKS);
        here.execute("R-1", saw(1));
        there.execute("R-1", saw(1));
        here.execute("R-1", saw(1));
        assertEquals(Optional.of(new Versioned<>(3, 3)), there.load("R-1"));
        assertEquals(there.load("R-1"), here.load("R-1"));
    }

    @Test
    void only_the_new_end_of_a_long_history_is_read_again() {
        Watched watched = new Watched(memory, appends -> {});
        EventStream<Integer, Sawn> racks = new EventStream<>(watched, RACKS);
        IntStream.range(0, 40).forEach(i -> racks.execute("R-1", rack -> Decision.accepted(List.of(new Sawn(0)))));
        assertTrue(watched.entriesRead <= 40, watched.entriesRead + " entries read for 40 stored");
    }

    @Test
    void a_refusal_stores_nothing() {
        EventStream<Integer, Sawn> racks = new EventStream<>(memory, RACKS);
        assertEquals(new Outcome.Refused<Integer>(List.of(new RackFull(6))), racks.execute("R-1", saw(6)));
        assertEquals(List.of(), memory.readAllAfter(0, 10));
    }

    @Test
    void the_loser_of_a_race_decides_again_and_hears_the_rule() {
        EventStream<Integer, Sawn> rival = new EventStream<>(memory, RACKS);
        Watched ledger = new Watched(memory, appends -> {
            if (memory.version(appends.getFirst().stream()) == 0) {
                rival.execute("R-1", saw(4));
            }
        });
        EventStream<Integer, Sawn> racks = new EventStream<>(ledger, RACKS);
        assertEquals(new Outcome.Refused<Integer>(List.of(new RackFull(6))), racks.execute("R-1", saw(2)));
        assertEquals(Optional.of(new Versioned<>(4, 1)), racks.load("R-1"));
    }

    @Test
    void an_endless_race_ends_with_an_exception_that_names_the_stream() {
        EventStream<Integer, Sawn> rival = new EventStream<>(memory, RACKS);
        Watched ledger = new Watched(memory, appends -> rival.execute("R-1", saw(0)));
        EventStream<Integer, Sawn> racks = new EventStream<>(ledger, RACKS);
        NotStoredException thrown = assertThrows(NotStoredException.class, () -> racks.execute("R-1", saw(1)));
        assertEquals("nothing was stored: others were first on rack/R-1 in 64 attempts", thrown.getMessage());
    }

    @Test
    void a_failed_disk_is_an_exception_with_the_reason() {
        Watched ledger = new Watched(memory, appends -> {});
        ledger.failure = Optional.of(new Appended.NotStored("no space left"));
        EventStream<Integer, Sawn> racks = new EventStream<>(ledger, RACKS);
        NotStoredException thrown = assertThrows(NotStoredException.class, () -> racks.execute("R-1", saw(1)));
        assertEquals("nothing was stored: no space left", thrown.getMessage());
        assertEquals(Optional.empty(), racks.load("R-1"));
    }

    @Test
    void nothing_changed_is_done_without_a_write() {
        Watched ledger = new Watched(memory, appends -> {});
        EventStream<Integer, Sawn> racks = new EventStream<>(ledger, RACKS);
        racks.execute("R-1", saw(1));
        ledger.failure = Optional.of(new Appended.NotStored("no write expected"));
        assertEquals(
                new Outcome.Done<>(1, List.of()), racks.execute("R-1", rack -> Decision.accepted(List.<Sawn>of())));
    }

    @Test
    void several_threads_on_one_stream_lose_no_event() throws Exception {
        EventStream<Integer, Sawn> racks = new EventStream<>(memory, RACKS);
        try (ExecutorService tablets = Executors.newFixedThreadPool(8)) {
            List<Future<Outcome<Integer>>> outcomes = IntStream.range(0, 200)
                    .mapToObj(i -> tablets.submit(() ->
                            racks.execute("R-1", rack -> Decision.accepted(List.of(new Sawn(1))))))
                    .toList();
            for (Future<Outcome<Integer>> outcome : outcomes) {
                assertInstanceOf(Outcome.Done.class, outcome.get());
            }
        }
        assertEquals(Optional.of(new Versioned<>(200, 200)), racks.load("R-1"));
    }

    @Test
    void two_parts_are_stored_together_or_refused_together() {
        EventStream<Integer, Sawn> racks = new EventStream<>(memory, RACKS);
        Outcome<Integer> both = new Attempts(memory).commit(
                () -> racks.prepare("R-1", saw(1)).with(racks.prepare("R-2", saw(2)), Integer::sum));
        assertEquals(3, assertInstanceOf(Outcome.Done.class, both).result());
        Outcome<Integer> neither = new Attempts(memory).commit(
                () -> racks.prepare("R-1", saw(5)).with(racks.prepare("R-2", saw(5)), Integer::sum));
        assertEquals(new Outcome.Refused<Integer>(List.of(new RackFull(6), new RackFull(7))), neither);
        assertEquals(2, memory.readAllAfter(0, 10).size());
    }

    @Test
    void two_appends_to_one_stream_cannot_be_joined() {
        EventStream<Integer, Sawn> racks = new EventStream<>(memory, RACKS);
        Prepared<Integer> one = racks.prepare("R-1", saw(1));
        assertThrows(IllegalArgumentException.class, () -> one.with(racks.prepare("R-1", saw(1)), Integer::sum));
    }

    private static Function<Optional<Integer>, Decision<Sawn>> saw(int pieces) {
        return rack -> Rules.check()
                .refuseIf(rack.orElse(0) + pieces > PIECES_MAX, () -> new RackFull(rack.orElse(0) + pieces))
                .accept(new Sawn(pieces));
    }

    /** Lets something happen before each append, counts what is read, and fails where it is told to. */
    private static final class Watched implements Ledger {
        private final Ledger ledger;
        private final Consumer<List<Append>> before;
        private Optional<Appended> failure = Optional.empty();
        private int entriesRead;

        Watched(Ledger ledger, Consumer<List<Append>> before) {
            this.ledger = ledger;
            this.before = before;
        }

        @Override
        public Appended append(List<Append> appends) {
            before.accept(appends);
            return failure.orElseGet(() -> ledger.append(appends));
        }

        @Override
        public List<Entry> read(StreamName stream) {
            return readAfter(stream, 0);
        }

        @Override
        public List<Entry> readAfter(StreamName stream, long version) {
            List<Entry> entries = ledger.readAfter(stream, version);
            entriesRead += entries.size();
            return entries;
        }

        @Override
        public List<Entry> readAllAfter(long position, int limit) {
            return ledger.readAllAfter(position, limit);
        }

        @Override
        public long version(StreamName stream) {
            return ledger.version(stream);
        }

        @Override
        public Subscription onStored(Consumer<List<Entry>> listener) {
            return ledger.onStored(listener);
        }
    }
}
