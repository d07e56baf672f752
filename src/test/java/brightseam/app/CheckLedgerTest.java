package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.ledger.Chain;
import brightseam.ledger.Entry;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.seal.NoteKey;
import brightseam.seal.shell.Seals;
import com.zaxxer.hikari.HikariDataSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.FileSystemUtils;

/** The ledger of a demo shop with its past and more than one tile, tampered with in every way that a file allows. */
class CheckLedgerTest {

    private static final long MIDDLE = 300;

    @TempDir
    static Path untouched;

    @TempDir
    Path folder;

    private static long entries;
    private static String key;

    /** What somebody does who holds the database's file. */
    @FunctionalInterface
    interface Tampering {
        void with(JdbcClient jdbc, Path folder) throws IOException;
    }

    @BeforeAll
    static void record() throws IOException {
        ShopServer shop = ShopServer.demo();
        try {
            Seals seals = shop.bean(Seals.class);
            entries = shop.bean(JdbcClient.class).sql("select max(position) from ledger_entry")
                    .query(Long.class).single();
            seals.covering(entries);
            key = seals.keys().getLast().key().text();
            shop.stop();
            FileSystemUtils.copyRecursively(shop.folder(), untouched);
            shop.open();
        } finally {
            shop.close();
        }
    }

    @AfterAll
    static void enoughForATile() {
        assertThat(entries).isGreaterThan(2 * MIDDLE);
    }

    @Test
    void an_untouched_folder_fits() {
        String told = check(untouched, 0, "--key=" + key);
        assertThat(told).contains("ALL FITS", " streams");
    }

    static Stream<Arguments> tampered() {
        return Stream.of(
                change("content", "json = replace(json, '\"demo\":true', '\"demo\":false')",
                        "entry " + MIDDLE + " ", "was changed after it was stored"),
                change("type", "type = 'other.1'", "entry " + MIDDLE + " ", "was changed after it was stored"),
                change("version", "version = version + 1000", "entry " + MIDDLE + " ", "does not follow"),
                change("previous", "previous = '" + "1".repeat(64) + "'", "entry " + MIDDLE + " ",
                        "does not name the hash"),
                change("hash", "hash = '" + "1".repeat(64) + "'", "entry " + MIDDLE + " ", "1111"),
                change("stream", "stream = 'Odd Stream'", "entry " + MIDDLE + " ", "a stream or a type"),
                sql("hole", "delete from ledger_entry where position = " + MIDDLE, "entry " + MIDDLE + " is missing"),
                sql("end", "delete from ledger_entry where position = (select max(position) from ledger_entry)",
                        "the end is gone"),
                Arguments.of("swapped", (Tampering) (jdbc, at) -> swap(jdbc), List.of("entry ")),
                Arguments.of("rewritten", (Tampering) (jdbc, at) -> rewrite(jdbc),
                        List.of("was signed over other entries than those that are there")),
                sql("tile", "update ledger_tile set hashes = substring(hashes from 1 for 8188) || X'00000000'"
                        + " where level = 0 and tile_index = 0", "tile 0 at level 0", "stored hashes"),
                sql("tile's root", "update ledger_tile set root = '" + "1".repeat(64) + "' where level = 0",
                        "tile 0 at level 0", "stored root"),
                sql("tile missing", "delete from ledger_tile where tile_index = 0", "tile 0 at level 0", "missing"),
                sql("tile added", "insert into ledger_tile select level, tile_index + 900, root, hashes from"
                        + " ledger_tile where tile_index = 0 and level = 0", "the tree has no such tile"));
    }

    static Stream<Arguments> tamperedBeside() {
        return Stream.of(
                sql("note", "update ledger_seal set note = replace(note, 'time 2', 'time 1')", "the stored head over",
                        "no signature that fits"),
                sql("root", "update ledger_seal set root = '" + "1".repeat(64) + "'", "the stored head over",
                        "something else than what was signed"),
                sql("seal removed", "delete from ledger_seal where size = (select min(size) from ledger_seal)",
                        "is missing among the stored heads"),
                Arguments.of("heads.txt cut", (Tampering) (jdbc, at) -> Files.writeString(at.resolve("heads.txt"), ""),
                        List.of("the stored head over", "is not in heads.txt")),
                Arguments.of("heads.txt gone", (Tampering) (jdbc, at) -> Files.delete(at.resolve("heads.txt")),
                        List.of("heads.txt is missing")),
                Arguments.of("other keys", (Tampering) (jdbc, at) -> otherKeys(at), List.of("no signature that fits")),
                sql("row altered", "update kit_row set kit_id = 'K-X' where kit_id = (select min(kit_id) from"
                        + " kit_row)", "the table kit_row", "lacks a row"),
                sql("row added", "insert into traveller_row select 'T-9', 9, parent_id, kit_id, part_number, heat_id,"
                        + " procedure_id, pieces, phase, demo from traveller_row fetch first 1 row only",
                        "the table traveller_row", "has a row"),
                sql("row removed", "delete from trace_contact where position ="
                        + " (select min(position) from trace_contact)", "the table trace_contact", "lacks a row"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"tampered", "tamperedBeside"})
    void whatever_is_tampered_with_is_named(String name, Tampering tampering, List<String> named) throws IOException {
        FileSystemUtils.copyRecursively(untouched, folder);
        try (HikariDataSource source = ShopDatabase.pool("jdbc:h2:file:" + folder.resolve("brightseam"))) {
            JdbcClient jdbc = JdbcClient.create(source);
            jdbc.sql("drop trigger if exists ledger_entry_append_only").update();
            tampering.with(jdbc, folder);
        }
        String told = name.startsWith("row ") ? check(folder, 1) : check(folder, 1, "--without-projections");
        assertThat(told).contains(named).contains("First broken link");
    }

    @Test
    void a_head_in_a_witness_that_does_not_fit_is_named() throws IOException {
        Path witness = Files.createDirectories(folder.resolve("witness"));
        Files.copy(untouched.resolve("heads.txt"), witness.resolve("heads.txt"));
        FileSystemUtils.copyRecursively(untouched, folder.resolve("shop"));
        try (HikariDataSource source = ShopDatabase.pool("jdbc:h2:file:" + folder.resolve("shop/brightseam"))) {
            JdbcClient jdbc = JdbcClient.create(source);
            jdbc.sql("delete from ledger_seal").update();
            jdbc.sql("drop trigger if exists ledger_entry_append_only").update();
            rewrite(jdbc);
        }
        Files.delete(folder.resolve("shop/heads.txt"));
        assertThat(check(folder.resolve("shop"), 1, "--without-projections", "--witness=" + witness))
                .contains("the witness " + witness, "was signed over other entries");
    }

    @Test
    void a_key_that_did_not_sign_the_last_head_is_told() {
        String other = NoteKey.generate("other.example/log", new SecureRandom()).verifier().text();
        assertThat(check(untouched, 1, "--without-projections", "--key=" + other))
                .contains("is not signed by the key that was given");
    }

    @Test
    void what_is_not_asked_right_says_how_to() {
        assertThat(check(untouched, 2, "--kez=x")).contains("usage: check-ledger");
        assertThat(check(untouched, 2, "--key=nothing")).contains("No public key");
        assertThat(check(untouched.resolve("none"), 2)).contains("There is no data folder");
    }

    private static Arguments change(String name, String set, String... named) {
        return sql(name, "update ledger_entry set " + set + " where position = " + MIDDLE, named);
    }

    private static Arguments sql(String name, String sql, String... named) {
        return Arguments.of(name, (Tampering) (jdbc, at) -> assertThat(jdbc.sql(sql).update()).isPositive(),
                List.of(named));
    }

    private static void swap(JdbcClient jdbc) {
        jdbc.sql("update ledger_entry set position = -1 where position = " + MIDDLE).update();
        jdbc.sql("update ledger_entry set position = " + MIDDLE + " where position = " + (MIDDLE + 1)).update();
        jdbc.sql("update ledger_entry set position = " + (MIDDLE + 1) + " where position = -1").update();
    }

    /** The careful forger: every hash that follows in the stream is computed anew. */
    private static void rewrite(JdbcClient jdbc) {
        String stream = jdbc.sql("select stream from ledger_entry where position = " + MIDDLE)
                .query(String.class).single();
        List<Entry> forged = new ArrayList<>();
        jdbc.sql("select * from ledger_entry where stream = ? order by version").param(stream).query(row -> {
            String json = row.getString("json");
            forged.add(Chain.entry(row.getLong("position"), new StreamName(stream), row.getLong("version"),
                    new NewEvent(row.getString("type"), forged.isEmpty() ? json.replaceFirst("true", "false") : json),
                    forged.isEmpty() ? Chain.GENESIS : forged.getLast().hash()));
        });
        forged.forEach(entry -> jdbc.sql("update ledger_entry set json = ?, previous = ?, hash = ? where position = ?")
                .params(entry.json(), entry.previous(), entry.hash(), entry.position()).update());
    }

    private static void otherKeys(Path folder) throws IOException {
        try (Stream<Path> keys = Files.list(folder.resolve("keys"))) {
            for (Path file : keys.filter(path -> path.toString().endsWith(".pub")).toList()) {
                Files.writeString(file, NoteKey.generate("other.example/log", new SecureRandom()).verifier().text());
            }
        }
    }

    private static String check(Path folder, int status, String... arguments) {
        ByteArrayOutputStream told = new ByteArrayOutputStream();
        List<String> all = new ArrayList<>(List.of("--brightseam.data=" + folder));
        all.addAll(List.of(arguments));
        int found = CheckLedger.run(all, new PrintStream(told, true, StandardCharsets.UTF_8));
        assertThat(found).as(told.toString(StandardCharsets.UTF_8)).isEqualTo(status);
        return told.toString(StandardCharsets.UTF_8);
    }
}
