package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.List;

/** A basket's way with nobody else in it, every hold and way the shortest: what no plan can undercut. */
final class Shortest {

    private final LineProblem problem;
    private final Basket basket;
    private final int[] start;
    private final int[] end;

    Shortest(LineProblem problem, Basket basket) {
        this.problem = problem;
        this.basket = basket;
        start = new int[basket.stages().size()];
        end = new int[basket.stages().size()];
        for (int number = 0; number < start.length; number++) {
            Stage stage = basket.stages().get(number);
            start[number] = number > 0 ? end[number - 1] + way(number) + stage.lowerSeconds() : first();
            end[number] = Math.max(0, start[number] + stage.holdMinSeconds());
        }
    }

    private int first() {
        return basket.progress() instanceof Progress.InStage begun ? begun.sinceSeconds()
                : Math.max(0, basket.earliestStartSeconds()) + way(0) + basket.stages().getFirst().lowerSeconds();
    }

    /** Where a stage may be done; -1 for where the basket is now. */
    List<StationId> places(int stage) {
        boolean now = stage < 0 || stage == 0 && basket.isInStage();
        return now ? List.of(basket.progress().at()) : basket.stages().get(stage).stations();
    }

    int startOf(int stage) {
        return start[stage];
    }

    /** From the start of lowering into the stage, or from now where it has begun. */
    int inOf(int stage) {
        return stage == 0 && basket.isInStage() ? 0 : start[stage] - basket.stages().get(stage).lowerSeconds();
    }

    /** To the last drip. */
    int outOf(int stage) {
        return end[stage] + basket.stages().get(stage).clearSeconds();
    }

    int ready() {
        return outOf(basket.last());
    }

    int beginOf(Errand.Piece piece) {
        int number = piece.stage();
        return switch (piece.kind()) {
            case CARRY -> number > 0 ? end[number - 1]
                    : start[0] - basket.stages().getFirst().lowerSeconds() - way(0);
            case LOWER -> inOf(number);
            case ATTEND -> Math.max(0, start[number]);
            case LIFT_OUT -> end[number];
        };
    }

    int endOf(Errand.Piece piece) {
        int number = piece.stage();
        return switch (piece.kind()) {
            case CARRY, LOWER -> piece.kind() == Action.Kind.LOWER ? start[number]
                    : start[number] - basket.stages().get(number).lowerSeconds();
            case ATTEND -> end[number];
            case LIFT_OUT -> outOf(number);
        };
    }

    /** Lift, drip and the shortest carry to a stage. */
    private int way(int number) {
        boolean stays = number > 0 && basket.stages().get(number).isAtStationBefore();
        int walk = stays ? 0 : places(number - 1).stream().flatMapToInt(from ->
                places(number).stream().mapToInt(to -> problem.walking().seconds(from, to))).min().orElse(0);
        return walk + (number == 0 ? 0 : basket.stages().get(number - 1).clearSeconds());
    }
}
