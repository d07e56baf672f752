package brightseam.ledger.shell;

import brightseam.ledger.Appended;
import brightseam.ledger.Entry;
import java.nio.file.Path;
import java.util.List;

/**
 * A process of its own that appends from several threads flat out until it is killed. Prints each entry that was
 * acknowledged, one a line: stream, version, hash and a full stop.
 */
public final class CrashWriter {

    private static final int THREADS = 8;

    private CrashWriter() {}

    /** Takes the database's folder. */
    public static void main(String[] args) {
        Ledger ledger = TestLedger.inFolder(Path.of(args[0]), Signatures::new).ledger();
        for (int i = 0; i < THREADS; i++) {
            String own = "T-" + i;
            new Thread(() -> sign(ledger, own)).start();
        }
    }

    private static void sign(Ledger ledger, String own) {
        long version = ledger.version(Signatures.stream(own));
        while (true) {
            long shared = ledger.version(Signatures.stream("SHARED"));
            Appended outcome = ledger.append(List.of(
                    Signatures.append(own, version, "first", "second"), Signatures.append("SHARED", shared, own)));
            switch (outcome) {
                case Appended.Stored stored -> {
                    stored.entries().forEach(CrashWriter::print);
                    version += 2;
                }
                case Appended.Conflict conflict -> Thread.onSpinWait();
                case Appended.NotStored notStored -> throw new IllegalStateException(notStored.reason());
            }
        }
    }

    private static void print(Entry entry) {
        synchronized (System.out) {
            System.out.println(entry.stream() + " " + entry.version() + " " + entry.hash() + ".");
            System.out.flush();
        }
    }
}
