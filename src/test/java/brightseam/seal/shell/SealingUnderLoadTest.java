package brightseam.seal.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.shell.TestClock;
import brightseam.ledger.Entry;
import brightseam.seal.MerkleProof;
import brightseam.seal.TreeHash;
import brightseam.seal.shell.Seals.Sealed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SealingUnderLoadTest {

    private static final int WRITERS = 8;
    private static final int APPENDS = 40;

    @TempDir
    private Path folder;

    @Test
    void while_eight_write_every_head_extends_the_one_before_and_every_entry_is_proven() throws Exception {
        try (TestSeals shop = TestSeals.with(
                new TestClock(), new SealSettings(folder, "", "", "", 5, 30, "", "", 60))) {
            ExecutorService writers = Executors.newFixedThreadPool(WRITERS);
            IntStream.range(0, WRITERS).forEach(writer -> writers.execute(() -> {
                for (int i = 0; i < APPENDS; i++) {
                    shop.store("W" + writer, 1 + i % 3);
                    if (i % 10 == 0) {
                        shop.seals().covering(1);
                    }
                }
            }));
            writers.shutdown();
            assertThat(writers.awaitTermination(2, TimeUnit.MINUTES)).isTrue();
            long stored = shop.ledger().lastPosition();
            assertThat(stored).isEqualTo(WRITERS * (APPENDS * 2L - 1));
            Sealed last = shop.seals().covering(stored);
            List<Sealed> heads = shop.seals().after(0, 10_000);
            assertThat(heads.size()).as("heads").isGreaterThan(2);
            for (int i = 1; i < heads.size(); i++) {
                assertThat(shop.seals().consistency(heads.get(i - 1), heads.get(i))).isNotNull();
            }
            List<Entry> entries = shop.ledger().ledger().readAllAfter(0, 100_000);
            new Random(8).ints(60, 1, (int) stored + 1).forEach(position ->
                    assertThat(MerkleProof.rootFromInclusion(position - 1L, last.size(),
                            TreeHash.leaf(entries.get(position - 1)), shop.seals().inclusion(position, last)))
                            .contains(last.root()));
        }
    }

    /** Prints what sealing costs; the bounds are far away from what is measured, against mistakes of a whole order. */
    @Test
    void the_cost_of_an_entry_is_small() throws IOException {
        int entries = 20_000;
        try (TestSeals shop = TestSeals.in(folder)) {
            for (int i = 0; i < entries / 1_000; i++) {
                shop.store("A" + i % 7, 1_000);
            }
            long began = System.nanoTime();
            shop.seals().covering(entries);
            long micros = (System.nanoTime() - began) / 1_000;
            long tileBytes = shop.ledger().jdbc().sql("select sum(length(hashes)) + sum(length(root)) from ledger_tile")
                    .query(Long.class).single();
            long headBytes = Files.size(folder.resolve("heads.txt"));
            System.out.printf("sealing: %.2f ms for 1,000 entries, %.1f bytes of tiles for an entry, "
                    + "%d bytes for a head in heads.txt%n", micros / 1_000.0 / entries * 1_000,
                    (double) tileBytes / entries, headBytes);
            assertThat(tileBytes / entries).isLessThan(40);
            assertThat(headBytes).isLessThan(500);
        }
        long began = System.nanoTime();
        try (TestSeals shop = TestSeals.in(folder)) {
            System.out.printf("start over %d entries: %d ms, database included%n", entries,
                    (System.nanoTime() - began) / 1_000_000);
            assertThat(shop.seals().latest()).isPresent();
        }
    }
}
