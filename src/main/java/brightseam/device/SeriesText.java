package brightseam.device;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The canonical bytes of a stretch of readings, so that a stranger can hash it again.
 *
 * <p>One line for each reading in order of time, in UTF-8, ended by a line feed: the elapsed time in milliseconds, a
 * space, the value, a space, the flags. The value is the shortest decimal that reads back as the same double, without
 * exponent, without zeros at its end, without a point where it is whole: {@code 12.5}, {@code 12}, {@code 0.00001}. The
 * flags are lower-case words with hyphens, in the order of {@link Quality}, joined by commas, or a single hyphen where
 * there are none. Readings flagged late are left out. A stretch without readings has no bytes.
 */
public final class SeriesText {

    private static final String NO_FLAGS = "-";

    private SeriesText() {}

    /** The readings of {@code series} that evidence of the stretch looks at; ends included. */
    public static Series kept(Series series, long fromMillis, long toMillis) {
        int late = 1 << Quality.LATE.ordinal();
        Series stretch = series.between(fromMillis, toMillis);
        SeriesBuilder kept = new SeriesBuilder(stretch.size());
        for (int i = 0; i < stretch.size(); i++) {
            if ((stretch.flags(i) & late) == 0) {
                kept.add(stretch.millis(i), stretch.value(i), stretch.flags(i));
            }
        }
        return kept.build();
    }

    /** The lines of every reading of {@code series}. */
    public static String lines(Series series) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < series.size(); i++) {
            text.append(series.millis(i)).append(' ').append(plain(series.value(i))).append(' ')
                    .append(words(series.flags(i))).append('\n');
        }
        return text.toString();
    }

    /** The SHA-256 of {@link #lines}, lower-case hexadecimal. */
    public static String sha256(Series series) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256")
                    .digest(lines(series).getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    /** {@code value} as it is written in a line. */
    public static String plain(double value) {
        BigDecimal exact = new BigDecimal(Double.toString(value));
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }

    private static String words(int flags) {
        return flags == 0 ? NO_FLAGS : Quality.of(flags).stream()
                .map(flag -> flag.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .collect(Collectors.joining(","));
    }
}
