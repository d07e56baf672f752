package brightseam.check.shell;

import brightseam.check.BrokenLink;
import brightseam.check.HeadCheck;
import brightseam.seal.Checkpoint;
import brightseam.seal.NoteVerifier;
import brightseam.seal.SignedNote;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Every signed head that can be found: in the database, in the file beside it, and where they were sent. */
final class StoredHeads {

    private final List<Row> rows;
    private final List<Heads.Found> inFile;
    private final List<Heads.Found> witnessed;
    private final boolean fileExists;
    private final List<Heads.Found> all;
    private final List<NoteVerifier> keys;
    private final List<NoteVerifier> given;
    private final Optional<String> origin;

    /** A row of the table of seals. */
    record Row(long size, String root, String note) {
        String place() {
            return "the stored head over " + size + " entries";
        }
    }

    private StoredHeads(List<Row> rows, LedgerCheck.Source source) {
        this.rows = rows;
        this.fileExists = Files.exists(source.heads());
        this.inFile = fileExists ? Heads.inFile(source.heads()) : List.of();
        this.witnessed = source.witnesses().stream().flatMap(path -> Heads.inWitness(path).stream()).toList();
        this.all = once();
        this.given = source.keys();
        this.keys = Stream.concat(given.stream(), PublicKeys.inFolder(source.keyFolder()).stream()).toList();
        this.origin = PublicKeys.origin(source.keyFolder());
    }

    static StoredHeads read(JdbcClient jdbc, LedgerCheck.Source source) {
        return new StoredHeads(jdbc.sql("select size, root, note from ledger_seal order by size")
                .query((row, number) -> new Row(row.getLong(1), row.getString(2), row.getString(3))).list(), source);
    }

    List<NoteVerifier> keys() {
        return keys;
    }

    Optional<String> origin() {
        return origin;
    }

    /** The size of the largest head in the table; 0 where there is none. */
    long lastSealed() {
        return rows.isEmpty() ? 0 : rows.getLast().size();
    }

    /** Every size that some head states. */
    long[] sizes() {
        return all.stream().flatMap(found -> HeadCheck.read(found.note()).stream())
                .mapToLong(Checkpoint::size).toArray();
    }

    /** Every head once, with the first place where it was found. */
    List<Heads.Found> all() {
        return all;
    }

    private List<Heads.Found> once() {
        Map<String, Heads.Found> all = new LinkedHashMap<>();
        rows.forEach(row -> all.putIfAbsent(row.note(), new Heads.Found(row.place(), row.note())));
        inFile.forEach(found -> all.putIfAbsent(found.note(), found));
        witnessed.forEach(found -> all.putIfAbsent(found.note(), found));
        return List.copyOf(all.values());
    }

    /** Tells everything that does not fit; heads beyond the walk only where that went through the whole ledger. */
    void check(HeadCheck check, boolean whole, Consumer<BrokenLink> broken, Consumer<String> remarks) {
        List<Heads.Found> heads = all.stream().filter(found -> whole || HeadCheck.read(found.note())
                .filter(head -> head.size() > check.walk().size()).isEmpty()).toList();
        heads.parallelStream().map(found -> check.check(found.place(), found.note())).toList()
                .forEach(link -> link.ifPresent(broken));
        rows.forEach(row -> contradiction(row).ifPresent(broken));
        compareWithFile(broken, remarks);
        unvouched(heads).ifPresent(broken);
        if (heads.isEmpty()) {
            remarks.accept("There is no signed head: only the chains speak for the entries.");
        } else if (whole && last(heads) < check.walk().size()) {
            remarks.accept("The last " + (check.walk().size() - last(heads)) + " entries are not under a signed head"
                    + " yet; the server signs one when it runs.");
        }
    }

    private static long last(List<Heads.Found> heads) {
        return heads.stream().flatMap(found -> HeadCheck.read(found.note()).stream())
                .mapToLong(Checkpoint::size).max().orElse(0);
    }

    /** Where keys were given, one of them has signed the largest head, which speaks for all that come before it. */
    private Optional<BrokenLink> unvouched(List<Heads.Found> heads) {
        long last = last(heads);
        List<Heads.Found> largest = heads.stream().filter(found -> HeadCheck.read(found.note())
                .filter(head -> head.size() == last).isPresent()).toList();
        boolean vouched = given.isEmpty() || largest.stream().flatMap(found -> SignedNote.parse(found.note()).stream())
                .anyMatch(note -> given.stream().anyMatch(note::isSignedBy));
        return vouched ? Optional.empty() : Optional.of(new BrokenLink("the last head, over " + last + " entries,",
                "is not signed by the key that was given", given.getFirst().text(), "signatures of other keys"));
    }

    private static Optional<BrokenLink> contradiction(Row row) {
        return HeadCheck.read(row.note())
                .filter(head -> head.size() != row.size() || !head.root().hex().equals(row.root()))
                .map(head -> new BrokenLink(row.place(), "says in its columns something else than what was signed",
                        head.size() + " entries, root " + head.root(), row.size() + " entries, root " + row.root()));
    }

    private void compareWithFile(Consumer<BrokenLink> broken, Consumer<String> remarks) {
        if (!fileExists) {
            if (!rows.isEmpty()) {
                broken.accept(new BrokenLink("heads.txt", "is missing, though heads were signed",
                        rows.size() + " heads", "no file"));
            }
            return;
        }
        List<String> filed = inFile.stream().map(Heads.Found::note).toList();
        Map<String, Heads.Found> open = new LinkedHashMap<>();
        inFile.forEach(found -> open.put(found.note(), found));
        rows.stream().filter(row -> open.remove(row.note()) == null).findFirst()
                .ifPresent(row -> broken.accept(new BrokenLink(row.place(), "is not in heads.txt",
                        row.note(), filed.size() + " other heads")));
        List<Heads.Found> missing = new ArrayList<>();
        long unknown = 0;
        for (Heads.Found found : open.values()) {
            if (HeadCheck.read(found.note()).map(Checkpoint::size).orElse(0L) > lastSealed()) {
                unknown++;
            } else {
                missing.add(found);
            }
        }
        missing.stream().findFirst().ifPresent(found -> broken.accept(new BrokenLink(found.place(),
                "is missing among the stored heads", found.note(), "nothing")));
        if (unknown > 0) {
            remarks.accept(unknown + " heads at the end of heads.txt are not in the database; the next start of the"
                    + " server adds them.");
        }
    }
}
