package brightseam.device.shell;

import java.util.List;

/**
 * What a device is told.
 *
 * @param status the HTTP status
 * @param title in a few words; empty where the readings were taken
 * @param details what is wrong, in sentences; empty where the readings were taken
 * @param taken how many readings were taken
 * @param waitSeconds how long to wait before the next try; 0 where there is no need to
 */
public record FeedAnswer(int status, String title, List<String> details, int taken, long waitSeconds) {

    /** Copies the list. */
    public FeedAnswer {
        details = List.copyOf(details);
    }

    /** {@code count} readings were taken. */
    static FeedAnswer taken(int count) {
        return new FeedAnswer(200, "", List.of(), count, 0);
    }

    /** Nothing was taken. */
    static FeedAnswer refused(int status, String title, List<String> details) {
        return new FeedAnswer(status, title, details, 0, 0);
    }

    /** Whether the readings were taken. */
    public boolean isTaken() {
        return status == 200;
    }
}
