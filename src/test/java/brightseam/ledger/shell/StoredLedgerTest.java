package brightseam.ledger.shell;

import static brightseam.ledger.shell.Signatures.append;
import static brightseam.ledger.shell.Signatures.stream;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.ChainVerifier;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

class StoredLedgerTest {

    private final TestLedger shop = TestLedger.inMemory(Signatures::new);
    private final Ledger ledger = shop.ledger();

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void what_was_stored_is_read_back_with_its_chain() {
        Appended stored = ledger.append(List.of(append("T-1", 0, "cut", "deburr")));
        ledger.append(List.of(append("T-1", 2, "rinse")));
        List<Entry> entries = ledger.read(stream("T-1"));
        assertThat(((Appended.Stored) stored).entries()).isEqualTo(entries.subList(0, 2));
        assertThat(entries).extracting(Entry::version).containsExactly(1L, 2L, 3L);
        assertThat(ChainVerifier.verifyStream(stream("T-1"), entries)).isEmpty();
        assertThat(ledger.readAfter(stream("T-1"), 2)).isEqualTo(entries.subList(2, 3));
        assertThat(ledger.version(stream("T-1"))).isEqualTo(3);
        assertThat(ledger.version(stream("T-2"))).isZero();
        assertThat(shop.lastPosition()).isEqualTo(3);
    }

    @Test
    void of_two_who_sign_the_same_step_exactly_one_wins() throws Exception {
        try (ExecutorService tablets = Executors.newFixedThreadPool(2)) {
            CyclicBarrier together = new CyclicBarrier(2);
            for (int round = 0; round < 50; round++) {
                long version = round;
                Callable<Appended> sign = () -> {
                    together.await();
                    return ledger.append(List.of(append("T-1", version, "signed")));
                };
                List<Future<Appended>> both = List.of(tablets.submit(sign), tablets.submit(sign));
                List<Appended> outcomes = List.of(both.get(0).get(), both.get(1).get());
                assertThat(outcomes).hasAtLeastOneElementOfType(Appended.Stored.class);
                assertThat(outcomes).contains(new Appended.Conflict(stream("T-1"), version, version + 1));
            }
        }
        assertThat(ledger.version(stream("T-1"))).isEqualTo(50);
    }

    @Test
    void several_streams_are_stored_together_or_not_at_all() {
        ledger.append(List.of(append("T-1", 0, "cut")));
        Appended conflict = ledger.append(List.of(append("T-2", 0, "cut"), append("T-1", 0, "cut")));
        assertThat(conflict).isEqualTo(new Appended.Conflict(stream("T-1"), 0, 1));
        assertThat(ledger.read(stream("T-2"))).isEmpty();
        Appended stored = ledger.append(
                List.of(append("T-2", 0, "cut"), append("T-1", 1, "load"), append("T-2", 1, "load")));
        assertThat(stored).isInstanceOf(Appended.Stored.class);
        assertThat(ledger.version(stream("T-2"))).isEqualTo(2);
        assertThat(ChainVerifier.verifyLedger(ledger.readAllAfter(0, 100))).isEmpty();
    }

    @Test
    void an_empty_append_only_asserts_the_version() {
        assertThat(ledger.append(List.of(append("T-1", 0)))).isEqualTo(new Appended.Stored(List.of()));
        assertThat(ledger.append(List.of(append("T-1", 3)))).isEqualTo(new Appended.Conflict(stream("T-1"), 3, 0));
    }

    @Test
    void an_append_that_a_projection_fails_on_is_undone_and_the_next_one_is_stored() {
        Appended failed = ledger.append(List.of(append("T-1", 0, "short", "x".repeat(300))));
        assertThat(failed).isInstanceOf(Appended.NotStored.class);
        assertThat(ledger.read(stream("T-1"))).isEmpty();
        assertThat(shop.jdbc().sql("select count(*) from test_signatures").query(Long.class).single()).isZero();
        assertThat(ledger.append(List.of(append("T-1", 0, "short")))).isInstanceOf(Appended.Stored.class);
        assertThat(shop.lastPosition()).isEqualTo(1);
    }

    @Test
    void one_that_fails_or_conflicts_does_not_sink_its_group() throws Exception {
        List<String> texts = new ArrayList<>();
        try (ExecutorService tablets = Executors.newFixedThreadPool(24)) {
            List<Future<Appended>> answers = new ArrayList<>();
            CyclicBarrier together = new CyclicBarrier(24);
            for (int i = 0; i < 24; i++) {
                String text = i % 3 == 0 ? "x".repeat(300) : "fine";
                Append append = append("T-" + i, i % 3 == 1 ? 7 : 0, text);
                answers.add(tablets.submit(() -> {
                    together.await();
                    return ledger.append(List.of(append));
                }));
            }
            for (Future<Appended> answer : answers) {
                texts.add(answer.get().getClass().getSimpleName());
            }
        }
        for (int i = 0; i < 24; i++) {
            assertThat(texts.get(i)).isEqualTo(List.of("NotStored", "Conflict", "Stored").get(i % 3));
        }
        assertThat(ChainVerifier.verifyLedger(ledger.readAllAfter(0, 100))).isEmpty();
        assertThat(shop.lastPosition()).isEqualTo(8);
    }

    @Test
    void entries_are_never_changed_or_removed() {
        ledger.append(List.of(append("T-1", 0, "cut")));
        for (String change : List.of(
                "update ledger_entry set json = '{}'",
                "delete from ledger_entry",
                "truncate table ledger_entry",
                "merge into ledger_entry (position, stream, version, type, json, previous, hash)"
                        + " values (1, 'traveller/T-1', 1, 'a', '{}', '', '')")) {
            assertThatThrownBy(() -> shop.jdbc().sql(change).update()).as(change).isNotNull();
        }
        assertThat(ledger.read(stream("T-1"))).extracting(Entry::json).containsExactly("{\"text\":\"cut\"}");
    }

    @Test
    void content_is_stored_in_canonical_form() {
        NewEvent event = new NewEvent("a.1", "{ \"b\" : 1.0, \"a\" : \"\\u00e9\" }");
        ledger.append(List.of(new Append(stream("T-1"), 0, List.of(event))));
        assertThat(ledger.read(stream("T-1")).getFirst().json()).isEqualTo("{\"a\":\"é\",\"b\":1}");
        assertThatThrownBy(() -> ledger.append(List.of(
                        new Append(stream("T-1"), 1, List.of(new NewEvent("a.1", "[]"))))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_slow_listener_holds_up_neither_the_writer_nor_another_listener() throws Exception {
        CountDownLatch release = new CountDownLatch(1);
        BlockingQueue<Entry> heard = new LinkedBlockingQueue<>();
        BlockingQueue<Entry> heardLate = new LinkedBlockingQueue<>();
        AutoCloseable listening = ledger.onStored(heard::addAll);
        ledger.onStored(entries -> {
            await(release);
            heardLate.addAll(entries);
        });
        for (int i = 0; i < 20; i++) {
            ledger.append(List.of(append("T-1", i, "n" + i)));
        }
        for (int i = 0; i < 20; i++) {
            assertThat(heard.poll(5, TimeUnit.SECONDS).version()).isEqualTo(i + 1);
        }
        assertThat(heardLate).isEmpty();
        release.countDown();
        assertThat(heardLate.poll(5, TimeUnit.SECONDS).version()).isEqualTo(1);
        listening.close();
        ledger.append(List.of(append("T-1", 20, "last")));
        assertThat(heard).isEmpty();
    }

    @Test
    void an_append_inside_a_transaction_is_refused() {
        TransactionTemplate transaction = new TransactionTemplate(new JdbcTransactionManager(shop.source()));
        assertThatThrownBy(() -> transaction.executeWithoutResult(
                        status -> ledger.append(List.of(append("T-1", 0, "cut")))))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void closing_answers_everybody_who_waits() throws Exception {
        try (ExecutorService tablets = Executors.newFixedThreadPool(8)) {
            List<Future<Long>> counts = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                String identity = "T-" + i;
                counts.add(tablets.submit(() -> signUntilClosed(identity)));
            }
            while (shop.lastPosition() < 50) {
                Thread.onSpinWait();
            }
            ((StoredLedger) ledger).close();
            long acknowledged = 0;
            for (Future<Long> count : counts) {
                acknowledged += count.get(10, TimeUnit.SECONDS);
            }
            assertThat(shop.lastPosition()).isEqualTo(acknowledged);
        }
    }

    private long signUntilClosed(String identity) {
        long version = 0;
        while (ledger.append(List.of(append(identity, version, "signed"))) instanceof Appended.Stored) {
            version++;
        }
        return version;
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
