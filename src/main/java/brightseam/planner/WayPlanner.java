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

    /** A tank's room that an errand needs, as offsets from its start. */
    private record Room(StationId station, int from, int until) {}

    private static final int NEVER = Integer.MAX_VALUE / 4;

    private final LineProblem problem;
    private final Basket basket;
    private final List<StationId> stations;
    private final Occupancy occupied;
    private final List<Errand> errands;
    private final int[] length;
    private final int[] earliest;
    private final int[] start;
    private final List<BadgeId> persons = new ArrayList<>();

    WayPlanner(LineProblem problem, Basket basket, List<StationId> stations, Occupancy occupied) {
        this.problem = problem;
        this.basket = basket;
        this.stations = stations;
        this.occupied = occupied;
        errands = Errand.of(basket);
        length = errands.stream().mapToInt(this::length).toArray();
        earliest = new int[errands.size()];
        start = new int[errands.size()];
    }

    /** The way that begins no earlier than {@code notBefore}; empty where there is none. */
    Optional<Schedule.Way> plan(int notBefore) {
        if (!gapsHold()) {
            return Optional.empty();
        }
        if (!errands.isEmpty()) {
            earliest[0] = firstEarliest(notBefore);
        }
        int now = 0;
        while (now < errands.size()) {
            if (now > 0) {
                int end = start[now - 1] + length[now - 1];
                earliest[now] = Math.max(earliest[now], end + delayMin(now));
            }
            Optional<Occupancy.Slot> slot = earliestSlot(now);
            if (slot.isEmpty()) {
                return Optional.empty();
            }
            start[now] = slot.get().start();
            int back = backTo(now);
            if (back > earliestBefore(now)) {
                if (now == 0) {
                    return Optional.empty();
                }
                earliest[now - 1] = back;
                now--;
            } else {
                if (persons.size() > now) {
                    persons.subList(now, persons.size()).clear();
                }
                persons.add(slot.get().person());
                now++;
            }
        }
        return Optional.of(way());
    }

    private int earliestBefore(int errand) {
        return errand == 0 ? 0 : start[errand - 1];
    }

    /** When the errand before has to begin at least, so that this one is not too late; for the first, 1 if it is. */
    private int backTo(int errand) {
        if (errand == 0) {
            return start[0] > firstLatest() ? 1 : 0;
        }
        int latest = start[errand - 1] + length[errand - 1] + delayMax(errand);
        int back = start[errand] > latest ? start[errand - 1] + start[errand] - latest : 0;
        int left = errands.get(errand).fromStage();
        if (errands.get(errand - 1).leavesInStage().isPresent()) {
            Stage rule = basket.stages().get(left);
            int in = start[errand - 1] + length[errand - 1] - rule.lowerSeconds();
            int free = occupied.roomFrom(stations.get(left), in, start[errand] + rule.clearSeconds());
            back = Math.max(back, free > in ? start[errand - 1] + free - in : 0);
        }
        return back;
    }

    private Optional<Occupancy.Slot> earliestSlot(int number) {
        Errand errand = errands.get(number);
        StationId from = errand.fromStage() < 0 ? basket.progress().at() : stations.get(errand.fromStage());
        List<Room> rooms = rooms(errand);
        int at = earliest[number];
        while (true) {
            Optional<Occupancy.Slot> slot = occupied.hands(at, length[number], from, stations.get(errand.toStage()));
            if (slot.isEmpty()) {
                return slot;
            }
            int moved = slot.get().start();
            for (Room room : rooms) {
                moved = occupied.roomFrom(room.station(), moved + room.from(), moved + room.until()) - room.from();
            }
            if (moved == slot.get().start()) {
                return slot;
            }
            at = moved;
        }
    }

    private List<Room> rooms(Errand errand) {
        List<Room> rooms = new ArrayList<>();
        int offset = 0;
        for (Errand.Piece piece : errand.pieces()) {
            Stage rule = basket.stages().get(piece.stage());
            int after = offset + length(piece);
            if (piece.kind() == Action.Kind.LOWER) {
                rooms.add(new Room(stations.get(piece.stage()), offset,
                        after + rule.holdMinSeconds() + rule.clearSeconds()));
            }
            offset = after;
        }
        return rooms;
    }

    private int firstEarliest(int notBefore) {
        return switch (basket.progress()) {
            case Progress.Waiting ignored -> Math.max(0, Math.max(notBefore, basket.earliestStartSeconds()));
            case Progress.InStage begun -> errands.getFirst().first().kind() == Action.Kind.ATTEND ? 0
                    : Math.max(0, begun.sinceSeconds() + basket.stages().getFirst().holdMinSeconds());
        };
    }

    private int firstLatest() {
        Stage first = basket.stages().getFirst();
        return switch (basket.progress()) {
            case Progress.Waiting waiting -> waiting.latestStartSeconds().isEmpty() ? NEVER
                    : waiting.latestStartSeconds().getAsInt() - first.lowerSeconds()
                            - problem.walking().seconds(waiting.at(), stations.getFirst());
            case Progress.InStage begun -> errands.getFirst().first().kind() == Action.Kind.ATTEND ? 0
                    : first.holdMaxSeconds().isEmpty() ? NEVER
                            : begun.sinceSeconds() + first.holdMaxSeconds().getAsInt();
        };
    }

    private int delayMin(int errand) {
        return errands.get(errand - 1).setsDown() ? 0
                : basket.stages().get(errands.get(errand - 1).toStage()).holdMinSeconds();
    }

    private int delayMax(int errand) {
        int stage = errands.get(errand - 1).toStage();
        Stage rule = basket.stages().get(stage);
        if (!errands.get(errand - 1).setsDown()) {
            return rule.holdMaxSeconds().orElse(NEVER);
        }
        int carried = length(new Errand.Piece(Action.Kind.CARRY, stage));
        var gap = basket.stages().get(stage - 1).gapMaxSeconds();
        return gap.isEmpty() ? NEVER : gap.getAsInt() - carried - rule.lowerSeconds();
    }

    private boolean gapsHold() {
        for (int number = 1; number <= basket.last(); number++) {
            int gap = basket.stages().get(number - 1).gapMaxSeconds().orElse(NEVER);
            int needed = length(new Errand.Piece(Action.Kind.CARRY, number))
                    + basket.stages().get(number).lowerSeconds();
            if (needed > gap) {
                return false;
            }
        }
        return true;
    }

    private int length(Errand errand) {
        return errand.pieces().stream().mapToInt(this::length).sum();
    }

    private int length(Errand.Piece piece) {
        Stage rule = basket.stages().get(piece.stage());
        int number = piece.stage();
        return switch (piece.kind()) {
            case CARRY -> number == 0 ? problem.walking().seconds(basket.progress().at(), stations.getFirst())
                    : basket.stages().get(number - 1).clearSeconds()
                            + problem.walking().seconds(stations.get(number - 1), stations.get(number));
            case LOWER -> rule.lowerSeconds();
            case ATTEND -> number == 0 && basket.progress() instanceof Progress.InStage begun
                    ? Math.max(0, begun.sinceSeconds() + rule.holdMinSeconds()) : rule.holdMinSeconds();
            case LIFT_OUT -> rule.clearSeconds();
        };
    }

    private Schedule.Way way() {
        int[] starts = new int[stations.size()];
        int[] ends = new int[stations.size()];
        if (basket.progress() instanceof Progress.InStage begun) {
            starts[0] = begun.sinceSeconds();
        }
        for (Errand errand : errands) {
            int at = start[errand.number()];
            for (Errand.Piece piece : errand.pieces()) {
                switch (piece.kind()) {
                    case CARRY -> {
                        if (piece.stage() > 0) {
                            ends[piece.stage() - 1] = at;
                        }
                    }
                    case LOWER -> starts[piece.stage()] = at + length(piece);
                    case ATTEND -> ends[piece.stage()] = at + length(piece);
                    case LIFT_OUT -> ends[piece.stage()] = at;
                }
                at += length(piece);
            }
        }
        finishLast(starts, ends);
        return new Schedule.Way(stations, starts, ends, persons);
    }

    /** A last stage that nobody lifts the basket out of ends by itself. */
    private void finishLast(int[] starts, int[] ends) {
        Stage last = basket.stages().getLast();
        if (!last.isAttended() && last.clearSeconds() == 0) {
            ends[basket.last()] = Math.max(0, starts[basket.last()] + last.holdMinSeconds());
        }
    }
}
