package brightseam.app;

import brightseam.move.shell.Export;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** The command that writes a whole shop in open forms: of a stopped folder, or of a copy that its server makes. */
final class ExportCommand {

    static final String COMMAND = "export";

    private static final String WITH_SECRETS = "with-secrets";
    private static final int DONE = 0;
    private static final int FAILED = 1;
    private static final int NOT_ASKED_RIGHT = 2;
    private static final String USAGE = """
            usage: export <file.zip> [--brightseam.data=<folder>] [--with-secrets]
              Writes every entry, signed head, reading and picture in open forms; see docs/export.md.
              --with-secrets  also the secret keys, hashes of PINs and tokens""";

    private ExportCommand() {}

    /** Answers 0 where the export is whole and on disk, 1 where there is none, 2 where it was not asked right. */
    static int run(List<String> arguments, PrintStream out) {
        CommandLine line = CommandLine.of(arguments);
        if (line.unknown(Set.of(WITH_SECRETS)).isPresent() || line.words().size() != 1) {
            out.println(USAGE);
            return NOT_ASKED_RIGHT;
        }
        Path data = line.data();
        if (!line.isDataThere(out)) {
            return NOT_ASKED_RIGHT;
        }
        Path target = Path.of(line.words().getFirst()).toAbsolutePath().normalize();
        boolean secrets = line.has(WITH_SECRETS);
        try (StillShop shop = StillShop.of(data, line.keys(data), secrets, out);
                DataFolder taken = DataFolder.take(shop.folder());
                HikariDataSource source = ShopDatabase.pool(taken.url())) {
            Export.make(new Export.Source(source, shop.folder(), shop.keys(), secrets), target)
                    .words().forEach(out::println);
            return DONE;
        } catch (UnusableData | IOException failure) {
            out.println("Nothing was exported: " + failure.getMessage());
            return FAILED;
        }
    }
}
