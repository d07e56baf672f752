package brightseam.move;

import brightseam.check.StoredRow;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An entry as a line of {@code entries.ndjson}: {@code {"entry":…,"hash":"…","position":…}}. What stands behind
 * {@code "entry":} is byte for byte the canonical envelope (RFC 8785) whose SHA-256 is the hash.
 */
public final class EntryLine {

    private static final Pattern FORM = Pattern.compile("\\{\"entry\":\\{\"content\":(.*),"
            + "\"previous\":\"([0-9a-f]{64})\",\"stream\":\"([^\"]+)\",\"type\":\"([^\"]+)\",\"version\":(\\d{1,18})},"
            + "\"hash\":\"([0-9a-f]{64})\",\"position\":(\\d{1,18})}", Pattern.DOTALL);

    private EntryLine() {}

    /** The line of {@code row}, without a line feed. */
    public static String write(StoredRow row) {
        return "{\"entry\":" + row.envelope() + ",\"hash\":\"" + row.hash() + "\",\"position\":" + row.position() + "}";
    }

    /** What {@code line} says; empty where it is not in the form. The hash is not looked at. */
    public static Optional<StoredRow> read(String line) {
        Matcher form = FORM.matcher(line);
        return form.matches()
                ? Optional.of(new StoredRow(Long.parseLong(form.group(7)), form.group(3),
                        Long.parseLong(form.group(5)), form.group(4), form.group(1), form.group(2), form.group(6)))
                : Optional.empty();
    }
}
