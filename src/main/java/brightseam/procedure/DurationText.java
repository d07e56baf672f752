package brightseam.procedure;

import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Durations as procedures write them: a whole number, a space and a unit, such as {@code 15 min}. */
public final class DurationText {

    private static final Pattern FORM = Pattern.compile("([1-9][0-9]{0,4}) (s|min|h|d)");
    private static final long DAYS_FROM = 3;

    private DurationText() {}

    /**
     * The duration that {@code text} writes, in {@code s}, {@code min}, {@code h} or {@code d}.
     *
     * @throws IllegalArgumentException for any other form
     */
    public static Duration parse(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            throw new IllegalArgumentException("a duration with its unit, such as 15 min, not " + text);
        }
        return Duration.ofSeconds(Long.parseLong(form.group(1)) * seconds(form.group(2)));
    }

    /**
     * {@code duration} in the largest unit that leaves a whole number, days from {@value #DAYS_FROM} on; parts of a
     * second are dropped.
     */
    public static String print(Duration duration) {
        long seconds = duration.toSeconds();
        for (String unit : new String[] {"d", "h", "min"}) {
            long least = unit.equals("d") ? DAYS_FROM : 1;
            if (seconds % seconds(unit) == 0 && seconds / seconds(unit) >= least) {
                return seconds / seconds(unit) + " " + unit;
            }
        }
        return seconds + " s";
    }

    private static long seconds(String unit) {
        return switch (unit) {
            case "d" -> 86_400;
            case "h" -> 3_600;
            case "min" -> 60;
            default -> 1;
        };
    }
}
