package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.List;

/**
 * An errand as a bound sees it: how long it takes at least, and what has to be before and behind it.
 *
 * @param head seconds from now, or from the basket's first hold, before it can begin
 * @param work seconds of somebody's hands
 * @param tail seconds from its end until the basket is ready
 * @param from where it may begin
 * @param to where it may end
 */
record Effort(int head, int work, int tail, List<StationId> from, List<StationId> to) {

    /** The errands of {@code basket}, heads counted from now. */
    static List<Effort> fromNow(LineProblem problem, Basket basket) {
        Shortest least = new Shortest(problem, basket);
        return of(basket, least, 0);
    }

    /** The errands of {@code basket}, heads counted from its first hold; the first one lies before that. */
    static List<Effort> fromFirstHold(LineProblem problem, Basket basket) {
        Shortest least = new Shortest(problem, basket);
        return of(basket, least, -least.startOf(0));
    }

    private static List<Effort> of(Basket basket, Shortest least, int shift) {
        List<Effort> efforts = new ArrayList<>();
        for (Errand errand : Errand.of(basket)) {
            int begins = least.beginOf(errand.first());
            int ends = least.endOf(errand.last());
            efforts.add(new Effort(begins + shift, ends - begins, least.ready() - ends,
                    least.places(errand.fromStage()), least.places(errand.toStage())));
        }
        return efforts;
    }
}
