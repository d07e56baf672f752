package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.List;

/** The ways to choose stations for some stages of a basket, one after another. */
final class StationChoices {

    private static final int CHOICES_MAX = 24;

    private StationChoices() {}

    /** Open stations for the stages {@code first} to {@code last}, where the basket comes from {@code before}. */
    static List<List<StationId>> of(LineProblem problem, Basket basket, StationId before, int first, int last) {
        List<List<StationId>> choices = List.of(List.of());
        for (int stage = first; stage <= last; stage++) {
            List<List<StationId>> longer = new ArrayList<>();
            for (List<StationId> choice : choices) {
                StationId from = choice.isEmpty() ? before : choice.getLast();
                for (StationId station : stations(problem, basket, stage, from)) {
                    List<StationId> more = new ArrayList<>(choice);
                    more.add(station);
                    longer.add(more);
                }
            }
            choices = longer.size() > CHOICES_MAX ? longer.subList(0, CHOICES_MAX) : longer;
        }
        return choices;
    }

    private static List<StationId> stations(LineProblem problem, Basket basket, int number, StationId before) {
        if (number == 0 && basket.progress() instanceof Progress.InStage begun) {
            return List.of(begun.at());
        }
        Stage rule = basket.stages().get(number);
        return rule.stations().stream().filter(station -> !problem.tank(station).isLocked())
                .filter(station -> number == 0 || !rule.isAtStationBefore() || station.equals(before)).toList();
    }
}
