package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The least walking between pieces of work: each ends where it ends, and whoever did it walks to the beginning of
 * another. Which follows which is chosen as cheaply as can be (a flow of least cost), whether or not it fits in time.
 */
final class EmptyWalks {

    private final int[][] cost;
    private final int[] supply;
    private final int[] demand;
    private final int[][] flow;

    private EmptyWalks(Walking walking, Map<List<StationId>, Integer> ends, Map<List<StationId>, Integer> starts) {
        List<List<StationId>> from = new ArrayList<>(ends.keySet());
        List<List<StationId>> to = new ArrayList<>(starts.keySet());
        cost = new int[from.size()][to.size()];
        for (int i = 0; i < cost.length; i++) {
            for (int j = 0; j < to.size(); j++) {
                cost[i][j] = least(walking, from.get(i), to.get(j));
            }
        }
        supply = ends.values().stream().mapToInt(count -> count).toArray();
        demand = starts.values().stream().mapToInt(count -> count).toArray();
        flow = new int[from.size()][to.size()];
    }

    /** Seconds walked at least between {@code efforts}, where {@code unfollowed} of them are followed by none. */
    static long atLeast(Walking walking, List<Effort> efforts, int unfollowed) {
        Map<List<StationId>, Integer> ends = new LinkedHashMap<>();
        Map<List<StationId>, Integer> starts = new LinkedHashMap<>();
        for (Effort effort : efforts) {
            ends.merge(effort.to(), 1, Integer::sum);
            starts.merge(effort.from(), 1, Integer::sum);
        }
        EmptyWalks walks = new EmptyWalks(walking, ends, starts);
        long sum = 0;
        int left = efforts.size() - unfollowed;
        while (left > 0) {
            int[] step = walks.cheapest(left);
            sum += (long) step[0] * step[1];
            left -= step[0];
        }
        return sum;
    }

    /** Sends as many as go along the cheapest way: how many, and what each costs. Nodes: ends, then starts. */
    private int[] cheapest(int most) {
        int ends = supply.length;
        int[] price = new int[ends + demand.length];
        int[] before = new int[price.length];
        Arrays.fill(price, Integer.MAX_VALUE / 2);
        Arrays.fill(before, -1);
        for (int i = 0; i < ends; i++) {
            price[i] = supply[i] > 0 ? 0 : price[i];
        }
        for (int round = 0; round < price.length; round++) {
            for (int i = 0; i < ends; i++) {
                for (int j = 0; j < demand.length; j++) {
                    if (price[i] + cost[i][j] < price[ends + j]) {
                        price[ends + j] = price[i] + cost[i][j];
                        before[ends + j] = i;
                    }
                    if (flow[i][j] > 0 && price[ends + j] - cost[i][j] < price[i]) {
                        price[i] = price[ends + j] - cost[i][j];
                        before[i] = ends + j;
                    }
                }
            }
        }
        int last = -1;
        for (int j = 0; j < demand.length; j++) {
            if (demand[j] > 0 && (last < 0 || price[ends + j] < price[last])) {
                last = ends + j;
            }
        }
        return new int[] {send(last, before, Math.min(most, demand[last - ends])), price[last]};
    }

    private int send(int last, int[] before, int most) {
        int ends = supply.length;
        int count = most;
        int first = last;
        while (before[first] >= 0) {
            if (first < ends) {
                count = Math.min(count, flow[first][before[first] - ends]);
            }
            first = before[first];
        }
        count = Math.min(count, supply[first]);
        for (int node = last; before[node] >= 0; node = before[node]) {
            if (node >= ends) {
                flow[before[node]][node - ends] += count;
            } else {
                flow[node][before[node] - ends] -= count;
            }
        }
        supply[first] -= count;
        demand[last - ends] -= count;
        return count;
    }

    private static int least(Walking walking, List<StationId> from, List<StationId> to) {
        return from.stream().flatMapToInt(one -> to.stream().mapToInt(other -> walking.seconds(one, other)))
                .min().orElse(0);
    }
}
