package brightseam.procedure.shell;

import brightseam.procedure.shell.ProcedureLoader.Loaded;
import brightseam.procedure.shell.ProcedureLoader.Loading;
import brightseam.procedure.shell.ProcedureLoader.Unsound;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The command that checks a folder of procedures without starting the server. */
public final class CheckProcedures {

    /** The word that asks for this command as the program's first argument. */
    public static final String COMMAND = "check-procedures";

    private static final int SOUND = 0;
    private static final int UNSOUND = 1;
    private static final int NOT_ASKED_RIGHT = 2;

    private CheckProcedures() {}

    /** {@link #check} of the folder that the only one of {@code arguments} names. */
    public static int run(List<String> arguments, PrintStream out) {
        if (arguments.size() != 1) {
            out.println("usage: " + COMMAND + " <folder>");
            return NOT_ASKED_RIGHT;
        }
        return check(Path.of(arguments.getFirst()), out);
    }

    /**
     * Prints each problem as {@code file:line:column: found; expected this}, or each sound procedure.
     *
     * @return 0 where every file is sound and there is at least one, 1 where not, 2 where there is no such folder
     */
    public static int check(Path folder, PrintStream out) {
        if (!Files.isDirectory(folder)) {
            out.println(folder + ": no such folder; expected a folder of procedures");
            return NOT_ASKED_RIGHT;
        }
        try {
            Map<String, Loading> files = ProcedureFolder.read(folder, new ProcedureLoader(SharedTables.read()));
            if (files.isEmpty()) {
                out.println(folder + ": no procedure; expected at least one .yaml file");
                return UNSOUND;
            }
            files.forEach((file, loading) -> print(file, loading, out));
            return files.values().stream().allMatch(Loaded.class::isInstance) ? SOUND : UNSOUND;
        } catch (IOException unreadable) {
            out.println(folder + ": a folder that cannot be listed; expected a readable folder");
            return NOT_ASKED_RIGHT;
        }
    }

    private static void print(String file, Loading loading, PrintStream out) {
        switch (loading) {
            case Loaded loaded -> out.println(file + ": " + loaded.procedure().ref().label() + ", "
                    + loaded.procedure().steps().size() + " steps, in order");
            case Unsound unsound -> unsound.problems().forEach(out::println);
        }
    }
}
