package brightseam.ledger.shell;

import static brightseam.ledger.shell.Signatures.append;
import static brightseam.ledger.shell.Signatures.stream;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.ChainVerifier;
import brightseam.ledger.Entry;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("h2")
class DurabilityTest {

    @TempDir
    Path folder;

    @BeforeEach
    void register() {
        FragileDisk.register();
    }

    @AfterEach
    void heal() {
        FragileDisk.heal();
    }

    @Test
    void what_was_acknowledged_is_in_the_file_as_it_was_last_forced() throws Exception {
        Path copied = Files.createDirectory(folder.resolve("after-the-cut"));
        List<Entry> acknowledged = new ArrayList<>();
        try (TestLedger shop = open()) {
            FragileDisk.forcedCopy = copied.resolve("brightseam.mv.db");
            for (int i = 0; i < 20; i++) {
                Appended stored = sign(shop, append("T-1", i, "n" + i));
                acknowledged.addAll(((Appended.Stored) stored).entries());
            }
            FragileDisk.forcedCopy = null;
        }
        try (TestLedger after = TestLedger.inFolder(copied)) {
            assertThat(after.ledger().read(stream("T-1"))).isEqualTo(acknowledged);
        }
    }

    @Test
    void a_full_disk_is_told_and_leaves_no_half() {
        try (TestLedger shop = open()) {
            sign(shop, append("T-1", 0, "cut"));
            FragileDisk.full = true;
            Appended full = sign(shop, append("T-1", 1, "deburr"), append("T-2", 0, "cut"));
            assertThat(full).isInstanceOf(Appended.NotStored.class);
        } finally {
            FragileDisk.full = false;
        }
        try (TestLedger again = open()) {
            assertThat(again.lastPosition()).isEqualTo(1);
            assertThat(ChainVerifier.verifyLedger(again.ledger().readAllAfter(0, 10))).isEmpty();
        }
    }

    @Test
    void once_there_is_room_again_the_same_server_goes_on() {
        try (TestLedger shop = open()) {
            sign(shop, append("T-1", 0, "cut"));
            FragileDisk.full = true;
            assertThat(sign(shop, append("T-1", 1, "deburr"))).isInstanceOf(Appended.NotStored.class);
            assertThat(sign(shop, append("T-2", 0, "cut"))).isInstanceOf(Appended.NotStored.class);
            FragileDisk.full = false;
            assertThat(signAgainUntilStored(shop, append("T-1", 1, "deburr"))).isInstanceOf(Appended.Stored.class);
            assertThat(shop.lastPosition()).isEqualTo(2);
        }
    }

    /** H2 closes a store that met a full disk in its own time; until it is open again the answer is: not stored. */
    private static Appended signAgainUntilStored(TestLedger shop, Append append) {
        Appended answer = sign(shop, append);
        for (int again = 1; again < 50 && answer instanceof Appended.NotStored; again++) {
            answer = sign(shop, append);
        }
        return answer;
    }

    @Test
    void after_a_forced_write_that_failed_nothing_is_acknowledged_before_a_restart() {
        try (TestLedger shop = open()) {
            sign(shop, append("T-1", 0, "cut"));
            FragileDisk.forceFails = true;
            assertThat(sign(shop, append("T-1", 1, "deburr"))).isInstanceOf(Appended.NotStored.class);
            FragileDisk.forceFails = false;
            Appended next = sign(shop, append("T-2", 0, "cut"));
            assertThat(next).isInstanceOf(Appended.NotStored.class);
            assertThat(((Appended.NotStored) next).reason()).contains("restart the server");
        }
        try (TestLedger again = open()) {
            assertThat(again.ledger().version(stream("T-2"))).isZero();
            assertThat(sign(again, append("T-2", 0, "cut"))).isInstanceOf(Appended.Stored.class);
            assertThat(ChainVerifier.verifyLedger(again.ledger().readAllAfter(0, 10))).isEmpty();
        }
    }

    @Test
    void a_closed_database_is_told_and_the_writer_goes_on_with_the_next() {
        try (TestLedger shop = open()) {
            sign(shop, append("T-1", 0, "cut"));
            shop.jdbc().sql("shutdown").update();
            Appended first = sign(shop, append("T-1", 1, "deburr"));
            Appended second = signAgainUntilStored(shop, append("T-2", 0, "cut"));
            assertThat(List.of(first, second)).hasOnlyElementsOfTypes(Appended.Stored.class, Appended.NotStored.class);
            assertThat(second).isInstanceOf(Appended.Stored.class);
            assertThat(ChainVerifier.verifyLedger(shop.ledger().readAllAfter(0, 10))).isEmpty();
        }
    }

    @Test
    void a_closed_pool_is_told() {
        TestLedger shop = open();
        ((HikariDataSource) shop.source()).close();
        assertThat(sign(shop, append("T-1", 0, "cut"))).isInstanceOf(Appended.NotStored.class);
        shop.close();
    }

    private static Appended sign(TestLedger shop, Append... appends) {
        return shop.ledger().append(List.of(appends));
    }

    private TestLedger open() {
        return TestLedger.at("fragile:" + folder.resolve("brightseam"));
    }
}
