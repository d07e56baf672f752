package brightseam.move.shell;

import brightseam.check.BrokenLink;
import brightseam.check.LedgerWalk;
import brightseam.check.StoredRow;
import brightseam.check.shell.FreshProjections;
import brightseam.check.shell.PackedZip;
import brightseam.check.shell.Progress;
import brightseam.check.shell.StoredRows;
import brightseam.ledger.Entry;
import brightseam.ledger.shell.Projection;
import brightseam.move.EntryLine;
import brightseam.picture.shell.Pictures;
import brightseam.seal.Tile;
import brightseam.seal.shell.TileRows;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceUtils;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Fills an empty shop from an export, a line at a time. */
public final class Import {

    private static final int ENTRIES_AT_ONCE = 1_000;

    private final ExportZip zip;
    private final Path data;
    private final DataSource database;
    private final JdbcClient jdbc;
    private final JdbcTemplate batches;
    private final TransactionTemplate transaction;
    private final TileRows tiles;
    private final Progress progress;

    /** What was filled in. */
    public record Done(long entries, long pictures, boolean withSecrets) {}

    private Import(ExportZip zip, Path data, DataSource database, Progress progress) {
        this.zip = zip;
        this.data = data;
        this.database = database;
        this.jdbc = JdbcClient.create(database);
        this.batches = new JdbcTemplate(database);
        this.transaction = new TransactionTemplate(new JdbcTransactionManager(database));
        this.tiles = new TileRows(batches);
        this.progress = progress;
    }

    /**
     * Fills {@code database} and {@code data}, which have the program's tables and nothing in them.
     *
     * @throws IOException where the shop is not empty, or something in the export does not fit
     */
    public static Done fill(Path file, Path data, DataSource database, Progress progress) throws IOException {
        try (ExportZip zip = new ExportZip(file)) {
            return new Import(zip, data, database, progress).fill();
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
    }

    private Done fill() throws IOException {
        if (jdbc.sql("select count(*) from ledger_entry").query(Long.class).single() > 0) {
            throw new IOException("the shop has entries already; import into an empty one");
        }
        zip.checkFiles();
        ExportManifest manifest = zip.manifest();
        entries(manifest);
        for (PackedZip.Listed listed : manifest.files()) {
            table(listed.name(), "tables/", KeptTables.OPEN);
            table(listed.name(), "secrets/", KeptTables.secret(database));
        }
        try (BufferedReader in = zip.lines(Export.SEALS)) {
            inTransaction("ledger_seal", in);
        }
        long pictures = pictures();
        files(manifest);
        return new Done(manifest.entries(), pictures, manifest.withSecrets());
    }

    private void entries(ExportManifest manifest) throws IOException {
        progress.begin("Storing " + manifest.entries() + " entries and what screens read");
        List<Projection> projections = FreshProjections.make(jdbc);
        LedgerWalk walk = new LedgerWalk();
        List<StoredRow> chunk = new ArrayList<>();
        try (BufferedReader in = zip.lines(Export.ENTRIES)) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                chunk.add(EntryLine.read(line).orElseThrow(() -> new IOException(
                        "line " + (walk.size() + 1) + " of " + Export.ENTRIES + " is not in the form")));
                if (chunk.size() == ENTRIES_AT_ONCE) {
                    store(chunk, walk, projections);
                    progress.at(walk.size(), manifest.entries());
                }
            }
        }
        store(chunk, walk, projections);
        progress.end(walk.size(), "entries");
        if (walk.size() != manifest.entries() || !walk.root().hex().equals(manifest.root())) {
            throw new IOException("the entries are not those of its list: expected " + manifest.entries()
                    + " with the root " + manifest.root() + ", found " + walk.size() + " with " + walk.root());
        }
    }

    private void store(List<StoredRow> chunk, LedgerWalk walk, List<Projection> projections) throws IOException {
        List<Tile> full = new ArrayList<>();
        for (StoredRow row : chunk) {
            Optional<BrokenLink> broken = walk.next(row, full);
            if (broken.isPresent()) {
                throw new IOException("the export does not fit: " + broken.get().words());
            }
        }
        transaction.executeWithoutResult(status -> {
            StoredRows.insert(batches, chunk);
            tiles.insert(full);
            for (StoredRow row : chunk) {
                Entry entry = row.entry();
                projections.forEach(projection -> projection.apply(entry));
            }
        });
        chunk.clear();
    }

    private void table(String name, String folder, List<String> known) throws IOException {
        if (!name.startsWith(folder) || !name.endsWith(".ndjson")) {
            return;
        }
        String table = name.substring(folder.length(), name.length() - ".ndjson".length());
        if (!known.contains(table)) {
            throw new IOException("it has a table that this program does not take: " + name);
        }
        try (BufferedReader in = zip.lines(name)) {
            inTransaction(table, in);
        }
    }

    private void inTransaction(String table, BufferedReader in) {
        transaction.executeWithoutResult(status -> {
            try {
                jdbc.sql("delete from " + table).update();
                TableLines.read(DataSourceUtils.getConnection(database), table, in);
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        });
    }

    private long pictures() throws IOException {
        List<String[]> pictures = jdbc.sql("select sha256, type from picture order by sha256")
                .query((row, number) -> new String[] {row.getString(1), row.getString(2)}).list();
        for (String[] picture : pictures) {
            Pictures.insertParts(jdbc, picture[0], zip.bytes(Export.picture(picture[0], picture[1])));
        }
        return pictures.size();
    }

    private void files(ExportManifest manifest) throws IOException {
        for (PackedZip.Listed listed : manifest.files()) {
            if (listed.name().equals(Export.HEADS) || listed.name().startsWith("keys/")) {
                Path target = data.resolve(listed.name()).normalize();
                if (!listed.name().matches("heads\\.txt|keys/[A-Za-z0-9_][A-Za-z0-9_.-]*")
                        || !target.startsWith(data)) {
                    throw new IOException("it names a file that no export has: " + listed.name());
                }
                OwnFiles.write(target, zip.stream(listed.name()));
            }
        }
        Files.writeString(data.resolve("imported.txt"), "Imported from an export of " + manifest.madeAt() + ", "
                + manifest.entries() + " entries.\n", StandardCharsets.UTF_8);
    }
}
