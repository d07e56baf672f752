package brightseam.seal.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brightseam.kernel.shell.TestClock;
import brightseam.ledger.ChainVerifier;
import brightseam.ledger.Entry;
import brightseam.ledger.StreamName;
import brightseam.seal.shell.Seals.Sealed;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartCheckTest {

    private static final String OTHER = "{\"number\":0,\"who\":\"Mallory\"}";

    @TempDir
    private Path folder;

    private Sealed sealed(int entries) {
        try (TestSeals shop = TestSeals.in(folder)) {
            shop.store("A", entries);
            return shop.seals().covering(entries);
        }
    }

    private void refuses(String... words) {
        assertThatThrownBy(() -> TestSeals.in(folder).close()).isInstanceOf(SealsUnusable.class)
                .hasMessageContainingAll(words);
    }

    @Test
    void a_ledger_that_lost_its_end_does_not_start_and_says_how_much_is_missing() {
        Sealed head = sealed(20);
        Malice.inFolder(folder, malice -> {
            malice.cutAfter(17);
            malice.forgetHeadsAfter(0);
        });
        refuses("shorter than what was sealed", "covers 20 entries", head.at().toString(), "The database has 17",
                "3 entries are missing", "--brightseam.loss-noted=\"20: <your name>: <why>\"");
    }

    @Test
    void a_changed_entry_does_not_start_though_its_chain_was_made_good_again() {
        sealed(20);
        Malice.inFolder(folder, malice -> malice.change(5, OTHER));
        try (var ledger = brightseam.ledger.shell.TestLedger.inFolder(folder)) {
            assertThat(ChainVerifier.verifyLedger(ledger.ledger().readAllAfter(0, 100)))
                    .as("the chain alone sees nothing").isEmpty();
        }
        refuses("not the one that was sealed");
    }

    @Test
    void an_old_entry_that_was_changed_is_found_where_it_is_asked_for_and_where_the_tree_is_made_anew() {
        try (TestSeals shop = TestSeals.in(folder)) {
            shop.store("OLD", 8);
            shop.store("A", 992);
            shop.seals().covering(1_000);
        }
        Malice.inFolder(folder, malice -> malice.change(5, OTHER));
        try (TestSeals shop = TestSeals.in(folder)) {
            Sealed head = shop.seals().latest().orElseThrow();
            assertThat(shop.seals().inclusion(4, head)).as("entry 4 is in its place").isNotEmpty();
            assertThatThrownBy(() -> shop.seals().inclusion(5, head)).isInstanceOf(LedgerAltered.class)
                    .hasMessageContaining("position 5");
        }
        Malice.inFolder(folder, malice -> malice.forgetHeadsAfter(0));
        refuses("not the one that was sealed");
    }

    @Test
    void an_entry_that_is_changed_while_the_server_runs_is_found_by_the_next_seal_and_nothing_is_signed_any_more() {
        try (TestSeals shop = TestSeals.in(folder)) {
            shop.store("A", 20);
            Sealed head = shop.seals().covering(20);
            Malice.on(shop.ledger().jdbc()).change(5, OTHER);
            shop.store("B", 1);
            assertThatThrownBy(() -> shop.seals().covering(21)).isInstanceOf(LedgerAltered.class);
            assertThat(shop.seals().trouble()).isPresent();
            assertThat(shop.seals().latest()).contains(head);
        }
    }

    @Test
    void half_a_head_at_the_end_of_the_file_is_let_pass_and_written_over() throws IOException {
        Sealed head = sealed(3);
        Path file = folder.resolve("heads.txt");
        Files.writeString(file, head.note().substring(0, 40), StandardOpenOption.APPEND);
        try (TestSeals shop = TestSeals.in(folder)) {
            shop.store("A", 1);
            Sealed next = shop.seals().covering(4);
            assertThat(Files.readString(file)).isEqualTo(head.note() + ".\n" + next.note() + ".\n");
        }
    }

    @Test
    void a_server_killed_between_the_file_and_the_database_goes_on_from_the_file() {
        Sealed head = sealed(1_000);
        Malice.inFolder(folder, malice -> malice.forgetHeadsAfter(0));
        try (TestSeals shop = TestSeals.in(folder)) {
            assertThat(shop.seals().latest()).contains(head);
            assertThat(shop.seals().at(1_000)).contains(head);
            assertThat(shop.seals().inclusion(300, head)).isNotEmpty();
        }
    }

    @Test
    void a_missing_or_altered_file_and_missing_keys_do_not_start() throws IOException {
        Sealed head = sealed(5);
        Path file = folder.resolve("heads.txt");
        Files.move(file, folder.resolve("away.txt"));
        refuses("heads.txt are gone", "covers 5 entries");
        Files.writeString(file, head.note().replace("\n5\n", "\n4\n") + ".\n");
        refuses("not one that this shop's keys signed");
        Files.delete(file);
        Files.move(folder.resolve("away.txt"), file);
        Files.move(folder.resolve("keys"), folder.resolve("keys-away"));
        refuses("key that signs the ledger is not in");
        Files.move(folder.resolve("keys-away"), folder.resolve("keys"));
        TestSeals.in(folder).close();
    }

    @Test
    void who_goes_on_after_a_loss_is_named_in_the_ledger_and_the_lost_heads_are_kept_beside_it() throws IOException {
        try (TestSeals shop = TestSeals.in(folder)) {
            for (int i = 0; i < 4; i++) {
                shop.store("A", 200);
                shop.seals().covering(200 * (i + 1));
            }
        }
        Malice.inFolder(folder, malice -> malice.cutAfter(500));
        refuses("800");
        try (TestSeals shop = TestSeals.with(new TestClock(),
                TestSeals.settings(folder, "800: A. Person: the disk died, Monday's backup"))) {
            List<Entry> noted = shop.ledger().ledger().read(StreamName.of("ledger", "LOSS"));
            assertThat(noted).singleElement().extracting(Entry::json).asString().contains("\"by\":\"A. Person\"",
                    "\"sealed_size\":800", "\"found_size\":500", "Monday");
            Sealed head = shop.seals().covering(501);
            Sealed kept = shop.seals().after(0, 10).get(1);
            assertThat(kept.size()).isEqualTo(400);
            assertThat(shop.seals().consistency(kept, head)).isNotEmpty();
            assertThat(shop.seals().inclusion(77, head)).isNotEmpty();
        }
        assertThat(Files.readString(folder.resolve("heads-lost-800.txt"))).contains("\n800\n");
        TestSeals.in(folder).close();
    }

    @Test
    void a_loss_is_accepted_for_the_head_that_it_names_alone() {
        sealed(20);
        Malice.inFolder(folder, malice -> malice.cutAfter(10));
        assertThatThrownBy(() -> TestSeals.with(new TestClock(),
                TestSeals.settings(folder, "19: A. Person: why not"))).isInstanceOf(SealsUnusable.class);
        assertThatThrownBy(() -> TestSeals.with(new TestClock(), TestSeals.settings(folder, "yes")))
                .isInstanceOf(SealsUnusable.class).hasMessageContaining("Write the size");
    }

    @Test
    void lost_keys_are_replaced_knowingly_and_what_follows_is_signed_by_the_new_one() throws IOException {
        sealed(5);
        try (var files = Files.walk(folder.resolve("keys"))) {
            for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
        String name;
        try (TestSeals shop = TestSeals.with(new TestClock(), TestSeals.settings(folder, "5: A. Person: stolen"))) {
            assertThat(shop.seals().covering(7).size()).isEqualTo(7);
            name = shop.seals().name();
            assertThat(shop.seals().keys()).filteredOn(Seals.KeyInUse::active).hasSize(1);
        }
        assertThat(Files.readString(folder.resolve("heads.txt"), StandardCharsets.UTF_8)).startsWith(name);
        TestSeals.in(folder).close();
    }
}
