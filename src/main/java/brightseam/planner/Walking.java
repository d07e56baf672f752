package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How long the way from place to place takes, in whole seconds, with a basket or without.
 *
 * <p>Ways are walked as the table has them. Where a detour over a third place would be quicker, plans stay right but
 * may miss the best; {@link #byShortestWays} takes the detours in.
 */
public final class Walking {

    private final Map<StationId, Integer> numbers = new HashMap<>();
    private final int[][] seconds;

    private Walking(List<StationId> places, int[][] direct) {
        for (int i = 0; i < places.size(); i++) {
            numbers.put(places.get(i), i);
        }
        seconds = new int[direct.length][];
        for (int i = 0; i < direct.length; i++) {
            seconds[i] = direct[i].clone();
        }
    }

    /** From a table of direct ways: row from, column to, both in the order of {@code places}. */
    public static Walking table(List<StationId> places, int[][] directSeconds) {
        if (directSeconds.length != places.size()) {
            throw new IllegalArgumentException("a row for each place");
        }
        return new Walking(places, directSeconds);
    }

    /** From positions on one walk along the line, in metres, at a pace in seconds per metre, rounded up. */
    public static Walking along(Map<StationId, Double> positionsMetres, double secondsPerMetre) {
        List<StationId> places = positionsMetres.keySet().stream().sorted().toList();
        int[][] direct = new int[places.size()][places.size()];
        for (int from = 0; from < direct.length; from++) {
            for (int to = 0; to < direct.length; to++) {
                double metres = positionsMetres.get(places.get(from)) - positionsMetres.get(places.get(to));
                direct[from][to] = (int) Math.ceil(Math.abs(metres) * secondsPerMetre);
            }
        }
        return new Walking(places, direct);
    }

    /** The same places, every way the shortest there is. */
    public Walking byShortestWays() {
        List<StationId> places = numbers.entrySet().stream().sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey).toList();
        Walking best = new Walking(places, seconds);
        for (int over = 0; over < best.seconds.length; over++) {
            for (int[] row : best.seconds) {
                for (int to = 0; to < row.length; to++) {
                    row[to] = Math.min(row[to], row[over] + best.seconds[over][to]);
                }
            }
        }
        return best;
    }

    /**
     * Seconds from {@code from} to {@code to}.
     *
     * @throws IllegalArgumentException where a place is not in the table
     */
    public int seconds(StationId from, StationId to) {
        if (from.equals(to)) {
            return 0;
        }
        return seconds[number(from)][number(to)];
    }

    private int number(StationId place) {
        Integer number = numbers.get(place);
        if (number == null) {
            throw new IllegalArgumentException("no way known to " + place);
        }
        return number;
    }
}
