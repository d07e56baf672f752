package brightseam.seal.shell;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Origin;
import brightseam.kernel.shell.TestClock;
import brightseam.ledger.Entry;
import brightseam.ledger.Outcome;
import brightseam.ledger.StreamName;
import brightseam.seal.NoteVerifier;
import brightseam.seal.SealRefusal;
import brightseam.seal.SignedNote;
import brightseam.seal.shell.Seals.KeyInUse;
import brightseam.seal.shell.Seals.Sealed;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeysTest {

    @TempDir
    private Path folder;

    private final TestClock clock = new TestClock();

    private Origin origin() {
        return new Origin(clock.now(), new BadgeId("P-0001"), "OFFICE", false);
    }

    private static boolean isSigned(Sealed head, NoteVerifier key) {
        return SignedNote.parse(head.note()).orElseThrow().isSignedBy(key);
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("keys"))) {
            return files.sorted().toList();
        }
    }

    @Test
    void the_folder_and_its_files_are_for_the_owner_alone() throws IOException {
        TestSeals.in(folder).close();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("keys"))))
                .isEqualTo("rwx------");
        assertThat(files()).hasSize(3);
        for (Path file : files()) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file))).isEqualTo("rw-------");
        }
    }

    @Test
    void the_secret_is_in_its_file_alone() throws IOException {
        try (TestSeals shop = TestSeals.in(folder)) {
            shop.store("A", 5);
            shop.seals().covering(5);
            shop.seals().rotate(false, "every year", origin());
        }
        for (Path file : files().stream().filter(one -> one.toString().endsWith(".key")).toList()) {
            String secret = Files.readString(file).strip();
            String base64 = secret.substring(secret.lastIndexOf('+', secret.length() - 50) + 1);
            assertThat(base64.length()).isGreaterThan(40);
            assertThat(Files.readString(folder.resolve("heads.txt"))).doesNotContain(base64);
            assertThat(Files.readString(folder.resolve("brightseam.mv.db"), StandardCharsets.ISO_8859_1))
                    .doesNotContain(base64).doesNotContain("PRIVATE+KEY");
        }
    }

    @Test
    void a_shop_may_name_its_log_once_and_the_name_stays() {
        SealSettings named = new SealSettings(folder, "", "", "log.example.invalid/weld", TestSeals.NEVER_MILLIS, 30,
                "", "", 60);
        try (TestSeals shop = TestSeals.with(clock, named)) {
            assertThat(shop.seals().name()).isEqualTo("log.example.invalid/weld");
        }
        try (TestSeals shop = TestSeals.in(folder)) {
            assertThat(shop.seals().name()).isEqualTo("log.example.invalid/weld");
        }
    }

    @Test
    void both_keys_sign_for_the_overlap_then_the_new_one_alone_and_the_old_secret_is_deleted() throws IOException {
        try (TestSeals shop = TestSeals.in(folder, clock)) {
            NoteVerifier old = shop.seals().keys().getFirst().key();
            assertThat(shop.seals().rotate(false, "every year", origin())).isInstanceOf(Outcome.Done.class);
            NoteVerifier next = shop.seals().keys().getLast().key();
            Sealed both = shop.seals().covering(1);
            assertThat(isSigned(both, old)).isTrue();
            assertThat(isSigned(both, next)).isTrue();
            Entry told = shop.ledger().ledger().read(StreamName.of("ledger", "KEYS")).getFirst();
            assertThat(told.json()).contains(old.text(), next.text(), "every year");
            assertThat(shop.seals().inclusion(told.position(), both)).as("who has the old key can follow").isEmpty();
            clock.advance(Duration.ofDays(30));
            shop.store("A", 1);
            Sealed after = shop.seals().covering(2);
            assertThat(isSigned(after, old)).isFalse();
            assertThat(isSigned(after, next)).isTrue();
            assertThat(folder.resolve("keys").resolve(old.idHex() + ".key")).doesNotExist();
            assertThat(folder.resolve("keys").resolve(old.idHex() + ".pub")).exists();
        }
    }

    @Test
    void a_lost_key_signs_no_head_any_more() {
        try (TestSeals shop = TestSeals.in(folder, clock)) {
            NoteVerifier old = shop.seals().keys().getFirst().key();
            shop.seals().rotate(true, "the disk was sold", origin());
            Sealed head = shop.seals().covering(1);
            assertThat(isSigned(head, old)).isFalse();
            assertThat(shop.seals().keys()).extracting(KeyInUse::active).containsExactly(false, true);
        }
    }

    @Test
    void a_refused_rotation_leaves_no_key_behind_and_a_restart_signs_with_both() throws IOException {
        try (TestSeals shop = TestSeals.in(folder, clock)) {
            shop.seals().rotate(false, "every year", origin());
            Outcome<?> second = shop.seals().rotate(false, "again", origin());
            assertThat(((Outcome.Refused<?>) second).refusals().getFirst())
                    .isInstanceOf(SealRefusal.KeyOverlapRuns.class);
            assertThat(files()).hasSize(5);
        }
        try (TestSeals shop = TestSeals.in(folder, clock)) {
            shop.store("A", 1);
            Sealed head = shop.seals().covering(2);
            assertThat(shop.seals().keys()).hasSize(2).allMatch(use -> isSigned(head, use.key()));
        }
    }
}
