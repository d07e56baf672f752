package brightseam.move.shell;

import brightseam.check.LedgerWalk;
import brightseam.check.StoredRow;
import brightseam.check.shell.PackedZip;
import brightseam.check.shell.StoredRows;
import brightseam.device.Quality;
import brightseam.device.Series;
import brightseam.device.SeriesBlock;
import brightseam.move.EntryLine;
import brightseam.picture.PictureType;
import java.io.BufferedWriter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Writes a whole shop into one zip file: lines of JSON for whatever is many, files for pictures and keys. */
public final class Export {

    static final String ENTRIES = "entries.ndjson";
    static final String SEALS = "seals.ndjson";
    static final String READINGS = "readings.ndjson";
    static final String HEADS = "heads.txt";
    private static final String OPEN_KEYS = "log-name|.*\\.pub";

    private final Source source;
    private final JdbcClient jdbc;
    private final PackedZip zip;

    /** What is exported; {@code withSecrets}: also hashes of PINs and tokens, and the secret keys. */
    public record Source(DataSource database, Path data, Path keys, boolean withSecrets) {}

    /** What was written. */
    public record Made(Path file, long entries, long readings, long pictures, List<String> leftOut) {

        /** For people. */
        public List<String> words() {
            List<String> words = new ArrayList<>(List.of(String.format(Locale.ROOT,
                    "Exported %,d entries, %,d readings and %,d pictures into %s.", entries, readings, pictures,
                    file)));
            words.add(leftOut.isEmpty()
                    ? "Secrets ARE in it: keys, hashes of PINs, tokens. Keep it locked away."
                    : "Left out, because they are secret: the secret keys, " + String.join(", ", leftOut)
                            + ". PINs have to be set anew after an import. --with-secrets takes them along.");
            return words;
        }
    }

    private Export(Source source, PackedZip zip) {
        this.source = source;
        this.jdbc = JdbcClient.create(source.database());
        this.zip = zip;
    }

    /**
     * Writes {@code source} into {@code target}, which appears whole or not at all. Nothing may be stored meanwhile.
     *
     * @throws IOException where there is such a file, it cannot be written, or the ledger's chains do not fit
     */
    public static Made make(Source source, Path target) throws IOException {
        try (PackedZip zip = new PackedZip(target)) {
            return new Export(source, zip).write(target);
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
    }

    private Made write(Path target) throws IOException {
        LedgerWalk walk = new LedgerWalk();
        lines(ENTRIES, out -> new StoredRows(jdbc).forEach(chunk -> entries(chunk, walk, out)));
        long heads = lines(SEALS, out -> table("ledger_seal", out));
        long readings = lines(READINGS, this::readings);
        for (String table : KeptTables.OPEN) {
            lines("tables/" + table + ".ndjson", out -> table(table, out));
        }
        List<String> secret = KeptTables.secret(source.database());
        if (source.withSecrets()) {
            for (String table : secret) {
                lines("secrets/" + table + ".ndjson", out -> table(table, out));
            }
        }
        long pictures = pictures();
        keys();
        ExportManifest manifest = new ExportManifest(ExportManifest.FORM,
                Instant.now().truncatedTo(ChronoUnit.SECONDS).toString(), walk.size(), walk.streams(),
                walk.root().hex(), heads, readings, pictures, source.withSecrets(), zip.listed());
        zip.add(ExportManifest.NAME, new ByteArrayInputStream(manifest.json().getBytes(StandardCharsets.UTF_8)));
        zip.finish();
        return new Made(target, walk.size(), readings, pictures, source.withSecrets() ? List.of() : secret);
    }

    /** Writes many lines. */
    @FunctionalInterface
    private interface Lines {
        void write(Counted out) throws IOException;
    }

    /** A writer that knows how many lines it got. */
    private static final class Counted {
        private final Writer out;
        private long lines;

        Counted(Writer out) {
            this.out = out;
        }

        void line(String text) {
            try {
                out.write(text);
                out.write('\n');
                lines++;
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        }
    }

    private long lines(String name, Lines lines) throws IOException {
        try (OutputStream stream = zip.stream(name);
                Writer out = new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8))) {
            Counted counted = new Counted(out);
            lines.write(counted);
            return counted.lines;
        }
    }

    private static void entries(List<StoredRow> chunk, LedgerWalk walk, Counted out) {
        for (StoredRow row : chunk) {
            walk.next(row, new ArrayList<>()).ifPresent(broken -> {
                throw new UncheckedIOException(new IOException("the ledger does not fit: " + broken.words()));
            });
            out.line(EntryLine.write(row));
        }
    }

    private void table(String table, Counted out) throws IOException {
        out.lines += TableLines.write(source.database(), table, out.out);
    }

    /** Each reading a line that a stranger can read; the blocks themselves are among the tables. */
    private void readings(Counted out) {
        for (String table : List.of("series_block", "series_tail")) {
            jdbc.sql("select meter_id, number, bytes from " + table + " order by meter_id, number").query(row -> {
                Series series = SeriesBlock.unpack(row.getBytes(3));
                for (int i = 0; i < series.size(); i++) {
                    out.line("{\"elapsed_millis\":" + series.millis(i) + ",\"meter\":\"" + row.getString(1)
                            + "\",\"quality\":" + quality(series.flags(i)) + ",\"value\":" + series.value(i) + "}");
                }
            });
        }
    }

    private static String quality(int bits) {
        return Quality.of(bits).stream().map(word -> "\"" + word + "\"").toList().toString().replace(" ", "");
    }

    private long pictures() throws IOException {
        List<String[]> pictures = jdbc.sql("select sha256, type from picture order by sha256")
                .query((row, number) -> new String[] {row.getString(1), row.getString(2)}).list();
        for (String[] picture : pictures) {
            try (OutputStream out = zip.stream(picture(picture[0], picture[1]))) {
                jdbc.sql("select bytes from picture_part where sha256 = ? order by number").param(picture[0])
                        .query((row, number) -> row.getBytes(1)).list().forEach(part -> write(out, part));
            }
        }
        return pictures.size();
    }

    static String picture(String sha256, String type) {
        return "pictures/" + sha256 + "." + PictureType.valueOf(type).extension();
    }

    private static void write(OutputStream out, byte[] part) {
        try {
            out.write(part);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private void keys() throws IOException {
        if (Files.exists(source.data().resolve(HEADS))) {
            try (InputStream in = Files.newInputStream(source.data().resolve(HEADS))) {
                zip.add(HEADS, in);
            }
        }
        if (!Files.isDirectory(source.keys())) {
            return;
        }
        try (Stream<Path> files = Files.list(source.keys())) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                String name = file.getFileName().toString();
                boolean wanted = name.matches("[A-Za-z0-9_][A-Za-z0-9_.-]*") && !name.endsWith(".part")
                        && (source.withSecrets() || name.matches(OPEN_KEYS));
                if (wanted) {
                    try (InputStream in = Files.newInputStream(file)) {
                        zip.add("keys/" + name, in);
                    }
                }
            }
        }
    }
}
