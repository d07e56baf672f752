package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What hands and tanks are taken up by already. */
final class Occupancy {

    /** When hands are free for an errand, and whose. */
    record Slot(BadgeId person, int start) {}

    /** Hands at work. */
    private record Busy(int start, int end, StationId from, StationId to) {}

    /** A basket in a tank. */
    private record Stay(int from, int until) {}

    private final LineProblem problem;
    private final Map<BadgeId, List<Busy>> hands = new HashMap<>();
    private final Map<StationId, List<Stay>> tanks = new HashMap<>();
    private final Map<StationId, Integer> rooms = new HashMap<>();

    Occupancy(LineProblem problem) {
        this.problem = problem;
        for (Tank tank : problem.tanks()) {
            tanks.put(tank.id(), new ArrayList<>());
            rooms.put(tank.id(), tank.capacityBaskets());
        }
        for (Hands one : problem.hands()) {
            List<Busy> busy = new ArrayList<>();
            one.at().ifPresent(place -> busy.add(new Busy(Integer.MIN_VALUE / 2, 0, place, place)));
            hands.put(one.person(), busy);
        }
    }

    /** The same, to go on with by itself. */
    Occupancy(Occupancy other) {
        problem = other.problem;
        other.hands.forEach((person, busy) -> hands.put(person, new ArrayList<>(busy)));
        rooms.putAll(other.rooms);
        other.tanks.forEach((tank, stays) -> tanks.put(tank, new ArrayList<>(stays)));
    }

    /** Takes somebody's hands for an errand. */
    void takeHands(Passage passage, Errand errand, Slot slot) {
        List<Busy> busy = hands.get(slot.person());
        busy.add(new Busy(slot.start(), slot.start() + passage.length(errand),
                passage.from(errand), passage.to(errand)));
        busy.sort(Comparator.comparingInt(Busy::start).thenComparingInt(Busy::end));
    }

    /** Takes a tank's room from {@code from} until {@code until}. */
    void takeRoom(StationId tank, int from, int until) {
        if (tanks.containsKey(tank) && until > from) {
            tanks.get(tank).add(new Stay(from, until));
        }
    }

    /** Gives back what {@link #takeRoom} took from {@code from} for ever. */
    void leave(StationId tank, int from) {
        tanks.get(tank).remove(new Stay(from, Passage.NEVER));
    }

    /** Takes up what {@code way} needs. */
    void add(Basket basket, Schedule.Way way) {
        Plan plan = new Schedule(List.of(Optional.of(way))).toPlan(problem.withBaskets(List.of(basket)));
        for (Errand errand : Errand.of(basket)) {
            Action first = action(plan, errand.first());
            Action last = action(plan, errand.last());
            List<Busy> busy = hands.get(first.person());
            busy.add(new Busy(first.startSeconds(), last.endSeconds(), first.from(), last.to()));
            busy.sort(Comparator.comparingInt(Busy::start).thenComparingInt(Busy::end));
        }
        for (PlannedStage stage : plan.stages()) {
            Stage rule = basket.stages().get(stage.number());
            Stay stay = new Stay(stage.startSeconds() - rule.lowerSeconds(),
                    stage.endSeconds() + rule.clearSeconds());
            if (tanks.containsKey(stage.station()) && stay.until() > stay.from()) {
                tanks.get(stage.station()).add(stay);
            }
        }
    }

    private static Action action(Plan plan, Errand.Piece piece) {
        return plan.actions().stream()
                .filter(action -> action.kind() == piece.kind() && action.stage() == piece.stage())
                .findFirst().orElseThrow();
    }

    /** The earliest start at or after {@code at} at which somebody is free for so long, walking there counted in. */
    Optional<Slot> hands(int at, int length, StationId from, StationId to) {
        Optional<Slot> best = Optional.empty();
        for (Hands one : problem.hands()) {
            int start = earliest(one, at, length, from, to);
            if (start >= 0 && (best.isEmpty() || start < best.get().start())) {
                best = Optional.of(new Slot(one.person(), start));
            }
        }
        return best;
    }

    /** The earliest start of an errand at or after {@code at} for which there are hands and room in every tank. */
    Optional<Slot> slot(Passage passage, Errand errand, int at) {
        return slot(new Routes.Choice(List.of(), passage.length(errand), passage.from(errand), passage.to(errand),
                passage.rooms(errand)), at);
    }

    /** The same for one way of doing an errand. */
    Optional<Slot> slot(Routes.Choice way, int at) {
        int from = at;
        while (true) {
            Optional<Slot> slot = hands(from, way.lengthSeconds(), way.from(), way.to());
            if (slot.isEmpty()) {
                return slot;
            }
            int moved = slot.get().start();
            for (Passage.Room room : way.rooms()) {
                moved = roomFrom(room.station(), moved + room.from(), moved + room.until()) - room.from();
            }
            if (moved == slot.get().start()) {
                return slot;
            }
            if (moved >= Passage.NEVER) {
                return Optional.empty();
            }
            from = moved;
        }
    }

    /** The earliest start at or after {@code from} from which the tank has room for {@code until - from} seconds. */
    int roomFrom(StationId tank, int from, int until) {
        List<Stay> stays = tanks.get(tank);
        int capacity = rooms.get(tank);
        int at = from;
        while (true) {
            int free = fullUntil(stays, capacity, at, at + until - from);
            if (free < 0) {
                return at;
            }
            at = free;
        }
    }

    /** The first leaving of a tank that is full at some time in between; -1 where it is never full. */
    private static int fullUntil(List<Stay> stays, int capacity, int begin, int end) {
        int first = Integer.MAX_VALUE;
        boolean full = false;
        for (Stay stay : stays) {
            if (stay.from() < end && stay.until() > begin) {
                first = Math.min(first, stay.until());
                full = full || capacity == 1 || inside(stays, Math.max(begin, stay.from())) >= capacity;
            }
        }
        return full ? first : -1;
    }

    private static int inside(List<Stay> stays, int moment) {
        int count = 0;
        for (Stay stay : stays) {
            if (stay.from() <= moment && stay.until() > moment) {
                count++;
            }
        }
        return count;
    }

    private int earliest(Hands one, int at, int length, StationId from, StationId to) {
        for (Shift shift : one.shifts()) {
            if (shift.untilSeconds() < at + length) {
                continue;
            }
            int start = Math.max(at, shift.fromSeconds());
            List<Busy> all = hands.get(one.person());
            for (int i = firstThatMatters(all, start); i < all.size(); i++) {
                Busy busy = all.get(i);
                boolean before = start + length + problem.walking().seconds(to, busy.from()) <= busy.start();
                int free = busy.end() + problem.walking().seconds(busy.to(), from);
                if (before) {
                    break;
                }
                start = Math.max(start, free);
            }
            if (shift.holds(start, start + length)) {
                return start;
            }
        }
        return -1;
    }

    /** The last errand that begins before {@code start}: what lies before it is over, since errands do not overlap. */
    private static int firstThatMatters(List<Busy> all, int start) {
        int low = 0;
        int high = all.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (all.get(middle).start() < start) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return Math.max(0, low - 2);
    }
}
