package brightseam.seal.shell;

import brightseam.kernel.Origin;
import brightseam.kernel.Syntax;
import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.Ledger;
import brightseam.seal.GrowingTree;
import brightseam.seal.LogEvent;
import brightseam.seal.Tile;
import brightseam.seal.shell.Seals.Sealed;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.transaction.support.TransactionTemplate;

/** Goes on without what was lost, once, where a person says so by name and reason. */
final class Loss {

    private static final Pattern FORM = Pattern.compile("(\\d{1,18}):([^:]+):(.+)");
    private static final int NAME_MAX = 80;
    private static final int REASON_MAX = 200;
    private static final int HEADS_AT_ONCE = 1_000;

    private final Ledger ledger;
    private final TransactionTemplate transaction;
    private final SealRows rows;
    private final TileRows tiles;
    private final Keys keys;
    private final HeadsFile file;

    /** Whose decision it was and why, for the head of {@code size}. */
    record Accepted(long size, String by, String reason) {}

    Loss(Ledger ledger, TransactionTemplate transaction, SealRows rows, TileRows tiles, Keys keys, HeadsFile file) {
        this.ledger = ledger;
        this.transaction = transaction;
        this.rows = rows;
        this.tiles = tiles;
        this.keys = keys;
        this.file = file;
    }

    /**
     * What {@code setting} accepts; empty where it is empty.
     *
     * @throws SealsUnusable where it has another form
     */
    static Optional<Accepted> parse(String setting) {
        if (setting.isBlank()) {
            return Optional.empty();
        }
        Matcher form = FORM.matcher(setting.strip());
        if (!form.matches()) {
            throw new SealsUnusable("brightseam.loss-noted is \"" + setting + "\". Write the size of the last head, a"
                    + " colon, your name, a colon, and why.");
        }
        return Optional.of(new Accepted(Long.parseLong(form.group(1)),
                Syntax.text("name", form.group(2), NAME_MAX), Syntax.text("reason", form.group(3), REASON_MAX)));
    }

    /** Writes down that {@code head} and what it covers is given up, and leaves what the ledger can go on from. */
    void note(Sealed head, Unfit unfit, Accepted accepted, long stored, Origin origin) {
        if (unfit instanceof Unfit.KeyMissing) {
            keys.replaceLost(head, accepted.by() + ": " + accepted.reason(), origin);
        }
        keepWhatFits(stored);
        Optional<String> note = head.note().isEmpty() ? Optional.empty() : Optional.of(head.note());
        store(new LogEvent.LossNoted(head.size(), stored, note, accepted.by(), accepted.reason(), origin));
        writeFile(head.size());
    }

    /** Makes the tiles anew from the entries, and drops every head from the first on that they do not fit. */
    private void keepWhatFits(long stored) {
        transaction.executeWithoutResult(status -> {
            tiles.deleteAll();
            GrowingTree tree = new GrowingTree();
            long kept = 0;
            boolean fits = true;
            for (List<Sealed> heads = rows.after(0, HEADS_AT_ONCE); fits && !heads.isEmpty();
                    heads = rows.after(kept, HEADS_AT_ONCE)) {
                for (Sealed head : heads) {
                    fits = fits && head.size() <= stored && fits(tree, head);
                    kept = fits ? head.size() : kept;
                }
            }
            rows.deleteAfter(kept);
            grow(tree, stored);
        });
    }

    private boolean fits(GrowingTree tree, Sealed head) {
        grow(tree, head.size());
        return tree.root().equals(head.root());
    }

    private void grow(GrowingTree tree, long size) {
        List<Tile> full = new ArrayList<>();
        Growth.grow(tree, ledger, size, full);
        tiles.insert(full);
    }

    private void store(LogEvent event) {
        StreamName stream = LogStreams.KIND.stream(LogStreams.LOSS);
        Appended appended = ledger.append(List.of(new Append(
                stream, ledger.version(stream), LogStreams.KIND.write(List.of(event)))));
        if (!(appended instanceof Appended.Stored)) {
            throw new NotStoredException(String.valueOf(appended));
        }
    }

    /** Keeps the old file under another name; the new one holds every head that is left. */
    private void writeFile(long lostSize) {
        StringBuilder heads = new StringBuilder();
        long size = 0;
        List<Sealed> some = rows.after(size, HEADS_AT_ONCE);
        while (!some.isEmpty()) {
            some.forEach(head -> heads.append(HeadsFile.whole(head.note())));
            size = some.getLast().size();
            some = rows.after(size, HEADS_AT_ONCE);
        }
        try {
            if (file.exists()) {
                Path kept = file.path().resolveSibling("heads-lost-" + lostSize + ".txt");
                Files.deleteIfExists(kept);
                Files.copy(file.path(), kept);
            }
            Folders.write(file.path(), heads.toString());
        } catch (IOException failure) {
            throw new UncheckedIOException(file.path() + " cannot be written", failure);
        }
    }
}
