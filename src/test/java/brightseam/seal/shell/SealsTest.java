package brightseam.seal.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.shell.TestClock;
import brightseam.ledger.Entry;
import brightseam.seal.Checkpoint;
import brightseam.seal.Frontier;
import brightseam.seal.MerkleProof;
import brightseam.seal.SignedNote;
import brightseam.seal.TreeHash;
import brightseam.seal.shell.Seals.Sealed;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SealsTest {

    @TempDir
    private Path folder;

    @Test
    void a_head_is_a_signed_checkpoint_over_every_entry_and_names_the_log() {
        try (TestSeals shop = TestSeals.in(folder)) {
            shop.store("A", 3);
            Sealed head = shop.seals().covering(2);
            SignedNote note = SignedNote.parse(head.note()).orElseThrow();
            Checkpoint checkpoint = Checkpoint.parse(note.text()).orElseThrow();
            assertThat(note.isSignedBy(shop.seals().keys().getFirst().key())).isTrue();
            assertThat(checkpoint.origin()).isEqualTo(shop.seals().name()).startsWith("brightseam.invalid/");
            assertThat(checkpoint.size()).isEqualTo(head.size()).isEqualTo(3);
            assertThat(checkpoint.root()).isEqualTo(head.root());
            Frontier tree = new Frontier();
            shop.ledger().ledger().readAllAfter(0, 10).forEach(entry -> tree.add(TreeHash.leaf(entry)));
            assertThat(head.root()).isEqualTo(tree.root());
            assertThat(checkpoint.extensions()).containsExactly("time " + head.at());
        }
    }

    @Test
    void every_entry_is_proven_in_every_head_that_covers_it_and_heads_extend_one_another() {
        try (TestSeals shop = TestSeals.in(folder)) {
            Random random = new Random(5);
            for (int i = 0; i < 30; i++) {
                shop.store("S" + i % 4, 1 + random.nextInt(60));
                shop.seals().covering(shop.ledger().lastPosition());
            }
            List<Entry> entries = shop.ledger().ledger().readAllAfter(0, 10_000);
            List<Sealed> heads = shop.seals().after(0, 100);
            assertThat(heads).hasSize(30);
            for (Sealed head : heads) {
                int position = 1 + random.nextInt((int) head.size());
                assertThat(MerkleProof.rootFromInclusion(position - 1L, head.size(),
                        TreeHash.leaf(entries.get(position - 1)), shop.seals().inclusion(position, head)))
                        .contains(head.root());
                Sealed older = heads.get(random.nextInt(heads.indexOf(head) + 1));
                assertThat(MerkleProof.isConsistent(older.size(), older.root(), head.size(), head.root(),
                        shop.seals().consistency(older, head))).isTrue();
            }
        }
    }

    @Test
    void after_a_restart_the_same_tree_grows_on_under_the_same_key_and_name() {
        Sealed before;
        String name;
        try (TestSeals shop = TestSeals.in(folder)) {
            shop.store("A", 700);
            before = shop.seals().covering(700);
            name = shop.seals().name();
            shop.store("B", 5);
        }
        try (TestSeals shop = TestSeals.in(folder)) {
            assertThat(shop.seals().latest().orElseThrow().size()).as("sealed at the end").isEqualTo(705);
            shop.store("A", 300);
            Sealed after = shop.seals().covering(1_005);
            shop.seals().consistency(before, after);
            assertThat(shop.seals().name()).isEqualTo(name);
            assertThat(shop.seals().keys()).hasSize(1);
        }
    }

    @Test
    void what_was_stored_is_sealed_by_itself() {
        try (TestSeals shop = TestSeals.with(new TestClock(),
                new SealSettings(folder, "", "", "", 1, 30, "", "", 60))) {
            shop.store("A", 2);
            long until = System.nanoTime() + 20_000_000_000L;
            while (shop.seals().latest().map(Sealed::size).orElse(0L) < 2) {
                assertThat(System.nanoTime()).isLessThan(until);
                Thread.onSpinWait();
            }
        }
    }

    @Test
    void a_position_that_is_not_stored_is_not_waited_for_for_ever() {
        try (TestSeals shop = TestSeals.in(folder)) {
            shop.store("A", 1);
            assertThatThrownBy(() -> shop.seals().covering(2)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void a_head_is_in_the_file_before_anybody_is_told_of_it() throws Exception {
        try (TestSeals shop = TestSeals.in(folder)) {
            shop.store("A", 1);
            Sealed first = shop.seals().covering(1);
            shop.store("A", 1);
            Sealed second = shop.seals().covering(2);
            assertThat(Files.readString(folder.resolve("heads.txt")))
                    .isEqualTo(first.note() + ".\n" + second.note() + ".\n");
        }
    }
}
