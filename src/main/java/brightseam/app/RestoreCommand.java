package brightseam.app;

import brightseam.check.shell.LedgerCheck;
import brightseam.check.shell.PublicKeys;
import brightseam.check.shell.Restore;
import brightseam.seal.NoteVerifier;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The command that unpacks a backup and says that it is good only after the ledger check found it so. */
final class RestoreCommand {

    static final String COMMAND = "restore";

    private static final String KEY = "key";
    private static final String HEADS = "heads";
    private static final String WITHOUT_PROJECTIONS = "without-projections";
    private static final int GOOD = 0;
    private static final int NOT_GOOD = 1;
    private static final int NOT_ASKED_RIGHT = 2;
    private static final String USAGE = """
            usage: restore <backup.zip> <new folder> [--heads=<heads.txt or witness folder>] [--key=<public key>]
                           [--without-projections]
              Unpacks into a folder that is not there or empty, and checks the whole ledger.
              --heads  heads that were signed later: the lost folder's heads.txt or a witness; may be given again.
                       Says which entries are missing.""";

    private RestoreCommand() {}

    /** Answers 0 where the folder is restored and good, 1 where not, 2 where it was not asked right. */
    static int run(List<String> arguments, PrintStream out) {
        CommandLine line = CommandLine.of(arguments);
        if (line.unknown(Set.of(KEY, HEADS, WITHOUT_PROJECTIONS)).isPresent() || line.words().size() != 2) {
            out.println(USAGE);
            return NOT_ASKED_RIGHT;
        }
        Path file = Path.of(line.words().get(0)).toAbsolutePath();
        Path folder = Path.of(line.words().get(1)).toAbsolutePath().normalize();
        try {
            if (!Files.isRegularFile(file) || !Restore.isFree(folder)) {
                out.println(Files.isRegularFile(file)
                        ? folder + " is in use or not empty. Restore into a new folder."
                        : "There is no backup " + file);
                return NOT_ASKED_RIGHT;
            }
            return restored(line, file, folder, out);
        } catch (IOException | RuntimeException failure) {
            out.println("NOT RESTORED. The backup is not good: " + failure.getMessage());
            return NOT_GOOD;
        }
    }

    private static int restored(CommandLine line, Path file, Path folder, PrintStream out) throws IOException {
        Path unpacking = folder.resolveSibling(folder.getFileName() + ".restoring");
        if (!Restore.isFree(unpacking)) {
            out.println(unpacking + " is left from an earlier attempt. Delete it first.");
            return NOT_ASKED_RIGHT;
        }
        out.println("Unpacking " + file);
        Restore.Unpacked unpacked = Restore.unpack(file, unpacking);
        out.println(String.format(Locale.ROOT, "Made at %s, %,d entries. Checking them.", unpacked.madeAt(),
                unpacked.entries()));
        try (DataFolder taken = DataFolder.take(unpacking); HikariDataSource source = ShopDatabase.pool(taken.url())) {
            LedgerCheck.Report report = CheckLedger.check(source, line, unpacking, out);
            if (CheckLedger.told(report, out) != GOOD || report.entries() != unpacked.entries()) {
                out.println("NOT RESTORED. What was unpacked is left in " + unpacking);
                return NOT_GOOD;
            }
        }
        Optional<Restore.Gap> gap = gap(line, unpacking, unpacked.entries());
        Files.deleteIfExists(folder);
        Files.move(unpacking, folder, StandardCopyOption.ATOMIC_MOVE);
        tell(folder, unpacked, gap, line.has(HEADS), out);
        return GOOD;
    }

    private static Optional<Restore.Gap> gap(CommandLine line, Path folder, long entries) throws IOException {
        List<NoteVerifier> keys = new ArrayList<>(PublicKeys.inFolder(folder.resolve("keys")));
        line.all(KEY).forEach(key -> PublicKeys.given(key).ifPresent(keys::add));
        return Restore.gap(folder, line.all(HEADS).stream().map(Path::of).toList(), keys, entries);
    }

    private static void tell(Path folder, Restore.Unpacked unpacked, Optional<Restore.Gap> gap, boolean compared,
            PrintStream out) {
        out.println(String.format(Locale.ROOT, "RESTORED into %s: %,d entries, checked.", folder, unpacked.entries()));
        gap.ifPresent(lost -> out.println(String.format(Locale.ROOT,
                "MISSING: %,d entries, numbers %d to %d, were signed after the backup (last head: %s). They are lost"
                        + " unless another backup has them.", lost.entries(), unpacked.entries() + 1,
                lost.last().size(), lost.last().extensions())));
        if (gap.isEmpty()) {
            out.println(compared ? "No head that was given covers entries that the backup does not have."
                    : "Whether entries were signed after the backup was not looked at: give the lost folder's heads.txt"
                            + " or a witness with --heads.");
        }
        if (gap.isPresent() || !unpacked.hasSecretKey()) {
            out.println((unpacked.hasSecretKey() ? "" : "The secret key is not in the backup: the first start makes a"
                    + " new one and writes down that the old one was lost. ")
                    + "Start the first time with  --brightseam.loss-noted=\""
                    + gap.map(lost -> lost.last().size()).orElse(unpacked.entries())
                    + ":<your name>:<why>\"  so that the ledger says who went on without what is missing.");
        }
    }
}
