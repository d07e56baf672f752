package brightseam.seal.shell;

import brightseam.kernel.shell.OwnerAlone;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * {@code heads.txt}: every head, as its note, followed by a line with a full stop alone. What stands behind the last
 * such line was being written when the machine stopped; nobody was told of it, and the next head takes its place.
 */
final class HeadsFile {

    private static final String END = "\n.\n";
    /** A head has some 330 bytes, 500 with two signatures: the last whole one is always in here. */
    private static final int TAIL_BYTES = 16_384;

    private final Path file;

    HeadsFile(Path file) {
        this.file = file;
    }

    boolean exists() {
        return Files.exists(file);
    }

    Path path() {
        return file;
    }

    /** The note of the last whole head; empty where there is none. */
    Optional<String> last() {
        if (!exists()) {
            return Optional.empty();
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            String tail = tail(channel);
            int end = tail.lastIndexOf(END);
            if (end < 0) {
                return Optional.empty();
            }
            int before = end == 0 ? -1 : tail.lastIndexOf(END, end - 1);
            String note = tail.substring(before < 0 ? 0 : before + END.length(), end + 1);
            return Optional.of(new String(note.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(file + " cannot be read", failure);
        }
    }

    /** Adds {@code note}; returns once it would survive a power cut. */
    void append(String note) {
        boolean fresh = !exists();
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.READ,
                StandardOpenOption.WRITE)) {
            long end = wholeBytes(channel);
            channel.truncate(end);
            ByteBuffer bytes = ByteBuffer.wrap(whole(note).getBytes(StandardCharsets.UTF_8));
            for (long at = end; bytes.hasRemaining(); ) {
                at += channel.write(bytes, at);
            }
            channel.force(true);
            if (fresh) {
                OwnerAlone.force(file.toAbsolutePath().getParent());
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(file + " cannot be written", failure);
        }
    }

    /** How {@code note} stands in the file. */
    static String whole(String note) {
        return note + END.substring(1);
    }

    private static long wholeBytes(FileChannel channel) throws IOException {
        String tail = tail(channel);
        int end = tail.lastIndexOf(END);
        if (end < 0 && channel.size() > TAIL_BYTES) {
            throw new IOException("no whole head in its last " + TAIL_BYTES + " bytes");
        }
        return end < 0 ? 0 : channel.size() - (tail.length() - end - END.length());
    }

    /** The file's last bytes, one character each. */
    private static String tail(FileChannel channel) throws IOException {
        long from = Math.max(0, channel.size() - TAIL_BYTES);
        ByteBuffer bytes = ByteBuffer.allocate((int) (channel.size() - from));
        while (bytes.hasRemaining() && channel.read(bytes, from + bytes.position()) >= 0) {
            continue;
        }
        return new String(bytes.array(), 0, bytes.position(), StandardCharsets.ISO_8859_1);
    }
}
