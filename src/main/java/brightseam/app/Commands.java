package brightseam.app;

import brightseam.evidence.shell.VerifyFile;
import brightseam.procedure.shell.CheckProcedures;
import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What the program does instead of running the server, by the word that is its first argument. */
enum Commands {

    CHECK_PROCEDURES(CheckProcedures.COMMAND, CheckProcedures::run),
    VERIFY(VerifyFile.COMMAND, VerifyFile::run),
    CHECK_LEDGER(CheckLedger.COMMAND, CheckLedger::run),
    BACKUP(BackupCommand.COMMAND, BackupCommand::run),
    RESTORE(RestoreCommand.COMMAND, RestoreCommand::run),
    EXPORT(ExportCommand.COMMAND, ExportCommand::run),
    IMPORT(ImportCommand.COMMAND, ImportCommand::run);

    private final String word;
    private final Command command;

    Commands(String word, Command command) {
        this.word = word;
        this.command = command;
    }

    /** Something that runs once and ends. */
    @FunctionalInterface
    interface Command {
        /**
         * Runs with the arguments that follow the word, and tells people on {@code out}.
         *
         * @return the process's exit status: 0 where all is well, 1 where something was found, 2 where it was not asked
         *     right
         */
        int run(List<String> arguments, PrintStream out);
    }

    /** The command that the first of {@code arguments} asks for; empty where it is none. */
    static Optional<Commands> asked(String[] arguments) {
        return arguments.length == 0
                ? Optional.empty()
                : Arrays.stream(values()).filter(command -> command.word.equals(arguments[0])).findFirst();
    }

    /** Runs with all {@code arguments} of the program, the word first; answers the exit status. Logs warnings alone. */
    int run(String[] arguments, PrintStream out) {
        if (LoggerFactory.getILoggerFactory() instanceof LoggerContext logs) {
            logs.getLogger(Logger.ROOT_LOGGER_NAME).setLevel(Level.WARN);
        }
        return command.run(List.of(arguments).subList(1, arguments.length), out);
    }
}
