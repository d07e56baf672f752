package brightseam.check.shell;

import brightseam.check.HeadCheck;
import brightseam.seal.Checkpoint;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.FileSystemUtils;

/**
 * Packs a shop into one file, while its server runs or when it is stopped.
 *
 * <p>The database is copied first and the heads after it; those of entries that came after the copy are left out, so
 * that the two fit. What is not known to be open to everybody counts as secret.
 */
public final class Backup {

    static final String DATABASE = "database/brightseam.mv.db";
    static final String HEADS = "heads.txt";
    private static final String KEYS = "keys";
    private static final Set<String> LEFT_OUT = Set.of("brightseam.mv.db", "brightseam.trace.db", "server.lock",
            "in-use", HEADS, KEYS, ControlFile.NAME);
    private static final String OPEN_TO_EVERYBODY = "log-name|.*\\.(pub|txt|yaml|yml|md|csv|pdf)";

    private Backup() {}

    /**
     * What is packed.
     *
     * @param database the shop's
     * @param data its data folder
     * @param keys the folder of its keys, which may lie elsewhere
     * @param settings the server's settings that a restored shop should have again; none secret
     * @param withKeys whether secrets are packed as well
     */
    public record Source(
            DataSource database, Path data, Path keys, Map<String, String> settings, boolean withKeys) {}

    /** What was packed: how many entries, and how many bytes the file has. */
    public record Made(Path file, long entries, long bytes, boolean withKeys) {

        /** For people. */
        public List<String> words() {
            return List.of(
                    String.format(Locale.ROOT, "Backed up %,d entries into %s (%,d bytes).", entries, file,
                            bytes),
                    withKeys
                            ? "The secret keys and the other secrets of the data folder ARE in it: whoever has the file"
                                    + " can sign as this shop. Keep it locked away."
                            : "The secret keys are not in it. A shop restored from it makes a new key, and PINs have to"
                                    + " be set anew, unless you keep the folder of the keys elsewhere. --with-keys"
                                    + " packs them.");
        }
    }

    /**
     * Packs {@code source} into {@code target}, which appears whole or not at all.
     *
     * @throws IOException where there is such a file, or it cannot be written
     */
    public static Made make(Source source, Path target) throws IOException {
        Path work = Files.createTempDirectory(target.toAbsolutePath().getParent(), ".backup-");
        try (PackedZip zip = new PackedZip(target)) {
            Path copy = work.resolve("brightseam.mv.db");
            copyDatabase(source.database(), work.resolve("copy.zip"), copy);
            try (InputStream in = Files.newInputStream(copy)) {
                zip.add(DATABASE, in);
            }
            long entries = entries(work.resolve("brightseam"));
            addFolder(zip, source.keys(), KEYS + "/", source.withKeys(), Set.of());
            if (Files.exists(source.data().resolve(HEADS))) {
                zip.add(HEADS, new ByteArrayInputStream(heads(source.data().resolve(HEADS), entries)));
            }
            addFolder(zip, source.data(), "files/", source.withKeys(), LEFT_OUT);
            BackupManifest manifest = new BackupManifest(BackupManifest.FORM,
                    Instant.now().truncatedTo(ChronoUnit.SECONDS).toString(), "h2", entries, source.withKeys(),
                    source.settings(), zip.packed());
            zip.add(BackupManifest.NAME, new ByteArrayInputStream(manifest.json().getBytes(StandardCharsets.UTF_8)));
            zip.finish();
            return new Made(target, entries, Files.size(target), source.withKeys());
        } finally {
            FileSystemUtils.deleteRecursively(work);
        }
    }

    /** H2's own online backup: consistent, and it holds up nobody. */
    private static void copyDatabase(DataSource database, Path zip, Path copy) throws IOException {
        refuseServer(database);
        JdbcClient.create(database).sql("backup to ?").param(zip.toString()).update();
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (entry.getName().endsWith(".mv.db")) {
                    Files.copy(in, copy);
                }
            }
        }
        Files.delete(zip);
        if (!Files.exists(copy)) {
            throw new IOException("the database gave no copy of itself");
        }
    }

    private static void refuseServer(DataSource database) throws IOException {
        try (Connection connection = database.getConnection()) {
            String product = connection.getMetaData().getDatabaseProductName();
            if (!product.equals("H2")) {
                throw new IOException("the records lie in " + product + ". Take them with its own command (pg_dump"
                        + " --format=custom) and copy the data folder, which holds heads and keys");
            }
        } catch (SQLException failure) {
            throw new IOException("the database does not answer: " + failure.getMessage(), failure);
        }
    }

    /** Opens the copy, which proves that it can be opened, and counts. What was packed is not touched by it. */
    private static long entries(Path copy) throws IOException {
        try (Connection connection = DriverManager.getConnection("jdbc:h2:file:" + copy + ";IFEXISTS=TRUE", "sa", "");
                Statement statement = connection.createStatement();
                ResultSet last = statement.executeQuery("select coalesce(max(position), 0) from ledger_entry")) {
            last.next();
            return last.getLong(1);
        } catch (SQLException failure) {
            throw new IOException("the copy of the database cannot be opened: " + failure.getMessage(), failure);
        }
    }

    private static byte[] heads(Path file, long entries) {
        return Heads.inFile(file).stream().map(Heads.Found::note)
                .filter(note -> HeadCheck.read(note).map(Checkpoint::size).orElse(0L) <= entries)
                .map(note -> note + ".\n").collect(Collectors.joining()).getBytes(StandardCharsets.UTF_8);
    }

    private static void addFolder(PackedZip zip, Path folder, String prefix, boolean secrets, Set<String> leftOut)
            throws IOException {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                Path inside = folder.relativize(file);
                String name = inside.toString().replace('\\', '/');
                boolean wanted = !leftOut.contains(inside.getName(0).toString()) && !name.endsWith(".part")
                        && RestoredFile.isName(prefix + name)
                        && (secrets || file.getFileName().toString().matches(OPEN_TO_EVERYBODY));
                if (wanted) {
                    try (InputStream in = Files.newInputStream(file)) {
                        zip.add(prefix + name, in);
                    }
                }
            }
        }
    }
}
