package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the earliest way of one basket over given stations through what is already occupied.
 *
 * <p>Each errand is begun as early as hands and tanks allow; where that overruns a longest hold or a gap, or a tank is
 * wanted by somebody else before the basket can leave it, the errand before is begun later. Times only ever grow, so
 * it ends.
 */
final class WayPlanner {

    private final Occupancy occupied;
    private final Passage passage;
    private final List<Errand> errands;
    private final int[] length;
    private final int[] earliest;
    private final int[] start;
    private final List<BadgeId> persons = new ArrayList<>();

    WayPlanner(LineProblem problem, Basket basket, List<StationId> stations, Occupancy occupied) {
        this.occupied = occupied;
        passage = new Passage(problem, basket);
        stations.toArray(passage.stations);
        errands = passage.errands;
        length = errands.stream().mapToInt(passage::length).toArray();
        earliest = new int[errands.size()];
        start = new int[errands.size()];
    }

    /** The way that begins no earlier than {@code notBefore}; empty where there is none. */
    Optional<Schedule.Way> plan(int notBefore) {
        if (!errands.stream().allMatch(passage::gapsHold)) {
            return Optional.empty();
        }
        if (!errands.isEmpty()) {
            earliest[0] = passage.firstEarliest(notBefore);
        }
        int now = 0;
        while (now >= 0 && now < errands.size()) {
            now = step(now);
        }
        if (now < 0) {
            return Optional.empty();
        }
        errands.forEach(errand -> passage.fix(errand, start[errand.number()]));
        return Optional.of(passage.way(persons));
    }

    /** Puts one errand in: the next to look at, the one before where that has to begin later, or -1. */
    private int step(int now) {
        if (now > 0) {
            int end = start[now - 1] + length[now - 1];
            earliest[now] = Math.max(earliest[now], end + passage.delayMin(errands.get(now)));
        }
        Optional<Occupancy.Slot> slot = occupied.slot(passage, errands.get(now), earliest[now]);
        if (slot.isEmpty()) {
            return -1;
        }
        start[now] = slot.get().start();
        if (now == 0 && start[0] > passage.firstLatest()) {
            return -1;
        }
        int back = now == 0 ? 0 : backTo(now);
        if (now > 0 && back > start[now - 1]) {
            earliest[now - 1] = back;
            return now - 1;
        }
        if (persons.size() > now) {
            persons.subList(now, persons.size()).clear();
        }
        persons.add(slot.get().person());
        return now + 1;
    }

    /** When the errand before has to begin at least, so that this one is not too late. */
    private int backTo(int errand) {
        int latest = start[errand - 1] + length[errand - 1] + passage.delayMax(errands.get(errand));
        int back = start[errand] > latest ? start[errand - 1] + start[errand] - latest : 0;
        int left = errands.get(errand).fromStage();
        if (errands.get(errand - 1).leavesInStage().isPresent()) {
            Stage rule = passage.basket.stages().get(left);
            int in = start[errand - 1] + length[errand - 1] - rule.lowerSeconds();
            int free = occupied.roomFrom(passage.stations[left], in, start[errand] + rule.clearSeconds());
            back = Math.max(back, free > in ? start[errand - 1] + free - in : 0);
        }
        return back;
    }
}
