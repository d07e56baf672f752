package brightseam.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The time that a chart covers.
 *
 * @param fromMillis its begin on the shop's elapsed time line
 * @param toMillis its end, later
 * @param wallAtFrom what the clock on the wall said at the begin
 * @param zone the shop's zone
 */
public record ChartWindow(long fromMillis, long toMillis, Instant wallAtFrom, ZoneId zone) {

    private static final int TICKS_MAX = 8;
    private static final long BY_CLOCK_FROM_MILLIS = Duration.ofHours(2).toMillis();
    private static final long BY_MINUTE_FROM_MILLIS = Duration.ofMinutes(6).toMillis();
    private static final List<Integer> STEPS_SECONDS = List.of(1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800,
            3600, 7200, 10800, 14400, 21600, 43200, 86400);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ENGLISH);

    /** Refuses a window that does not run forward. */
    public ChartWindow {
        if (toMillis <= fromMillis) {
            throw new IllegalArgumentException("a chart covers some time");
        }
    }

    /** A tick: when, and what stands below it. */
    record Tick(long atMillis, String label) {}

    /** Ticks at round times. */
    List<Tick> ticks() {
        long stepMillis = stepMillis();
        List<Tick> ticks = new ArrayList<>();
        if (isByClock()) {
            long dayMillis = wallAtFrom.atZone(zone).toLocalTime().toNanoOfDay() / 1_000_000;
            long first = fromMillis + Math.ceilDiv(dayMillis, stepMillis) * stepMillis - dayMillis;
            for (long at = first; at <= toMillis; at += stepMillis) {
                ticks.add(new Tick(at, clock(at)));
            }
        } else {
            long unitMillis = toMillis - fromMillis >= BY_MINUTE_FROM_MILLIS ? 60_000 : 1_000;
            for (long since = 0; since <= toMillis - fromMillis; since += stepMillis) {
                ticks.add(new Tick(fromMillis + since, plain(since, unitMillis)));
            }
        }
        return ticks;
    }

    /** What the ticks count. */
    String unit() {
        if (isByClock()) {
            return "clock time";
        }
        return (toMillis - fromMillis >= BY_MINUTE_FROM_MILLIS ? "min since " : "s since ")
                + SECOND.format(wallAtFrom.atZone(zone));
    }

    /** The clock on the wall at {@code atMillis}, to the minute. */
    String clock(long atMillis) {
        return MINUTE.format(wallAtFrom.plusMillis(atMillis - fromMillis).atZone(zone));
    }

    private boolean isByClock() {
        return toMillis - fromMillis > BY_CLOCK_FROM_MILLIS;
    }

    private long stepMillis() {
        double raw = (toMillis - fromMillis) / 1000.0 / TICKS_MAX;
        return 1000L * STEPS_SECONDS.stream().filter(step -> step >= raw).findFirst()
                .orElse(STEPS_SECONDS.getLast() * (int) Math.ceil(raw / STEPS_SECONDS.getLast()));
    }

    private static String plain(long millis, long unitMillis) {
        return millis % unitMillis == 0 ? String.valueOf(millis / unitMillis)
                : String.format(Locale.ROOT, "%.1f", (double) millis / unitMillis);
    }

    /** The window with room for {@code atMillis}, where that lies behind its end. */
    public ChartWindow reaching(Stream<Long> atMillis) {
        return new ChartWindow(fromMillis, atMillis.reduce(toMillis, Math::max), wallAtFrom, zone);
    }
}
