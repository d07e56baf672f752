package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Plans forward in time as a foreman would: whoever is free takes the errand that can begin first, some sorts of errand
 * liked better than others, and none that would let a basket elsewhere stand too long.
 */
final class DispatchPlanner {

    /** An errand that could be next. */
    private record Candidate(int basket, Occupancy.Slot slot, Routes.Choice way, double rank) {}

    /** A basket that has to be moved on by a time. */
    private record Deadline(int earliest, int latest, int length) {}

    private final LineProblem problem;
    private final Routes routes;
    private final Occupancy occupied;
    private final List<Passage> passages = new ArrayList<>();
    private final List<List<BadgeId>> persons = new ArrayList<>();
    private final int[] next;
    private final int[] ended;
    private final int[] free;
    private final int[] notBefore;
    private final double[][] liking;

    DispatchPlanner(LineProblem problem, Routes routes, int[] notBefore, double[][] liking) {
        this.problem = problem;
        this.routes = routes;
        this.notBefore = notBefore;
        occupied = new Occupancy(problem);
        int baskets = problem.baskets().size();
        next = new int[baskets];
        ended = new int[baskets];
        free = new int[problem.hands().size()];
        for (Basket basket : problem.baskets()) {
            Passage passage = new Passage(problem, basket);
            passages.add(passage);
            persons.add(new ArrayList<>());
            if (basket.isInStage()) {
                occupied.takeRoom(basket.progress().at(), ((Progress.InStage) basket.progress()).sinceSeconds(),
                        Passage.NEVER);
            }
        }
        this.liking = liking;
    }

    /** A plan; empty where the foreman got stuck. */
    Optional<Plan> plan() {
        while (true) {
            Optional<Candidate> best = Optional.empty();
            boolean open = false;
            for (int i = 0; i < next.length; i++) {
                if (next[i] < passages.get(i).errands.size()) {
                    open = true;
                    Optional<Candidate> one = isLikeAnEarlierOne(i) ? Optional.empty() : candidate(i);
                    if (one.isPresent() && (best.isEmpty() || one.get().rank() < best.get().rank())
                            && leavesTime(one.get())) {
                        best = one;
                    }
                }
            }
            if (!open) {
                return Optional.of(schedule().toPlan(problem));
            }
            if (best.isEmpty()) {
                return Optional.empty();
            }
            take(best.get());
        }
    }

    /** Of baskets that are alike and not begun, the first stands for all. */
    private boolean isLikeAnEarlierOne(int index) {
        return index > 0 && next[index] == 0 && next[index - 1] == 0 && routes.isLikeTheOneBefore(index)
                && notBefore[index] == notBefore[index - 1] && basketOf(index).mayStay();
    }

    private Optional<Candidate> candidate(int index) {
        Passage passage = passages.get(index);
        Errand errand = passage.errands.get(next[index]);
        Optional<Candidate> best = Optional.empty();
        boolean left = leaveFor(index, true);
        for (Routes.Choice choice : routes.of(index, passage, errand).all()) {
            passage.choose(errand, choice.stations());
            Optional<Occupancy.Slot> slot = slot(index, choice);
            if (slot.isPresent()) {
                Candidate one = new Candidate(index, slot.get(), choice,
                        slot.get().start() - liking[index][errand.number()]);
                if (best.isEmpty() || one.rank() < best.get().rank()) {
                    best = Optional.of(one);
                }
            }
        }
        if (left) {
            leaveFor(index, false);
        }
        return best;
    }

    /** The first time for an errand from which the one behind it can be done too: not just before a break. */
    private Optional<Occupancy.Slot> slot(int index, Routes.Choice choice) {
        OptionalInt at = OptionalInt.of(earliest(index));
        while (at.isPresent()) {
            Optional<Occupancy.Slot> slot = occupied.slot(choice, at.getAsInt());
            if (slot.isEmpty() || slot.get().start() > latest(index)) {
                return Optional.empty();
            }
            int start = slot.get().start();
            if (mayFollow(index, start)) {
                return slot;
            }
            at = problem.hands().stream().flatMap(one -> one.shifts().stream()).mapToInt(Shift::fromSeconds)
                    .filter(begin -> begin > start).min();
        }
        return Optional.empty();
    }

    /** Takes the basket's own stay out of the tank that it leaves, or puts it back; whether there is one. */
    private boolean leaveFor(int index, boolean out) {
        Passage passage = passages.get(index);
        Basket basket = basketOf(index);
        int since;
        int stage = 0;
        if (next[index] == 0) {
            if (!(basket.progress() instanceof Progress.InStage begun)) {
                return false;
            }
            since = begun.sinceSeconds();
        } else {
            if (passage.errands.get(next[index] - 1).leavesInStage().isEmpty()) {
                return false;
            }
            stage = passage.errands.get(next[index]).fromStage();
            since = ended[index] - basket.stages().get(stage).lowerSeconds();
        }
        if (out) {
            occupied.leave(passage.stations[stage], since);
        } else {
            occupied.takeRoom(passage.stations[stage], since, Passage.NEVER);
        }
        return true;
    }

    private int earliest(int index) {
        Passage passage = passages.get(index);
        return next[index] == 0 ? passage.firstEarliest(notBefore[index])
                : ended[index] + passage.delayMin(passage.errands.get(next[index]));
    }

    private int latest(int index) {
        Passage passage = passages.get(index);
        return next[index] == 0 ? passage.firstLatest()
                : Math.min(Passage.NEVER, ended[index] + passage.delayMax(passage.errands.get(next[index])));
    }

    /** Whether somebody works when the errand behind this one has to be done. */
    private boolean mayFollow(int index, int start) {
        Passage passage = passages.get(index);
        Errand errand = passage.errands.get(next[index]);
        if (next[index] + 1 >= passage.errands.size()) {
            return true;
        }
        Errand after = passage.errands.get(next[index] + 1);
        int end = start + passage.length(errand);
        int from = end + passage.delayMin(after);
        long until = (long) end + passage.delayMax(after);
        int length = Math.max(1, routes.of(index, passage, after).leastSeconds());
        return problem.hands().stream().flatMap(one -> one.shifts().stream()).anyMatch(shift ->
                Math.max(from, shift.fromSeconds()) <= until
                        && Math.max(from, shift.fromSeconds()) + length <= shift.untilSeconds());
    }

    /** Whether every basket that has to be moved on still can be, one after another by the time allowed. */
    private boolean leavesTime(Candidate candidate) {
        int[] from = free.clone();
        int person = person(candidate.slot().person());
        Passage passage = passages.get(candidate.basket());
        Errand errand = passage.errands.get(next[candidate.basket()]);
        passage.choose(errand, candidate.way().stations());
        int end = candidate.slot().start() + candidate.way().lengthSeconds();
        from[person] = Math.max(from[person], end);
        List<Deadline> deadlines = new ArrayList<>();
        for (int i = 0; i < next.length; i++) {
            if (i != candidate.basket() && next[i] < passages.get(i).errands.size()) {
                pending(i, passages.get(i).errands.get(next[i]), earliest(i), latest(i)).ifPresent(deadlines::add);
            }
        }
        if (next[candidate.basket()] + 1 < passage.errands.size()) {
            Errand after = passage.errands.get(next[candidate.basket()] + 1);
            pending(candidate.basket(), after, end + passage.delayMin(after), end + passage.delayMax(after))
                    .ifPresent(deadlines::add);
        }
        deadlines.sort(Comparator.comparingInt(Deadline::latest));
        return deadlines.stream().allMatch(deadline -> meets(deadline, from));
    }

    private Optional<Deadline> pending(int index, Errand errand, int earliest, int latest) {
        return latest >= Passage.NEVER ? Optional.empty() : Optional.of(new Deadline(earliest, latest,
                routes.of(index, passages.get(index), errand).leastSeconds() + routes.longestWay()));
    }

    /** Whether whoever is free first is in time; if so, they are taken. */
    private boolean meets(Deadline deadline, int[] from) {
        int first = 0;
        for (int i = 1; i < from.length; i++) {
            first = from[i] < from[first] ? i : first;
        }
        int start = problem.hands().get(first)
                .firstTime(Math.max(from[first], deadline.earliest()), deadline.length());
        from[first] = start + deadline.length();
        return start >= 0 && start <= deadline.latest();
    }

    private void take(Candidate candidate) {
        int index = candidate.basket();
        Passage passage = passages.get(index);
        Errand errand = passage.errands.get(next[index]);
        passage.choose(errand, candidate.way().stations());
        int start = candidate.slot().start();
        int end = start + candidate.way().lengthSeconds();
        leave(index, errand, start);
        List<Passage.Room> rooms = candidate.way().rooms();
        boolean stays = errand.leavesInStage().isPresent() && next[index] + 1 < passage.errands.size();
        for (int i = 0; i < rooms.size(); i++) {
            Passage.Room room = rooms.get(i);
            boolean last = i == rooms.size() - 1;
            occupied.takeRoom(room.station(), start + room.from(),
                    last && stays ? Passage.NEVER : start + room.until());
        }
        occupied.takeHands(passage, errand, candidate.slot());
        passage.fix(errand, start);
        persons.get(index).add(candidate.slot().person());
        free[person(candidate.slot().person())] = Math.max(free[person(candidate.slot().person())], end);
        ended[index] = end;
        next[index]++;
    }

    /** The basket leaves the tank that it was left in. */
    private void leave(int index, Errand errand, int start) {
        Basket basket = basketOf(index);
        Passage passage = passages.get(index);
        int left = errand.fromStage();
        if (next[index] == 0 && basket.progress() instanceof Progress.InStage begun) {
            int attended = errand.first().kind() == Action.Kind.ATTEND ? passage.length(errand.first()) : 0;
            moveOut(passage.stations[0], begun.sinceSeconds(),
                    start + attended + basket.stages().getFirst().clearSeconds());
        } else if (next[index] > 0 && passage.errands.get(next[index] - 1).leavesInStage().isPresent()) {
            Stage stage = basket.stages().get(left);
            moveOut(passage.stations[left], ended[index] - stage.lowerSeconds(), start + stage.clearSeconds());
        }
    }

    private void moveOut(StationId tank, int since, int until) {
        occupied.leave(tank, since);
        occupied.takeRoom(tank, since, until);
    }

    private Basket basketOf(int index) {
        return problem.baskets().get(index);
    }

    private int person(BadgeId person) {
        for (int i = 0; i < problem.hands().size(); i++) {
            if (problem.hands().get(i).person().equals(person)) {
                return i;
            }
        }
        throw new IllegalArgumentException("not one of the hands: " + person);
    }

    private Schedule schedule() {
        List<Optional<Schedule.Way>> ways = new ArrayList<>();
        for (int i = 0; i < next.length; i++) {
            ways.add(Optional.of(passages.get(i).way(persons.get(i))));
        }
        return new Schedule(ways);
    }
}
