package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/** One basket's way while it is being fixed, errand by errand, attended holds as short as they may be. */
final class Passage {

    /** A tank's room that an errand needs, as offsets from its start; the last one until the next errand, at least. */
    record Room(StationId station, int from, int until) {}

    static final int NEVER = Integer.MAX_VALUE / 4;

    final Basket basket;
    final List<Errand> errands;
    final StationId[] stations;
    private final LineProblem problem;
    private final int[] starts;
    private final int[] ends;

    Passage(LineProblem problem, Basket basket) {
        this.problem = problem;
        this.basket = basket;
        errands = Errand.of(basket);
        stations = new StationId[basket.stages().size()];
        starts = new int[stations.length];
        ends = new int[stations.length];
        if (basket.progress() instanceof Progress.InStage begun) {
            stations[0] = begun.at();
            starts[0] = begun.sinceSeconds();
        }
    }

    StationId from(Errand errand) {
        return errand.fromStage() < 0 ? basket.progress().at() : stations[errand.fromStage()];
    }

    StationId to(Errand errand) {
        return stations[errand.toStage()];
    }

    /** Chooses the stations that the errand leads to. */
    void choose(Errand errand, List<StationId> choice) {
        int at = 0;
        for (int stage = Math.max(0, errand.fromStage() + 1); stage <= errand.toStage(); stage++) {
            stations[stage] = choice.get(at++);
        }
    }

    int length(Errand errand) {
        int sum = 0;
        for (Errand.Piece piece : errand.pieces()) {
            sum += length(piece);
        }
        return sum;
    }

    int length(Errand.Piece piece) {
        Stage rule = basket.stages().get(piece.stage());
        int number = piece.stage();
        return switch (piece.kind()) {
            case CARRY -> number == 0 ? problem.walking().seconds(basket.progress().at(), stations[0])
                    : basket.stages().get(number - 1).clearSeconds()
                            + problem.walking().seconds(stations[number - 1], stations[number]);
            case LOWER -> rule.lowerSeconds();
            case ATTEND -> number == 0 && basket.progress() instanceof Progress.InStage begun
                    ? Math.max(0, begun.sinceSeconds() + rule.holdMinSeconds()) : rule.holdMinSeconds();
            case LIFT_OUT -> rule.clearSeconds();
        };
    }

    List<Room> rooms(Errand errand) {
        List<Room> rooms = new ArrayList<>();
        int offset = 0;
        for (Errand.Piece piece : errand.pieces()) {
            Stage rule = basket.stages().get(piece.stage());
            int after = offset + length(piece);
            if (piece.kind() == Action.Kind.LOWER) {
                rooms.add(new Room(stations[piece.stage()], offset,
                        after + rule.holdMinSeconds() + rule.clearSeconds()));
            }
            offset = after;
        }
        return rooms;
    }

    /** Whether no gap inside the errand is longer than allowed: ways are walked without a pause. */
    boolean gapsHold(Errand errand) {
        return errand.pieces().stream()
                .filter(piece -> piece.kind() == Action.Kind.CARRY && piece.stage() > 0)
                .allMatch(piece -> length(piece) + basket.stages().get(piece.stage()).lowerSeconds()
                        <= basket.stages().get(piece.stage() - 1).gapMaxSeconds().orElse(NEVER));
    }

    int firstEarliest(int notBefore) {
        return switch (basket.progress()) {
            case Progress.Waiting ignored -> Math.max(0, Math.max(notBefore, basket.earliestStartSeconds()));
            case Progress.InStage begun -> errands.getFirst().first().kind() == Action.Kind.ATTEND ? 0
                    : Math.max(0, begun.sinceSeconds() + basket.stages().getFirst().holdMinSeconds());
        };
    }

    int firstLatest() {
        Stage first = basket.stages().getFirst();
        return switch (basket.progress()) {
            case Progress.Waiting waiting -> waiting.latestStartSeconds().isEmpty() ? NEVER
                    : waiting.latestStartSeconds().getAsInt() - first.lowerSeconds()
                            - (stations[0] == null ? 0 : problem.walking().seconds(waiting.at(), stations[0]));
            case Progress.InStage begun -> errands.getFirst().first().kind() == Action.Kind.ATTEND ? 0
                    : first.holdMaxSeconds().isEmpty() ? NEVER
                            : begun.sinceSeconds() + first.holdMaxSeconds().getAsInt();
        };
    }

    /** The shortest time from the end of the errand before to this one, not the first, in seconds. */
    int delayMin(Errand errand) {
        Errand before = errands.get(errand.number() - 1);
        return before.setsDown() ? 0 : basket.stages().get(before.toStage()).holdMinSeconds();
    }

    /** The longest. */
    int delayMax(Errand errand) {
        Errand before = errands.get(errand.number() - 1);
        int stage = before.toStage();
        Stage rule = basket.stages().get(stage);
        if (!before.setsDown()) {
            return rule.holdMaxSeconds().orElse(NEVER);
        }
        OptionalInt gap = basket.stages().get(stage - 1).gapMaxSeconds();
        return gap.isEmpty() ? NEVER
                : gap.getAsInt() - length(new Errand.Piece(Action.Kind.CARRY, stage)) - rule.lowerSeconds();
    }

    /** Fixes an errand: it begins at {@code start}. */
    void fix(Errand errand, int start) {
        int at = start;
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

    /** The way, once every errand is fixed. */
    Schedule.Way way(List<BadgeId> persons) {
        Stage last = basket.stages().getLast();
        int[] done = ends.clone();
        if (!last.isAttended() && last.clearSeconds() == 0) {
            done[basket.last()] = Math.max(0, starts[basket.last()] + last.holdMinSeconds());
        }
        return new Schedule.Way(Arrays.asList(stations), starts.clone(), done, persons);
    }
}
