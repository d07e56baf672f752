package brightseam.app;

import brightseam.check.shell.FreshProjections;
import brightseam.check.shell.LedgerCheck;
import brightseam.check.shell.Progress;
import brightseam.check.shell.Restore;
import brightseam.move.shell.Import;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The command that fills a new data folder from an export, and says that it is good only after the ledger check. */
final class ImportCommand {

    static final String COMMAND = "import";

    private static final int DONE = 0;
    private static final int FAILED = 1;
    private static final int NOT_ASKED_RIGHT = 2;
    private static final String USAGE = """
            usage: import <export.zip> --brightseam.data=<new folder>
              Fills a folder that is not there or empty, and checks the whole ledger.""";

    private ImportCommand() {}

    /** Answers 0 where the folder is filled and good, 1 where not, 2 where it was not asked right. */
    static int run(List<String> arguments, PrintStream out) {
        CommandLine line = CommandLine.of(arguments);
        if (line.unknown(Set.of()).isPresent() || line.words().size() != 1) {
            out.println(USAGE);
            return NOT_ASKED_RIGHT;
        }
        Path file = Path.of(line.words().getFirst()).toAbsolutePath();
        Path folder = line.data();
        Path filling = folder.resolveSibling(folder.getFileName() + ".importing");
        try {
            if (!Files.isRegularFile(file)) {
                out.println("There is no export " + file);
                return NOT_ASKED_RIGHT;
            }
            if (!Restore.isFree(folder) || !Restore.isFree(filling)) {
                out.println((Restore.isFree(folder) ? filling : folder) + " is in use or not empty. Import into a new"
                        + " folder: --brightseam.data=<new folder>");
                return NOT_ASKED_RIGHT;
            }
            return imported(line, file, filling, folder, out);
        } catch (IOException | RuntimeException failure) {
            out.println("NOT IMPORTED: " + failure.getMessage());
            return FAILED;
        }
    }

    private static int imported(CommandLine line, Path file, Path filling, Path folder, PrintStream out)
            throws IOException {
        Import.Done done;
        try (DataFolder taken = DataFolder.take(filling);
                HikariDataSource source = ShopDatabase.pool(taken.urlOfFirstStart())) {
            FreshProjections.migrations(source).migrate();
            done = Import.fill(file, filling, source, new Progress(out));
            LedgerCheck.Report report = CheckLedger.check(source, line, filling, out);
            if (CheckLedger.told(report, out) != 0) {
                out.println("NOT IMPORTED. What was filled in is left in " + filling);
                return FAILED;
            }
            taken.markInUse();
        }
        Files.deleteIfExists(folder);
        Files.move(filling, folder, StandardCopyOption.ATOMIC_MOVE);
        out.println(String.format(Locale.ROOT, "IMPORTED into %s: %,d entries, %,d pictures, checked.", folder,
                done.entries(), done.pictures()));
        if (!done.withSecrets()) {
            out.println("PINs were not in the export: start with  --brightseam.first-pin-for=<badge of an"
                    + " administrator>  and set the others anew. The secret key was not either: also start the first"
                    + " time with  --brightseam.loss-noted=\"" + done.entries() + ":<your name>:<why>\"  so that a new"
                    + " key is made and the ledger says so.");
        }
        return DONE;
    }
}
