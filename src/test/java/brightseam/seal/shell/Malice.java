package brightseam.seal.shell;

import brightseam.ledger.Chain;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.TestLedger;
import java.nio.file.Path;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What an administrator of bad will can do to the database: everything, with every chain of hashes made good again. */
final class Malice {

    private final JdbcClient jdbc;

    private Malice(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    static Malice on(JdbcClient jdbc) {
        jdbc.sql("drop trigger if exists ledger_entry_append_only").update();
        return new Malice(jdbc);
    }

    /** Opens the database of a server that is down. */
    static void inFolder(Path folder, java.util.function.Consumer<Malice> deed) {
        try (TestLedger ledger = TestLedger.inFolder(folder)) {
            deed.accept(on(ledger.jdbc()));
        }
    }

    /** Puts another content at {@code position} and computes every later hash of its stream anew. */
    void change(long position, String json) {
        jdbc.sql("update ledger_entry set json = ? where position = ?").params(json, position).update();
        String stream = jdbc.sql("select stream from ledger_entry where position = ?").param(position)
                .query(String.class).single();
        String[] previous = {Chain.GENESIS};
        jdbc.sql("select version, type, json from ledger_entry where stream = ? order by version").param(stream)
                .query((row, number) -> new Object[] {row.getLong(1), row.getString(2), row.getString(3)}).list()
                .forEach(row -> {
                    String hash = Chain.entry(1, new StreamName(stream), (long) row[0],
                            new NewEvent((String) row[1], (String) row[2]), previous[0]).hash();
                    jdbc.sql("update ledger_entry set previous = ?, hash = ? where stream = ? and version = ?")
                            .params(previous[0], hash, stream, row[0]).update();
                    previous[0] = hash;
                });
    }

    /** Cuts the ledger off behind {@code position}. */
    void cutAfter(long position) {
        jdbc.sql("delete from ledger_entry where position > ?").param(position).update();
    }

    /** Takes every trace of heads of more than {@code size} entries out of the database. */
    void forgetHeadsAfter(long size) {
        jdbc.sql("delete from ledger_seal where size > ?").param(size).update();
        jdbc.sql("delete from ledger_tile").update();
    }
}
