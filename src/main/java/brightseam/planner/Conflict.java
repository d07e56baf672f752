package brightseam.planner;

import java.util.List;

/**
 * Demands that cannot all be kept.
 *
 * @param demands what stands against one another; empty where the shortest times alone leave no room for a plan
 * @param isSmallest whether it is proven that any one of them less would leave room for a plan
 */
public record Conflict(List<Demand> demands, boolean isSmallest) {

    /** Copies the list. */
    public Conflict {
        demands = List.copyOf(demands);
    }
}
