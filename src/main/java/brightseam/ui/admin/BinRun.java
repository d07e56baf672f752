package brightseam.ui.admin;

import brightseam.kernel.BinId;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Labels of a run of bins: {@code B-0141}, {@code B-0142} and so on. */
final class BinRun {

    /** The most bins that are registered at once. */
    static final int COUNT_MAX = 100;

    private static final Pattern NUMBERED = Pattern.compile("(B-(?:[A-Z0-9]+-)*)([0-9]{1,8})");

    private BinRun() {}

    /**
     * {@code count} labels from {@code first} on; the number keeps its leading zeros.
     *
     * @throws IllegalArgumentException where {@code first} is no bin's label, or a run of it cannot be numbered
     */
    static List<BinId> labels(String first, int count) {
        String label = first.strip();
        if (count < 1 || count > COUNT_MAX) {
            throw new IllegalArgumentException("how many: 1 to " + COUNT_MAX);
        }
        if (!label.startsWith("B-")) {
            throw new IllegalArgumentException("bin label: begins with B-");
        }
        Matcher numbered = NUMBERED.matcher(label);
        if (count == 1) {
            return List.of(new BinId(label));
        }
        if (!numbered.matches()) {
            throw new IllegalArgumentException("first label of a run: ends with a number, such as B-0141");
        }
        int from = Integer.parseInt(numbered.group(2));
        return IntStream.range(from, from + count)
                .mapToObj(number -> new BinId(numbered.group(1)
                        + ("%0" + numbered.group(2).length() + "d").formatted(number)))
                .toList();
    }
}
