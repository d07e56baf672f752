package brightseam.app;

import brightseam.kernel.shell.OwnerAlone;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * The folder that holds everything the shop has recorded, taken by one server at a time.
 *
 * <p>A marker file beside the database says that the folder has been in use, so that a database file that was wiped or
 * lost is noticed instead of being replaced by an empty one without a word.
 */
final class DataFolder implements AutoCloseable {

    /** H2 keeps 8 parsed statements for each connection unless told otherwise; the server asks some hundred. */
    private static final int STATEMENTS_KEPT = 512;
    private static final String DATABASE = "brightseam";
    private static final String DATABASE_FILE = DATABASE + ".mv.db";
    private static final String MARKER_FILE = "in-use";
    private static final String LOCK_FILE = "server.lock";
    /** H2's store begins with two header blocks of 4096 bytes; a shorter file was cut off. */
    private static final long DATABASE_BYTES_MIN = 8_192;

    private final Path folder;
    private final FileChannel lockChannel;

    private DataFolder(Path folder, FileChannel lockChannel) {
        this.folder = folder;
        this.lockChannel = lockChannel;
    }

    /**
     * Makes {@code path} where it is missing, closes it to other users of the machine, and takes it.
     *
     * @throws UnusableData where another server has it, it cannot be written, or its database is gone
     */
    static DataFolder take(Path path) {
        return lock(path).refusingLoss();
    }

    /**
     * As {@link #take}, for a shop whose records lie in a database server: keys and heads are all that is here.
     *
     * @throws UnusableData also where the folder holds the embedded database of another shop
     */
    static DataFolder takeBesideServer(Path path) {
        DataFolder taken = lock(path);
        if (Files.exists(taken.database())) {
            taken.giveBack();
            throw new UnusableData("The data folder " + taken.folder + " holds records in a database of its own, and"
                    + " this start asks for PostgreSQL. Start without the profile postgresql, or with another folder:"
                    + " --brightseam.data=<another folder>.", null);
        }
        return taken;
    }

    private static DataFolder lock(Path path) {
        Path folder = path.toAbsolutePath().normalize();
        if (folder.toString().contains(";")) {
            throw new UnusableData("The data folder's name must not contain a semicolon: " + folder, null);
        }
        try {
            Files.createDirectories(folder);
            OwnerAlone.close(folder);
            FileChannel channel = FileChannel.open(
                    folder.resolve(LOCK_FILE), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!isLocked(channel)) {
                channel.close();
                throw new UnusableData("Another Brightseam server is using the data folder " + folder
                        + ". Stop that one first, or start this one with --brightseam.data=<another folder>.", null);
            }
            return new DataFolder(folder, channel);
        } catch (IOException failure) {
            throw new UnusableData("The data folder " + folder + " cannot be used: " + failure, failure);
        }
    }

    /** Whether the database was there, with its tables, at some time before. */
    boolean isInUse() {
        return Files.exists(marker());
    }

    /** Where H2 finds the database once it exists: {@code WRITE_DELAY=0}, and never made anew. */
    String url() {
        return urlOfFirstStart() + ";IFEXISTS=TRUE";
    }

    /**
     * As {@link #url()}, but makes the database where there is none. H2's own closing at the process's end is off: it
     * would close the database under the writer while that still stores what waits. The pool closes it afterwards.
     */
    String urlOfFirstStart() {
        return "jdbc:h2:file:" + folder.resolve(DATABASE) + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE;QUERY_CACHE_SIZE="
                + STATEMENTS_KEPT;
    }

    /** Notes that the database exists now, with its tables, so that its loss would be noticed. */
    void markInUse() {
        if (isInUse()) {
            return;
        }
        try (FileChannel out = FileChannel.open(marker(), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            out.force(true);
        } catch (IOException failure) {
            throw new UnusableData("The marker file " + marker() + " cannot be written: " + failure, failure);
        }
    }

    /** Gives the folder back. */
    @Override
    public void close() throws IOException {
        lockChannel.close();
    }

    private DataFolder refusingLoss() {
        if (isInUse() && isDatabaseLost()) {
            giveBack();
            throw new UnusableData("The database file " + database() + " is missing or cut off, but this folder has"
                    + " been in use. Restore it from a backup; where the shop's records lie in PostgreSQL, start with"
                    + " --spring.profiles.active=postgresql. Only if the records may be given up for good: start with"
                    + " another folder.", null);
        }
        return this;
    }

    private boolean isDatabaseLost() {
        try {
            return !Files.exists(database()) || Files.size(database()) < DATABASE_BYTES_MIN;
        } catch (IOException failure) {
            giveBack();
            throw new UnusableData("The data folder " + folder + " cannot be used: " + failure, failure);
        }
    }

    private void giveBack() {
        try {
            close();
        } catch (IOException failure) {
            throw new UnusableData("The data folder " + folder + " cannot be given back: " + failure, failure);
        }
    }

    private static boolean isLocked(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException inThisProcess) {
            return false;
        }
    }

    private Path database() {
        return folder.resolve(DATABASE_FILE);
    }

    private Path marker() {
        return folder.resolve(MARKER_FILE);
    }
}
