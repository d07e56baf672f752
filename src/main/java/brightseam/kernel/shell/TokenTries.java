package brightseam.kernel.shell;

import java.util.HashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/** Counts wrong tokens by the place that they come from, in memory. */
public final class TokenTries {

    /** Wrong tokens from one place in a window. */
    public static final int TRIES_MAX = 20;
    /** How long they are counted, in milliseconds. */
    public static final long WINDOW_MILLIS = 60_000;
    private static final int PLACES_MAX = 10_000;

    private final LongSupplier millis;
    private final Map<String, Window> windows = new HashMap<>();

    /** Reads the time from {@code millis}, which never runs back. */
    public TokenTries(LongSupplier millis) {
        this.millis = millis;
    }

    private record Window(long startMillis, int tries) {}

    /** The seconds that {@code place} has to wait; 0 where it may try. */
    public synchronized long waitSeconds(String place) {
        Window window = windows.get(place);
        long left = window == null || window.tries() < TRIES_MAX ? 0
                : window.startMillis() + WINDOW_MILLIS - millis.getAsLong();
        return Math.max(0, Math.ceilDiv(left, 1000L));
    }

    /** Counts one wrong token. */
    public synchronized void count(String place) {
        long now = millis.getAsLong();
        if (windows.size() >= PLACES_MAX) {
            windows.values().removeIf(window -> now - window.startMillis() >= WINDOW_MILLIS);
        }
        windows.compute(place, (key, window) -> window == null || now - window.startMillis() >= WINDOW_MILLIS
                ? new Window(now, 1) : new Window(window.startMillis(), window.tries() + 1));
    }
}
