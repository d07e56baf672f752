package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import java.util.List;
import java.util.Optional;

/**
 * One person's pair of hands.
 *
 * @param person whose
 * @param shifts when they are there, in order, none touching another
 * @param at where they stand at second 0, where that is known; they walk from there
 */
public record Hands(BadgeId person, List<Shift> shifts, Optional<StationId> at) {

    /** Copies the shifts; refuses shifts out of order. */
    public Hands {
        shifts = List.copyOf(shifts);
        for (int i = 1; i < shifts.size(); i++) {
            if (shifts.get(i).fromSeconds() <= shifts.get(i - 1).untilSeconds()) {
                throw new IllegalArgumentException(person + ": shifts in order, each after a break");
            }
        }
    }

    /** When the last shift ends; zero where there is none. */
    public int lastSecond() {
        return shifts.isEmpty() ? 0 : shifts.getLast().untilSeconds();
    }

    /** Whether the person works throughout {@code from} to {@code until}. */
    public boolean works(int from, int until) {
        return shifts.stream().anyMatch(shift -> shift.holds(from, until));
    }

    /** The first second at or after {@code from} from which the person works for so long; -1 where there is none. */
    public int firstTime(int from, int lengthSeconds) {
        for (Shift shift : shifts) {
            int start = Math.max(from, shift.fromSeconds());
            if (shift.holds(start, start + lengthSeconds)) {
                return start;
            }
        }
        return -1;
    }
}
