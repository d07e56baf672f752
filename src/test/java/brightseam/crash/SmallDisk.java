package brightseam.crash;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A disk with little room left for a server: a file system of its own where this process may mount one, so that the
 * kernel answers that no space is left; else the kernel's limit on the size of a file, which fails the same write.
 */
final class SmallDisk implements AutoCloseable {

    private final Path folder;
    private final long bytesMax;
    private final boolean mounted;

    private SmallDisk(Path folder, long bytesMax, boolean mounted) {
        this.folder = folder;
        this.bytesMax = bytesMax;
        this.mounted = mounted;
    }

    /** A copy of the data folder {@code from} at {@code at}, with room for {@code roomBytes} more. */
    static SmallDisk copyOf(Path from, Path at, long roomBytes) throws IOException, InterruptedException {
        Files.createDirectories(at);
        long held = 0;
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                held += Files.size(file);
            }
        }
        long bytes = held + roomBytes;
        boolean mounted = isDone("mount", "-t", "tmpfs", "-o", "size=" + bytes, "tmpfs", at.toString());
        copy(from, at);
        return new SmallDisk(at, bytes, mounted);
    }

    /** Copies a data folder. */
    static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> paths = Files.walk(from)) {
            for (Path path : paths.toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(path, target);
                }
            }
        }
    }

    Path folder() {
        return folder;
    }

    /** How the server is started on it. */
    ServerProcess.Way way() {
        String blocks = Long.toString(bytesMax / 1024);
        return new ServerProcess.Way(Map.of(), mounted ? List.of()
                : List.of("bash", "-c", "ulimit -f " + blocks + "; exec \"$0\" \"$@\""), List.of());
    }

    /** From now on there is as much room as anybody needs. */
    void makeRoom() throws IOException, InterruptedException {
        if (mounted && !isDone("mount", "-o", "remount,size=512m", folder.toString())) {
            throw new IOException("the small disk does not grow");
        }
    }

    /** What kind of disk it is, for the log. */
    String kind() {
        return mounted ? "a full file system" : "a file that may not grow";
    }

    @Override
    public void close() throws IOException, InterruptedException {
        if (mounted && !isDone("umount", folder.toString())) {
            throw new IOException("still mounted: " + folder);
        }
    }

    private static boolean isDone(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(command).redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor() == 0;
        } catch (IOException noSuchCommand) {
            return false;
        }
    }
}
