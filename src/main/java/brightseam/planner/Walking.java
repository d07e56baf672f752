package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How long the way from place to place takes, in whole seconds, with a basket or without.
 *
 * <p>Always the shortest way: where a detour is quicker, the detour counts.
 */
public final class Walking {

    private final Map<StationId, Integer> numbers = new HashMap<>();
    private final int[][] seconds;

    private Walking(List<StationId> places, int[][] direct) {
        for (int i = 0; i < places.size(); i++) {
            numbers.put(places.get(i), i);
        }
        seconds = shortest(direct);
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

    private static int[][] shortest(int[][] direct) {
        int[][] best = new int[direct.length][];
        for (int i = 0; i < direct.length; i++) {
            best[i] = direct[i].clone();
        }
        for (int over = 0; over < best.length; over++) {
            for (int[] row : best) {
                for (int to = 0; to < best.length; to++) {
                    row[to] = Math.min(row[to], row[over] + best[over][to]);
                }
            }
        }
        return best;
    }
}
