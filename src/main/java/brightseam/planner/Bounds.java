package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * What no plan can be below, by adding up: the work of hands with the least walking between, inside working hours, and
 * the time that tanks are taken up, each with the shortest time that must lie before and behind.
 */
public final class Bounds {

    private final LineProblem problem;

    private Bounds(LineProblem problem) {
        this.problem = problem;
    }

    /** What {@link Measure#first} cannot be below for any plan of {@code problem}. */
    public static long first(LineProblem problem) {
        return switch (problem.goal()) {
            case Goal.ForSessions ignored -> problem.sessions().stream()
                    .mapToLong(session -> leadAtLeast(problem, session)).sum()
                    + lastEndAtLeast(problem, problem.baskets().stream()
                            .filter(basket -> problem.sessionOf(basket).isEmpty()).toList());
            case Goal.Soonest ignored -> lastEndAtLeast(problem, problem.baskets());
            case Goal.ReadyBy ignored -> 0;
        };
    }

    /** The earliest that the last of {@code baskets} can be ready, in seconds. */
    public static int lastEndAtLeast(LineProblem problem, List<Basket> baskets) {
        Bounds bounds = new Bounds(problem);
        int bound = baskets.stream().mapToInt(basket -> new Shortest(problem, basket).ready()).max().orElse(0);
        bound = Math.max(bound, bounds.byTanks(baskets));
        List<Effort> efforts = baskets.stream()
                .flatMap(basket -> Effort.fromNow(problem, basket).stream()).toList();
        for (int head : distinct(efforts, Effort::head)) {
            for (int tail : distinct(efforts, Effort::tail)) {
                List<Effort> some = among(efforts, head, tail);
                bound = Math.max(bound, some.isEmpty() ? 0 : bounds.end(some, head) + tail);
            }
        }
        return bound;
    }

    /**
     * The shortest time from the first hold of {@code session}'s kit to when the kit is due, in seconds; only baskets
     * that have not begun count.
     */
    public static int leadAtLeast(LineProblem problem, Session session) {
        List<Basket> fresh = problem.baskets().stream().filter(Basket::mayStay)
                .filter(basket -> problem.sessionOf(basket).filter(session::equals).isPresent()).toList();
        int bound = 0;
        for (Basket basket : fresh) {
            Shortest shortest = new Shortest(problem, basket);
            bound = Math.max(bound, shortest.ready() - shortest.startOf(0));
        }
        List<Effort> efforts = fresh.stream()
                .flatMap(basket -> Effort.fromFirstHold(problem, basket).stream()).toList();
        Bounds bounds = new Bounds(problem);
        for (int head : distinct(efforts, Effort::head)) {
            for (int tail : distinct(efforts, Effort::tail)) {
                List<Effort> some = among(efforts, head, tail);
                if (!some.isEmpty()) {
                    int begin = bounds.begin(some, session.dueSeconds() - tail);
                    bound = Math.max(bound, session.dueSeconds() - (begin - head));
                }
            }
        }
        return bound;
    }

    private static int[] distinct(List<Effort> efforts, ToIntFunction<Effort> what) {
        return efforts.stream().mapToInt(what).distinct().toArray();
    }

    private static List<Effort> among(List<Effort> efforts, int head, int tail) {
        return efforts.stream().filter(one -> one.head() >= head && one.tail() >= tail).toList();
    }

    /** When {@code efforts} can be done at the earliest, none begun before {@code from}. */
    private int end(List<Effort> efforts, int from) {
        long work = efforts.stream().mapToLong(Effort::work).sum();
        int most = endOf(from, work + walks(efforts, problem.hands().size()));
        int pauses = (int) shifts().filter(at -> at > from && at < most).count();
        int next = shifts().filter(at -> at >= most).min().orElse(Integer.MAX_VALUE);
        return Math.min(next, endOf(from, work + walks(efforts, problem.hands().size() + pauses)));
    }

    /** When {@code efforts} have to be begun at the latest, all done by {@code until}. */
    private int begin(List<Effort> efforts, int until) {
        long work = efforts.stream().mapToLong(Effort::work).sum();
        int least = beginOf(until, work + walks(efforts, problem.hands().size()));
        int pauses = (int) shifts().filter(at -> at > least && at < until).count();
        return beginOf(until, work + walks(efforts, problem.hands().size() + pauses));
    }

    /** Ways walked in a break cost nothing: each start of a shift lets one more go unfollowed. */
    private long walks(List<Effort> efforts, int unfollowed) {
        return EmptyWalks.atLeast(problem.walking(), efforts, unfollowed);
    }

    private IntStream shifts() {
        return problem.hands().stream().flatMap(one -> one.shifts().stream()).mapToInt(Shift::fromSeconds);
    }

    private int endOf(int from, long work) {
        int low = from;
        int high = Math.max(from, problem.horizonSeconds());
        while (low < high) {
            int middle = low + (high - low) / 2;
            if (worked(from, middle) >= work) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private int beginOf(int until, long work) {
        int low = Math.min(0, until);
        int high = until;
        while (low < high) {
            int middle = low + (high - low + 1) / 2;
            if (worked(middle, until) >= work) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    private long worked(int from, int until) {
        return problem.hands().stream().flatMap(one -> one.shifts().stream()).mapToLong(shift -> Math.max(0,
                Math.min(until, shift.untilSeconds()) - Math.max(from, shift.fromSeconds()))).sum();
    }

    private int byTanks(List<Basket> baskets) {
        Set<List<StationId>> classes = new HashSet<>();
        baskets.forEach(basket -> basket.stages().forEach(
                stage -> classes.add(stage.stations().stream().sorted().toList())));
        return classes.stream().mapToInt(tanks -> byTanks(baskets, tanks)).max().orElse(0);
    }

    private int byTanks(List<Basket> baskets, List<StationId> tanks) {
        long taken = 0;
        int head = Integer.MAX_VALUE;
        int tail = Integer.MAX_VALUE;
        for (Basket basket : baskets) {
            Shortest shortest = new Shortest(problem, basket);
            for (int number = 0; number <= basket.last(); number++) {
                if (tanks.containsAll(shortest.places(number))) {
                    taken += shortest.outOf(number) - shortest.inOf(number);
                    tail = Math.min(tail, shortest.ready() - shortest.outOf(number));
                    head = Math.min(head, shortest.inOf(number));
                }
            }
        }
        int room = tanks.stream().mapToInt(tank -> problem.tank(tank).capacityBaskets()).sum();
        return taken == 0 ? 0 : head + (int) Math.ceilDiv(taken, room) + tail;
    }
}
