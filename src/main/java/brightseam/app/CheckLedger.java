package brightseam.app;

import brightseam.check.BrokenLink;
import brightseam.check.shell.FreshProjections;
import brightseam.check.shell.LedgerCheck;
import brightseam.check.shell.Progress;
import brightseam.check.shell.PublicKeys;
import brightseam.seal.NoteVerifier;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.sql.DataSource;

/** The command that checks the whole ledger of a data folder, or a copy that its running server makes. */
final class CheckLedger {

    static final String COMMAND = "check-ledger";

    private static final int SOUND = 0;
    private static final int BROKEN = 1;
    private static final int NOT_ASKED_RIGHT = 2;
    private static final String KEY = "key";
    private static final String WITNESS = "witness";
    private static final String WITHOUT_PROJECTIONS = "without-projections";
    private static final String USAGE = """
            usage: check-ledger [--brightseam.data=<folder>] [--key=<public key or its file>] [--witness=<folder>]
                                [--without-projections]
              Computes every chain, the tree and every signature anew and compares them with what is stored.
              --key                  a public key that you know from elsewhere: the last head must be signed by it
              --witness              where heads were sent; may be given more than once
              --without-projections  does not compare the rows that screens read with what the entries say""";

    private CheckLedger() {}

    /** Answers 0 where all fits, 1 where something does not, 2 where it was not asked right or cannot look. */
    static int run(List<String> arguments, PrintStream out) {
        CommandLine line = CommandLine.of(arguments);
        Optional<String> unknown = line.unknown(Set.of(KEY, WITNESS, WITHOUT_PROJECTIONS));
        if (unknown.isPresent() || !line.words().isEmpty()) {
            out.println(USAGE);
            return NOT_ASKED_RIGHT;
        }
        for (String key : line.all(KEY)) {
            if (PublicKeys.given(key).isEmpty()) {
                out.println("No public key, neither as text nor in a file of that name: " + key);
                return NOT_ASKED_RIGHT;
            }
        }
        try {
            return checked(line, out);
        } catch (UnusableData unusable) {
            out.println(unusable.getMessage());
            return NOT_ASKED_RIGHT;
        }
    }

    private static int checked(CommandLine line, PrintStream out) {
        Path data = line.data();
        if (!line.isDataThere(out)) {
            return NOT_ASKED_RIGHT;
        }
        try (StillShop shop = StillShop.of(data, line.keys(data), false, out);
                DataFolder taken = DataFolder.take(shop.folder());
                HikariDataSource source = ShopDatabase.pool(taken.url())) {
            out.println("Checking " + data);
            return told(check(source, line, shop.folder(), out), out);
        } catch (IOException failure) {
            throw new UnusableData("The ledger cannot be checked: " + failure.getMessage(), failure);
        }
    }

    /** Checks {@code source}, whose heads and keys lie in {@code data}, as {@code line} asks. */
    static LedgerCheck.Report check(DataSource source, CommandLine line, Path data, PrintStream out) {
        List<NoteVerifier> keys = line.all(KEY).stream().flatMap(key -> PublicKeys.given(key).stream()).toList();
        boolean projections = !line.has(WITHOUT_PROJECTIONS);
        if (projections && isOfEarlierVersion(source)) {
            projections = false;
            out.println("Note: the database was made by an earlier version. What screens read is not compared before"
                    + " the server has started once on it.");
        }
        return new LedgerCheck(new LedgerCheck.Source(source, data.resolve("heads.txt"), line.keys(data), keys,
                line.all(WITNESS).stream().map(Path::of).toList(), projections), new Progress(out)).run();
    }

    private static boolean isOfEarlierVersion(DataSource source) {
        return FreshProjections.migrations(source).info().pending().length > 0;
    }

    /** Tells {@code report}; answers the exit status. */
    static int told(LedgerCheck.Report report, PrintStream out) {
        report.remarks().forEach(remark -> out.println("Note: " + remark));
        if (report.broken().isEmpty()) {
            out.println(String.format(Locale.ROOT,
                    "ALL FITS: %,d entries of %,d streams, %,d signed heads. Root over all entries: %s",
                    report.entries(), report.streams(), report.heads(), report.root()));
            return SOUND;
        }
        out.println("DOES NOT FIT. First broken link:");
        out.println("  " + report.broken().getFirst().words());
        List<BrokenLink> more = report.broken().subList(1, report.broken().size());
        if (!more.isEmpty()) {
            out.println("Further:");
            more.forEach(link -> out.println("  " + link.words()));
        }
        return BROKEN;
    }
}
