package brightseam.ledger.shell;

import static brightseam.ledger.shell.Signatures.append;
import static brightseam.ledger.shell.Signatures.stream;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.ChainVerifier;
import brightseam.ledger.Entry;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Two ledgers on one PostgreSQL, as two nodes have them; always on PostgreSQL. */
class TwoNodesTest {

    private static final int WRITERS = 4;
    private static final int SIGNATURES = 60;
    private static final long PATIENCE_SECONDS = 60;

    private String url;
    private TestLedger one;
    private TestLedger other;

    @BeforeEach
    void open() {
        url = PostgresServer.shared().url(PostgresServer.shared().freshName());
        one = TestLedger.node(url, Signatures::new);
        other = TestLedger.node(url, Signatures::new);
    }

    @AfterEach
    void close() {
        one.close();
        other.close();
    }

    @Test
    void of_two_simultaneous_signers_one_wins_and_the_other_hears_of_it() throws Exception {
        for (int round = 0; round < SIGNATURES; round++) {
            long version = round;
            List<Appended> answers = Collections.synchronizedList(new ArrayList<>());
            together(List.of(
                    () -> answers.add(sign(one, append("T-1", version, "one"))),
                    () -> answers.add(sign(other, append("T-1", version, "other")))));
            assertThat(answers).hasAtLeastOneElementOfType(Appended.Stored.class)
                    .hasAtLeastOneElementOfType(Appended.Conflict.class);
        }
        assertThat(one.ledger().version(stream("T-1"))).isEqualTo(SIGNATURES);
    }

    @Test
    void what_two_nodes_write_at_once_is_one_ledger_without_holes() throws Exception {
        List<Runnable> writers = new ArrayList<>();
        for (int i = 0; i < WRITERS; i++) {
            TestLedger node = i % 2 == 0 ? one : other;
            String own = "T-" + i;
            writers.add(() -> signOn(node, own));
        }
        together(writers);
        List<Entry> entries = other.ledger().readAllAfter(0, Integer.MAX_VALUE);
        assertThat(entries).hasSize(2 * WRITERS * SIGNATURES);
        assertThat(ChainVerifier.verifyLedger(entries)).isEmpty();
        assertThat(one.rebuild().compare()).isEmpty();
    }

    @Test
    void every_node_hears_every_entry_once_and_in_order() throws Exception {
        Heard here = new Heard(2 * SIGNATURES);
        Heard there = new Heard(2 * SIGNATURES);
        one.ledger().onStored(here::hear);
        other.ledger().onStored(there::hear);
        together(List.of(() -> sign(one, "T-1"), () -> sign(other, "T-2")));
        List<Long> all = other.ledger().readAllAfter(0, Integer.MAX_VALUE).stream().map(Entry::position).toList();
        assertThat(here.positions()).isEqualTo(all);
        assertThat(there.positions()).isEqualTo(all);
    }

    @Test
    void one_node_leads_and_the_other_takes_over() throws Exception {
        LeadLock first = new LeadLock(one.source());
        try (LeadLock second = new LeadLock(other.source())) {
            assertThat(first.isLead()).isTrue();
            assertThat(second.isLead()).isFalse();
            first.close();
            assertThat(first.isLead()).isFalse();
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
            while (!second.isLead() && System.nanoTime() < end) {
                Thread.yield();
            }
            assertThat(second.isLead()).isTrue();
        }
    }

    @Test
    void a_node_whose_connections_are_cut_says_what_did_not_count_and_goes_on() {
        sign(one, append("T-1", 0, "cut"));
        other.jdbc().sql("""
                        select pg_terminate_backend(pid) from pg_stat_activity
                        where datname = current_database() and pid <> pg_backend_pid()
                        """).query(Boolean.class).list();
        Appended answer = sign(one, append("T-1", 1, "deburr"));
        long stored = other.ledger().version(stream("T-1"));
        assertThat(stored).isEqualTo(answer instanceof Appended.Stored ? 2 : 1);
        assertThat(sign(one, append("T-1", stored, "wash"))).isInstanceOf(Appended.Stored.class);
        assertThat(ChainVerifier.verifyLedger(other.ledger().readAllAfter(0, 10))).isEmpty();
    }

    private static void signOn(TestLedger node, String own) {
        long version = 0;
        while (version < SIGNATURES) {
            long shared = node.ledger().version(stream("SHARED"));
            Appended answer = sign(node, append(own, version, "n" + version), append("SHARED", shared, own));
            version += answer instanceof Appended.Stored ? 1 : 0;
        }
    }

    private static void sign(TestLedger node, String own) {
        for (int i = 0; i < SIGNATURES; i++) {
            assertThat(sign(node, append(own, i, "n" + i))).isInstanceOf(Appended.Stored.class);
        }
    }

    private static Appended sign(TestLedger node, Append... appends) {
        return node.ledger().append(List.of(appends));
    }

    private static void together(List<Runnable> works) throws InterruptedException {
        List<Thread> threads = works.stream().map(work -> Thread.ofPlatform().start(work)).toList();
        for (Thread thread : threads) {
            thread.join(TimeUnit.SECONDS.toMillis(PATIENCE_SECONDS));
        }
    }

    /** The positions that one listener heard, in the order in which it heard them. */
    private static final class Heard {
        private final List<Long> positions = Collections.synchronizedList(new ArrayList<>());
        private final CountDownLatch all;

        Heard(int count) {
            all = new CountDownLatch(count);
        }

        void hear(List<Entry> entries) {
            entries.forEach(entry -> {
                positions.add(entry.position());
                all.countDown();
            });
        }

        List<Long> positions() throws InterruptedException {
            assertThat(all.await(PATIENCE_SECONDS, TimeUnit.SECONDS)).as("everything heard").isTrue();
            return List.copyOf(positions);
        }
    }
}
