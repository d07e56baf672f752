package brightseam.people.shell;

import java.util.HashMap;
import java.util.Map;
import org.springframework.stereotype.Component;

/**
 * Counts wrong PINs by the place that they come from, whatever the badge, so that one PIN is not tried on every badge.
 * Kept in memory: a restart forgets it, the count for each badge stays.
 */
@Component
class Places {

    static final int TRIES_MAX = 60;
    static final long WINDOW_MILLIS = 5 * 60_000L;
    private static final int PLACES_MAX = 10_000;

    private final RealTime time;
    private final Map<String, Window> windows = new HashMap<>();

    Places(RealTime time) {
        this.time = time;
    }

    private record Window(long startMillis, int tries) {}

    /** Counts one try; answers the seconds to wait, 0 where the try may go on. */
    synchronized long claimTry(String place) {
        long now = time.millis();
        if (windows.size() >= PLACES_MAX) {
            windows.values().removeIf(window -> isOver(window, now));
        }
        Window window = windows.get(place);
        if (window == null || isOver(window, now)) {
            window = new Window(now, 0);
        }
        if (window.tries() >= TRIES_MAX) {
            return Math.ceilDiv(window.startMillis() + WINDOW_MILLIS - now, 1000L);
        }
        windows.put(place, new Window(window.startMillis(), window.tries() + 1));
        return 0;
    }

    /** Takes one try back: the PIN was right. */
    synchronized void forgive(String place) {
        windows.computeIfPresent(place, (key, window) ->
                window.tries() <= 1 ? null : new Window(window.startMillis(), window.tries() - 1));
    }

    /** A window that begins in the future was begun before the wall clock was set back. */
    private static boolean isOver(Window window, long nowMillis) {
        return nowMillis - window.startMillis() >= WINDOW_MILLIS || nowMillis < window.startMillis();
    }
}
