package brightseam.app;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.browser.ShopServer;
import brightseam.check.shell.FreshProjections;
import brightseam.kernel.TravellerId;
import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.Ledger;
import brightseam.report.shell.Records;
import brightseam.seal.shell.Seals;
import brightseam.traveller.shell.Card;
import brightseam.traveller.shell.Travellers;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.zaxxer.hikari.HikariDataSource;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Backup, restore, export and import of a demo shop whose server runs. */
class MovesTest {

    private static final int SIGNERS = 8;
    private static final int BEFORE_THE_BACKUP = 40;
    private static final int LINES_LOOKED_AT = 300;

    private static ShopServer shop;

    @TempDir
    Path folder;

    @BeforeAll
    static void start() {
        shop = ShopServer.demo();
    }

    @AfterAll
    static void stop() {
        shop.close();
    }

    @Test
    void a_backup_under_load_holds_everything_that_was_acknowledged_before_it() throws Exception {
        ConcurrentLinkedQueue<String> acknowledged = new ConcurrentLinkedQueue<>();
        AtomicBoolean ended = new AtomicBoolean();
        CountDownLatch enough = new CountDownLatch(BEFORE_THE_BACKUP);
        List<Thread> signers = new ArrayList<>();
        for (int i = 0; i < SIGNERS; i++) {
            StreamName stream = StreamName.of("load", "B-" + i);
            signers.add(Thread.ofPlatform().start(() -> sign(stream, acknowledged, ended, enough)));
        }
        enough.await();
        List<String> before = List.copyOf(acknowledged);
        Path file = folder.resolve("backup.zip");
        String told = run(0, BackupCommand::run, file.toString(), "--brightseam.data=" + shop.folder());
        ended.set(true);
        for (Thread signer : signers) {
            signer.join();
        }
        assertThat(told).contains("Backed up", "The secret keys are not in it");
        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(PosixFilePermissions.fromString("rw-------"));
        Seals seals = shop.bean(Seals.class);
        long last = shop.bean(JdbcClient.class).sql("select max(position) from ledger_entry")
                .query(Long.class).single();
        seals.covering(last);
        String restored = run(0, RestoreCommand::run, file.toString(), folder.resolve("new").toString(),
                "--heads=" + shop.folder().resolve("heads.txt"));
        try (HikariDataSource source = ShopDatabase.pool("jdbc:h2:file:" + folder.resolve("new/brightseam"))) {
            JdbcClient jdbc = JdbcClient.create(source);
            assertThat(jdbc.sql("select hash from ledger_entry").query(String.class).list()).containsAll(before);
            long entries = jdbc.sql("select max(position) from ledger_entry").query(Long.class).single();
            assertThat(restored).contains("RESTORED into").contains("ALL FITS");
            assertThat(entries == last || restored.contains("entries, numbers " + (entries + 1) + " to " + last))
                    .as(restored).isTrue();
        }
        assertThat(restored).contains("The secret key is not in the backup", "--brightseam.loss-noted=");
    }

    @Test
    void a_running_shop_is_checked_by_a_copy() {
        assertThat(run(0, CheckLedger::run, "--brightseam.data=" + shop.folder(), "--without-projections"))
                .contains("a copy that it made just now", "ALL FITS");
    }

    @Test
    void a_backup_in_which_anything_was_changed_is_not_restored() throws IOException {
        Path file = folder.resolve("backup.zip");
        run(0, BackupCommand::run, file.toString(), "--with-keys", "--brightseam.data=" + shop.folder());
        Path odd = folder.resolve("odd.zip");
        rezip(file, odd, "heads.txt", "other".getBytes(StandardCharsets.UTF_8), "heads.txt");
        assertThat(run(1, RestoreCommand::run, odd.toString(), folder.resolve("a").toString()))
                .contains("NOT RESTORED", "heads.txt is not the file that was packed");
        Path tricky = folder.resolve("tricky.zip");
        rezip(file, tricky, "heads.txt", null, "keys/../../outside.txt");
        assertThat(run(1, RestoreCommand::run, tricky.toString(), folder.resolve("b").toString()))
                .contains("NOT RESTORED", "a file that no backup has");
        assertThat(folder.resolve("outside.txt")).doesNotExist();
        assertThat(run(2, RestoreCommand::run, file.toString(), shop.folder().toString())).contains("not empty");
    }

    @Test
    void what_is_exported_and_imported_is_the_same_shop() throws IOException {
        Path file = folder.resolve("export.zip");
        Path copy = folder.resolve("copy");
        shop.stop();
        try {
            assertThat(run(0, ExportCommand::run, file.toString(), "--brightseam.data=" + shop.folder()))
                    .contains("Left out, because they are secret", "person_pin", "meter_token");
            try (ZipFile zip = new ZipFile(file.toFile())) {
                assertThat(zip.stream().map(ZipEntry::getName))
                        .contains("entries.ndjson", "seals.ndjson", "readings.ndjson", "heads.txt")
                        .noneMatch(name -> name.endsWith(".key") || name.contains("pin") || name.contains("pepper"));
                for (String lines : List.of("entries", "seals", "readings")) {
                    assertLinesKeepTheSchema(zip, lines + ".ndjson");
                }
            }
            assertThat(run(0, ImportCommand::run, file.toString(), "--brightseam.data=" + copy))
                    .contains("ALL FITS", "IMPORTED into", "PINs were not in the export");
            assertThat(run(2, ImportCommand::run, file.toString(), "--brightseam.data=" + copy)).contains("not empty");
            assertSameTables(shop.folder(), copy);
        } finally {
            shop.open();
        }
    }

    @Test
    void an_imported_shop_shows_and_prints_the_same_records() {
        Path file = folder.resolve("export.zip");
        Path copy = folder.resolve("copy");
        List<Card> ended = shop.bean(Travellers.class).ended(20);
        assertThat(ended).isNotEmpty();
        TravellerId traveller = ended.getFirst().id();
        String printed = shop.bean(Records.class).csv(traveller).orElseThrow();
        shop.stop();
        try {
            run(0, ExportCommand::run, file.toString(), "--with-secrets", "--brightseam.data=" + shop.folder());
            run(0, ImportCommand::run, file.toString(), "--brightseam.data=" + copy);
            try (ConfigurableApplicationContext imported = SpringApplication.run(Brightseam.class,
                    "--brightseam.shop=demo", "--brightseam.data=" + copy, "--server.port=0",
                    "--brightseam.pin-strength=4")) {
                assertThat(imported.getBean(Travellers.class).ended(20)).isEqualTo(ended);
                assertThat(imported.getBean(Records.class).csv(traveller)).contains(printed);
                assertThat(imported.getBean(Seals.class).latest()).isPresent();
            }
        } finally {
            shop.open();
        }
    }

    private static void assertLinesKeepTheSchema(ZipFile zip, String name) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(Path.of("shared/schemas/export.schema.json")));
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                zip.getInputStream(zip.getEntry(name)), StandardCharsets.UTF_8))) {
            List<String> lines = in.lines().limit(LINES_LOOKED_AT).toList();
            assertThat(lines).isNotEmpty().allSatisfy(line ->
                    assertThat(schema.validate(line, InputFormat.JSON)).as(line).isEmpty());
        }
    }

    private static void assertSameTables(Path one, Path other) {
        try (HikariDataSource mine = ShopDatabase.pool("jdbc:h2:file:" + one.resolve("brightseam"));
                HikariDataSource theirs = ShopDatabase.pool("jdbc:h2:file:" + other.resolve("brightseam"))) {
            JdbcClient here = JdbcClient.create(mine);
            JdbcClient there = JdbcClient.create(theirs);
            Set<String> tables = new TreeSet<>(List.of("ledger_entry", "ledger_seal", "ledger_tile", "series_block",
                    "series_span", "series_tail", "shop_clock", "picture", "picture_part"));
            FreshProjections.make(here).forEach(projection -> tables.addAll(projection.tables()));
            assertThat(rows(here, "ledger_entry")).hasSizeGreaterThan(1_000);
            assertThat(rows(here, "series_block")).isNotEmpty();
            tables.forEach(table -> assertThat(rows(there, table)).as(table).isEqualTo(rows(here, table)));
        }
    }

    @Test
    void nobody_without_the_token_is_heard() throws Exception {
        String control = Files.readString(shop.folder().resolve("control.json"));
        assertThat(Files.getPosixFilePermissions(shop.folder().resolve("control.json")))
                .isEqualTo(PosixFilePermissions.fromString("rw-------"));
        String port = control.replaceAll(".*\"port\":(\\d+).*", "$1");
        for (String shown : List.of("", "Bearer ", "Bearer wrong")) {
            HttpRequest.Builder request = HttpRequest.newBuilder(
                    URI.create("http://127.0.0.1:" + port + "/control/backup")).header("X-Forwarded-For", "127.0.0.1");
            HttpRequest asked = (shown.isEmpty() ? request : request.header("Authorization", shown))
                    .POST(HttpRequest.BodyPublishers.ofString(folder.resolve("x.zip") + "\ntrue")).build();
            try (HttpClient client = HttpClient.newHttpClient()) {
                assertThat(client.send(asked, HttpResponse.BodyHandlers.ofString()).statusCode()).isEqualTo(401);
            }
        }
        assertThat(folder.resolve("x.zip")).doesNotExist();
    }

    private static void sign(StreamName stream, ConcurrentLinkedQueue<String> acknowledged, AtomicBoolean ended,
            CountDownLatch enough) {
        Ledger ledger = shop.bean(Ledger.class);
        for (long version = 0; !ended.get(); version++) {
            if (ledger.append(List.of(new Append(stream, version, List.of(new NewEvent("load.1", "{}")))))
                    instanceof Appended.Stored stored) {
                acknowledged.add(stored.entries().getFirst().hash());
                enough.countDown();
            }
        }
    }

    private static List<String> rows(JdbcClient jdbc, String table) {
        return jdbc.sql("select * from " + table).query().listOfRows().stream().map(row -> {
            TreeMap<String, Object> sorted = new TreeMap<>(row);
            sorted.replaceAll((name, value) -> value instanceof byte[] bytes
                    ? brightseam.ledger.Chain.sha256(bytes) : value);
            return sorted.toString();
        }).sorted().toList();
    }

    /** Copies a zip file, one file in it replaced and its name in the list changed. */
    private static void rezip(Path from, Path to, String name, byte[] replaced, String newName) throws IOException {
        try (ZipFile zip = new ZipFile(from.toFile());
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(to))) {
            for (ZipEntry entry : zip.stream().toList()) {
                byte[] bytes = zip.getInputStream(entry).readAllBytes();
                boolean it = entry.getName().equals(name);
                out.putNextEntry(new ZipEntry(it ? newName : entry.getName()));
                out.write(it && replaced != null ? replaced
                        : entry.getName().equals("manifest.json")
                                ? new String(bytes, StandardCharsets.UTF_8).replace("\"" + name + "\"",
                                        "\"" + newName + "\"").getBytes(StandardCharsets.UTF_8)
                                : bytes);
                out.closeEntry();
            }
        }
    }

    /** What one of the commands is. */
    @FunctionalInterface
    private interface Run {
        int with(List<String> arguments, PrintStream out);
    }

    private static String run(int status, Run command, String... arguments) {
        ByteArrayOutputStream told = new ByteArrayOutputStream();
        int found = command.with(List.of(arguments), new PrintStream(told, true, StandardCharsets.UTF_8));
        assertThat(found).as(told.toString(StandardCharsets.UTF_8)).isEqualTo(status);
        return told.toString(StandardCharsets.UTF_8);
    }
}
