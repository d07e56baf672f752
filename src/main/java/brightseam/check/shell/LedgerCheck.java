package brightseam.check.shell;

import brightseam.check.BrokenLink;
import brightseam.check.HeadCheck;
import brightseam.check.LedgerWalk;
import brightseam.check.StoredRow;
import brightseam.seal.NoteVerifier;
import brightseam.seal.Tile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Re-computes the whole ledger and compares everything that was ever said about it. Changes nothing. */
public final class LedgerCheck {

    /** How many broken links are told at most; the first is what counts. */
    private static final int TOLD_MAX = 20;

    private final Source source;
    private final Progress progress;
    private final List<BrokenLink> broken = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    /**
     * What is checked.
     *
     * @param database the shop's, with the tables of the ledger
     * @param heads the file of the heads beside it
     * @param keyFolder the folder with the public halves of the keys
     * @param keys public keys known from elsewhere, such as from paper; where there are some, one of them must have
     *     signed the last head
     * @param witnesses folders or files with heads that were sent elsewhere
     * @param projections whether the rows that screens read are compared with what the entries say
     */
    public record Source(DataSource database, Path heads, Path keyFolder, List<NoteVerifier> keys,
            List<Path> witnesses, boolean projections) {}

    /**
     * What came out.
     *
     * @param entries how many entries fitted, from the first
     * @param streams how many streams they belong to
     * @param root of the tree over them, 64 hexadecimal digits
     * @param heads how many signed heads were looked at
     * @param broken what does not fit, the first first; empty where all fits
     * @param remarks what an administrator should know beside that
     */
    public record Report(
            long entries, int streams, String root, long heads, List<BrokenLink> broken, List<String> remarks) {}

    /** Checks {@code source} and tells on {@code progress} how far it is. */
    public LedgerCheck(Source source, Progress progress) {
        this.source = source;
        this.progress = progress;
    }

    /** Checks all of it. */
    public Report run() {
        JdbcClient jdbc = JdbcClient.create(source.database());
        StoredRows rows = new StoredRows(jdbc);
        StoredHeads heads = StoredHeads.read(jdbc, source);
        LedgerWalk walk = new LedgerWalk(heads.sizes());
        FreshRows fresh = source.projections() ? FreshRows.make(source.database(), rows) : null;
        try (fresh) {
            walk(rows, walk, new StoredTiles(jdbc, heads.lastSealed()), fresh == null ? chunk -> { } : fresh);
            if (broken.isEmpty() || walk.size() > 0) {
                checkHeads(heads, walk);
            }
            if (fresh != null && broken.isEmpty()) {
                progress.begin("Comparing the rows that screens read with what the entries say");
                long compared = fresh.compare(this::found);
                progress.end(compared, "rows");
            }
        }
        return new Report(walk.size(), walk.streams(), walk.root().hex(), heads.all().size(),
                broken.stream().limit(TOLD_MAX).toList(), List.copyOf(remarks));
    }

    private void walk(StoredRows rows, LedgerWalk walk, StoredTiles tiles, Consumer<List<StoredRow>> also) {
        long all = rows.count();
        progress.begin("Computing chains and tree of " + all + " entries");
        boolean[] ended = new boolean[1];
        rows.forEach(chunk -> {
            if (!ended[0]) {
                ended[0] = !isWalked(chunk, walk, tiles);
                if (!ended[0]) {
                    also.accept(chunk);
                }
                progress.at(walk.size(), all);
            }
        });
        if (broken.isEmpty()) {
            tiles.surplus(walk.size()).ifPresent(this::found);
        }
        progress.end(walk.size(), "entries");
    }

    private boolean isWalked(List<StoredRow> chunk, LedgerWalk walk, StoredTiles tiles) {
        List<Tile> full = new ArrayList<>();
        for (StoredRow row : chunk) {
            Optional<BrokenLink> link = walk.next(row, full);
            if (link.isPresent()) {
                found(link.get());
                return false;
            }
        }
        full.forEach(tile -> tiles.check(tile).ifPresent(this::found));
        return true;
    }

    private void checkHeads(StoredHeads heads, LedgerWalk walk) {
        progress.begin("Checking " + heads.all().size() + " signed heads");
        HeadCheck check = new HeadCheck(walk, heads.keys(), heads.origin());
        boolean whole = broken.isEmpty();
        heads.check(check, whole, this::found, remarks::add);
        progress.end(heads.all().size(), "heads");
    }

    private void found(BrokenLink link) {
        broken.add(link);
    }
}
