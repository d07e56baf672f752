package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Plans forward in time as a foreman would: whoever is free takes the errand that can begin first, some sorts of errand
 * liked better than others, and none that would let a basket elsewhere stand too long.
 */
final class DispatchPlanner {

    /** An errand that could be next. */
    private record Candidate(int basket, Occupancy.Slot slot, List<StationId> stations, double rank) {}

    /** A basket that has to be moved on by a time. */
    private record Deadline(int earliest, int latest, int length) {}

    private final LineProblem problem;
    private final Occupancy occupied;
    private final List<Passage> passages = new ArrayList<>();
    private final List<List<BadgeId>> persons = new ArrayList<>();
    private final int[] next;
    private final int[] ended;
    private final int[] free;
    private final int[] notBefore;
    private final double[] liking;

    DispatchPlanner(LineProblem problem, int[] notBefore, Random random) {
        this.problem = problem;
        this.notBefore = notBefore;
        occupied = new Occupancy(problem);
        int baskets = problem.baskets().size();
        next = new int[baskets];
        ended = new int[baskets];
        free = new int[problem.hands().size()];
        int most = 1;
        for (Basket basket : problem.baskets()) {
            Passage passage = new Passage(problem, basket);
            passages.add(passage);
            persons.add(new ArrayList<>());
            most = Math.max(most, passage.errands.size());
            if (basket.isInStage()) {
                occupied.takeRoom(basket.progress().at(), ((Progress.InStage) basket.progress()).sinceSeconds(),
                        Passage.NEVER);
            }
        }
        liking = random.doubles(most, 0, 600).toArray();
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
        Basket basket = problem.baskets().get(index);
        return index > 0 && next[index] == 0 && basket.mayStay() && next[index - 1] == 0
                && notBefore[index] == notBefore[index - 1] && basket.isLike(problem.baskets().get(index - 1));
    }

    private Optional<Candidate> candidate(int index) {
        Passage passage = passages.get(index);
        Errand errand = passage.errands.get(next[index]);
        Optional<Candidate> best = Optional.empty();
        boolean left = leaveFor(index, true);
        for (List<StationId> choice : choices(passage, errand)) {
            choose(passage, errand, choice);
            Optional<Occupancy.Slot> slot = passage.gapsHold(errand)
                    ? occupied.slot(passage, errand, earliest(index)) : Optional.empty();
            if (slot.isPresent() && slot.get().start() <= latest(index) && mayFollow(index, slot.get().start())) {
                Candidate one = new Candidate(index, slot.get(), choice,
                        slot.get().start() - liking[Math.min(liking.length - 1, errand.number())]);
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
        int length = Math.max(1, leastLength(passage, after));
        return problem.hands().stream().flatMap(one -> one.shifts().stream()).anyMatch(shift ->
                Math.max(from, shift.fromSeconds()) <= until
                        && Math.max(from, shift.fromSeconds()) + length <= shift.untilSeconds());
    }

    private int leastLength(Passage passage, Errand errand) {
        StationId[] kept = passage.stations.clone();
        int least = choices(passage, errand).stream().mapToInt(choice -> {
            choose(passage, errand, choice);
            return passage.length(errand);
        }).min().orElse(0);
        System.arraycopy(kept, 0, passage.stations, 0, kept.length);
        return least;
    }

    /** Whether every basket that has to be moved on still can be, one after another by the time allowed. */
    private boolean leavesTime(Candidate candidate) {
        int[] from = free.clone();
        int person = person(candidate.slot().person());
        Passage passage = passages.get(candidate.basket());
        Errand errand = passage.errands.get(next[candidate.basket()]);
        choose(passage, errand, candidate.stations());
        int end = candidate.slot().start() + passage.length(errand);
        from[person] = Math.max(from[person], end);
        List<Deadline> deadlines = new ArrayList<>();
        for (int i = 0; i < next.length; i++) {
            boolean pending = i != candidate.basket() && next[i] < passages.get(i).errands.size()
                    && latest(i) < Passage.NEVER;
            if (pending) {
                deadlines.add(new Deadline(earliest(i), latest(i),
                        leastLength(passages.get(i), passages.get(i).errands.get(next[i]))));
            }
        }
        if (next[candidate.basket()] + 1 < passage.errands.size()) {
            Errand after = passage.errands.get(next[candidate.basket()] + 1);
            int latest = Math.min(Passage.NEVER, end + passage.delayMax(after));
            if (latest < Passage.NEVER) {
                deadlines.add(new Deadline(end + passage.delayMin(after), latest, leastLength(passage, after)));
            }
        }
        deadlines.sort(Comparator.comparingInt(Deadline::latest));
        for (Deadline deadline : deadlines) {
            int first = 0;
            for (int i = 1; i < from.length; i++) {
                first = from[i] < from[first] ? i : first;
            }
            int start = problem.hands().get(first)
                    .firstTime(Math.max(from[first], deadline.earliest()), deadline.length());
            if (start < 0 || start > deadline.latest()) {
                return false;
            }
            from[first] = start + deadline.length();
        }
        return true;
    }

    private void take(Candidate candidate) {
        int index = candidate.basket();
        Passage passage = passages.get(index);
        Errand errand = passage.errands.get(next[index]);
        choose(passage, errand, candidate.stations());
        int start = candidate.slot().start();
        int end = start + passage.length(errand);
        leave(index, errand, start);
        List<Passage.Room> rooms = passage.rooms(errand);
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

    private static void choose(Passage passage, Errand errand, List<StationId> choice) {
        int at = 0;
        for (int stage = Math.max(0, errand.fromStage() + 1); stage <= errand.toStage(); stage++) {
            passage.stations[stage] = choice.get(at++);
        }
    }

    private List<List<StationId>> choices(Passage passage, Errand errand) {
        int first = Math.max(0, errand.fromStage() + 1);
        StationId before = first == 0 ? passage.basket.progress().at() : passage.stations[first - 1];
        return StationChoices.of(problem, passage.basket, before, first, errand.toStage());
    }

    private Schedule schedule() {
        List<Optional<Schedule.Way>> ways = new ArrayList<>();
        for (int i = 0; i < next.length; i++) {
            ways.add(Optional.of(passages.get(i).way(persons.get(i))));
        }
        return new Schedule(ways);
    }
}
