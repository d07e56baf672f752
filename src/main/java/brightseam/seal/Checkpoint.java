package brightseam.seal;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A head of the tree as text, in the form of C2SP tlog-checkpoint: the origin, the size in decimal, the root in base64,
 * then further lines; each ends with a line feed.
 *
 * @param origin the name of the ledger, without schema
 * @param size how many entries the tree has
 * @param root of the tree of that size
 * @param extensions further lines, none empty; ours begin with {@code time } and the time of sealing (ISO 8601, UTC)
 */
public record Checkpoint(String origin, long size, Hash root, List<String> extensions) {

    private static final int LINES_MIN = 3;
    private static final String TIME = "time ";

    /** Copies the list; refuses a negative size, an empty line, and a line with a line feed in it. */
    public Checkpoint {
        extensions = List.copyOf(extensions);
        boolean lines = isLine(origin) && extensions.stream().allMatch(Checkpoint::isLine);
        if (size < 0 || !lines) {
            throw new IllegalArgumentException("a checkpoint has a size and lines that are not empty");
        }
    }

    /** The text that is signed. */
    public String text() {
        StringBuilder text = new StringBuilder(origin).append('\n').append(size).append('\n')
                .append(root.base64()).append('\n');
        extensions.forEach(line -> text.append(line).append('\n'));
        return text.toString();
    }

    /** The time of sealing that a line of ours states; empty where none does or it is no time. */
    public Optional<Instant> time() {
        return extensions.stream().filter(line -> line.startsWith(TIME)).findFirst()
                .flatMap(line -> instant(line.substring(TIME.length())));
    }

    /** The line that states {@code time} as the time of sealing. */
    public static String timeLine(Instant time) {
        return TIME + time;
    }

    /** What {@code text} says; empty where it is no checkpoint in the one form that a checkpoint has. */
    public static Optional<Checkpoint> parse(String text) {
        if (!text.endsWith("\n")) {
            return Optional.empty();
        }
        List<String> lines = List.of(text.substring(0, text.length() - 1).split("\n", -1));
        if (lines.size() < LINES_MIN || !lines.get(1).matches("0|[1-9]\\d{0,17}")) {
            return Optional.empty();
        }
        try {
            Checkpoint read = new Checkpoint(lines.get(0), Long.parseLong(lines.get(1)),
                    Hash.fromBase64(lines.get(2)), lines.subList(LINES_MIN, lines.size()));
            return Optional.of(read).filter(checkpoint -> checkpoint.text().equals(text));
        } catch (IllegalArgumentException notOne) {
            return Optional.empty();
        }
    }

    private static Optional<Instant> instant(String text) {
        try {
            return Optional.of(Instant.parse(text));
        } catch (DateTimeException noTime) {
            return Optional.empty();
        }
    }

    private static boolean isLine(String line) {
        return !line.isEmpty() && line.indexOf('\n') < 0;
    }
}
