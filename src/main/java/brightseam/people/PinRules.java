package brightseam.people;

import brightseam.kernel.BadgeId;
import brightseam.people.PinRefusal.PinForm;
import brightseam.people.PinRefusal.PinTrivial;
import java.util.ArrayList;
import java.util.List;

/** What a PIN must look like, and how patient the shop is with wrong ones. */
public final class PinRules {

    /** The shortest PIN, in digits. Common practice for pads worked with gloves. */
    public static final int DIGITS_MIN = 4;
    /** The longest PIN, in digits. */
    public static final int DIGITS_MAX = 8;
    /** So many wrong PINs in a row close the badge. Common practice. */
    public static final int FAILURES_MAX = 5;

    private static final String UPWARDS = "01234567890";
    private static final String DOWNWARDS = "09876543210";

    private PinRules() {}

    /** What is wrong with {@code pin} as a new PIN for {@code badge}; empty where nothing is. */
    public static List<PinRefusal> broken(BadgeId badge, String pin) {
        if (!hasForm(pin)) {
            return List.of(new PinForm(DIGITS_MIN, DIGITS_MAX));
        }
        List<PinRefusal> refusals = new ArrayList<>();
        if (repeats(pin)) {
            refusals.add(new PinTrivial("repeated"));
        }
        if (UPWARDS.contains(pin) || DOWNWARDS.contains(pin)) {
            refusals.add(new PinTrivial("in a row"));
        }
        if (badge.value().replaceAll("\\D", "").equals(pin)) {
            refusals.add(new PinTrivial("as on the badge"));
        }
        return refusals;
    }

    /** Whether {@code pin} could be a PIN at all. */
    public static boolean hasForm(String pin) {
        return pin != null && pin.matches("[0-9]{" + DIGITS_MIN + "," + DIGITS_MAX + "}");
    }

    /** The pause after {@code failures} wrong PINs in a row, in seconds; none at first: a slip costs nothing. */
    public static int pauseSeconds(int failures) {
        return switch (failures) {
            case 0, 1, 2 -> 0;
            case 3 -> 5;
            default -> 15;
        };
    }

    private static boolean repeats(String pin) {
        return pin.chars().distinct().count() == 1
                || pin.length() % 2 == 0 && pin.equals(pin.substring(0, 2).repeat(pin.length() / 2));
    }
}
