package brightseam.ledger.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.Chain;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class KnownEndsTest {

    private static final StreamName LOT = StreamName.of("traveller", "T-1");
    private static final StreamName BIN = StreamName.of("bin", "B-1");

    private final KnownEnds ends = new KnownEnds(true);

    private static Appended stored(StreamName stream, long version) {
        return new Appended.Stored(List.of(Chain.entry(
                version, stream, version, new NewEvent("signed.1", "{}"), Chain.GENESIS)));
    }

    @Test
    void what_was_stored_is_known_and_what_was_never_asked_is_not() {
        ends.answered(List.of(stored(LOT, 3)));
        assertThat(ends.isEnd(LOT, 3)).isTrue();
        assertThat(ends.isEnd(LOT, 2)).isFalse();
        assertThat(ends.isEnd(BIN, 0)).isFalse();
    }

    @Test
    void a_read_that_was_overtaken_by_a_write_teaches_nothing() {
        long mark = ends.mark();
        ends.answered(List.of(stored(LOT, 4)));
        ends.learned(LOT, 3, mark);
        assertThat(ends.isEnd(LOT, 3)).isFalse();
        assertThat(ends.isEnd(LOT, 4)).isTrue();
        ends.learned(BIN, 7, ends.mark());
        assertThat(ends.isEnd(BIN, 7)).isTrue();
    }

    @Test
    void after_a_failure_nothing_is_known() {
        ends.answered(List.of(stored(LOT, 1)));
        Object before = ends.changes("bin");
        ends.answered(List.of(stored(BIN, 1), new Appended.NotStored("the disk is full")));
        assertThat(ends.isEnd(LOT, 1)).isFalse();
        assertThat(ends.isEnd(BIN, 1)).isFalse();
        assertThat(ends.changes("bin")).isNotEqualTo(before);
    }

    @Test
    void a_family_has_changed_only_where_something_of_it_was_stored() {
        Object bins = ends.changes("bin");
        ends.answered(List.of(stored(LOT, 1)));
        assertThat(ends.changes("bin")).isEqualTo(bins);
        ends.answered(List.of(stored(BIN, 1)));
        assertThat(ends.changes("bin")).isNotEqualTo(bins);
    }

    @Test
    void where_others_write_too_nothing_is_ever_known() {
        KnownEnds shared = new KnownEnds(false);
        shared.answered(List.of(stored(LOT, 1)));
        shared.learned(BIN, 1, shared.mark());
        assertThat(shared.isEnd(LOT, 1)).isFalse();
        assertThat(shared.isEnd(BIN, 1)).isFalse();
        assertThat(shared.changes("bin")).isNotEqualTo(shared.changes("bin"));
    }

    @Test
    @Tag("h2")
    void the_real_ledger_reads_what_is_remembered_again_only_after_a_change() {
        try (TestLedger shop = TestLedger.inMemory(Signatures::new)) {
            AtomicInteger reads = new AtomicInteger();
            Remembered<Integer> count = new Remembered<>(shop.ledger(), "traveller", () -> {
                reads.incrementAndGet();
                return shop.ledger().readAllAfter(0, 100).size();
            });
            assertThat(count.get()).isZero();
            assertThat(count.get()).isZero();
            shop.ledger().append(List.of(Signatures.append("T-1", 0, "one")));
            assertThat(count.get()).isEqualTo(1);
            assertThat(reads).hasValue(2);
            assertThat(shop.ledger().readAfter(LOT, 1)).isEmpty();
            assertThat(shop.ledger().readAfter(LOT, 0)).extracting(Entry::version).containsExactly(1L);
            shop.ledger().append(List.of(new Append(BIN, 0, List.of(new NewEvent("made.1", "{}")))));
            assertThat(count.get()).isEqualTo(1);
            assertThat(reads).hasValue(2);
        }
    }
}
