package brightseam.planner.shell;

import brightseam.kernel.BadgeId;
import brightseam.planner.Walking;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Two errands of one person: whichever comes first, the way from its end to the other's beginning is walked. */
final class WalkingOrder {

    /**
     * The order of two errands.
     *
     * @param firstBefore true where {@code first} is done before {@code second}
     * @param samePerson true where one person does both
     */
    record Pair(HandsTask first, HandsTask second, Literal firstBefore, Literal samePerson) {}

    private final CpModel model;
    private final Walking walking;
    private final List<Pair> pairs = new ArrayList<>();

    WalkingOrder(CpModel model, Walking walking) {
        this.model = model;
        this.walking = walking;
    }

    List<Pair> pairs() {
        return pairs;
    }

    /** The first is done before the second in any case. */
    void inOrder(HandsTask first, HandsTask second) {
        if (longestWay(first, second) > 0) {
            walk(first, second, List.of(samePerson(first, second)));
        }
    }

    /** Either may be done first. */
    void inAnyOrder(HandsTask first, HandsTask second) {
        if (longestWay(first, second) == 0 && longestWay(second, first) == 0) {
            return;
        }
        Literal same = samePerson(first, second);
        Literal firstBefore = model.newBoolVar("");
        pairs.add(new Pair(first, second, firstBefore, same));
        walk(first, second, List.of(same, firstBefore));
        walk(second, first, List.of(same, firstBefore.not()));
    }

    private Literal samePerson(HandsTask first, HandsTask second) {
        if (first.by().size() == 1) {
            Literal one = first.by().values().iterator().next();
            Literal other = second.by().values().iterator().next();
            if (one.getIndex() == other.getIndex()) {
                return one;
            }
            Literal both = model.newBoolVar("");
            model.addBoolOr(new Literal[] {one.not(), other.not(), both});
            return both;
        }
        Literal same = model.newBoolVar("");
        for (Map.Entry<BadgeId, Literal> one : first.by().entrySet()) {
            model.addBoolOr(new Literal[] {one.getValue().not(), second.by().get(one.getKey()).not(), same});
        }
        return same;
    }

    private void walk(HandsTask before, HandsTask after, List<Literal> where) {
        LinearExpr between = LinearExpr.newBuilder().add(after.start()).addTerm(before.end(), -1).build();
        int least = ways(before, after).stream().mapToInt(way -> way.seconds).min().orElse(0);
        model.addGreaterOrEqual(between, least).onlyEnforceIf(where.toArray(new Literal[0]));
        for (Way way : ways(before, after)) {
            if (way.seconds > least) {
                List<Literal> all = new ArrayList<>(where);
                all.add(way.from);
                all.add(way.to);
                model.addGreaterOrEqual(between, way.seconds).onlyEnforceIf(all.toArray(new Literal[0]));
            }
        }
    }

    private int longestWay(HandsTask before, HandsTask after) {
        return ways(before, after).stream().mapToInt(way -> way.seconds).max().orElse(0);
    }

    private record Way(Literal from, Literal to, int seconds) {}

    private List<Way> ways(HandsTask before, HandsTask after) {
        List<Way> ways = new ArrayList<>();
        before.to().forEach((from, here) -> after.from().forEach(
                (to, there) -> ways.add(new Way(here, there, walking.seconds(from, to)))));
        return ways;
    }
}
