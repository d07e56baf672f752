package brightseam.bench;

import brightseam.ledger.Append;
import brightseam.ledger.Appended;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.TestLedger;
import java.nio.file.Path;
import java.util.List;

/** Appends to the real ledger, each caller to a stream of its own, without projections. */
final class LedgerAppends implements LedgerBench.Contender {

    private final TestLedger shop;

    LedgerAppends(Path folder) {
        this.shop = TestLedger.inFolder(folder);
    }

    @Override
    public void store(int caller, long turn) {
        Appended outcome = shop.ledger().append(List.of(new Append(
                StreamName.of("traveller", "T-" + caller), turn,
                List.of(new NewEvent("signed.1", BareCommits.CONTENT)))));
        if (!(outcome instanceof Appended.Stored)) {
            throw new IllegalStateException("not stored: " + outcome);
        }
    }

    @Override
    public void close() {
        shop.close();
    }
}
