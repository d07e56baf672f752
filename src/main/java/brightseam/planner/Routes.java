package brightseam.planner;

import brightseam.kernel.StationId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What stays the same however often a problem is planned: which baskets are alike, and where errands may lead. */
final class Routes {

    /** One way of doing an errand: the stations that it leads to, how long it takes, and the room that it needs. */
    record Choice(
            List<StationId> stations, int lengthSeconds, StationId from, StationId to, List<Passage.Room> rooms) {}

    /** The ways of doing an errand from a station, and how long the shortest takes. */
    record Choices(List<Choice> all, int leastSeconds) {}

    private record Key(int basket, int errand, StationId before) {}

    private final LineProblem problem;
    private final boolean[] likeTheOneBefore;
    private final int longestWay;
    private final Map<Key, Choices> known = new HashMap<>();

    Routes(LineProblem problem) {
        this.problem = problem;
        longestWay = problem.tanks().stream().flatMapToInt(from -> problem.tanks().stream()
                .mapToInt(to -> problem.walking().seconds(from.id(), to.id()))).max().orElse(0);
        likeTheOneBefore = new boolean[problem.baskets().size()];
        for (int i = 1; i < likeTheOneBefore.length; i++) {
            likeTheOneBefore[i] = problem.baskets().get(i).isLike(problem.baskets().get(i - 1));
        }
    }

    /** The longest way between two tanks: what walking may take from the time for an errand. */
    int longestWay() {
        return longestWay;
    }

    boolean isLikeTheOneBefore(int basket) {
        return likeTheOneBefore[basket];
    }

    /** The choices for an errand of the basket whose earlier stations are in {@code passage}. */
    Choices of(int basket, Passage passage, Errand errand) {
        int first = Math.max(0, errand.fromStage() + 1);
        StationId before = first == 0 ? passage.basket.progress().at() : passage.stations[first - 1];
        Key key = new Key(basket, errand.number(), before);
        Choices choices = known.get(key);
        if (choices == null) {
            choices = find(passage, errand, before, first);
            known.put(key, choices);
        }
        return choices;
    }

    private Choices find(Passage passage, Errand errand, StationId before, int first) {
        StationId[] kept = passage.stations.clone();
        List<Choice> all = new ArrayList<>();
        int least = Integer.MAX_VALUE;
        for (List<StationId> stations
                : StationChoices.of(problem, passage.basket, before, first, errand.toStage())) {
            passage.choose(errand, stations);
            if (passage.gapsHold(errand)) {
                all.add(new Choice(stations, passage.length(errand), passage.from(errand), passage.to(errand),
                        List.copyOf(passage.rooms(errand))));
                least = Math.min(least, passage.length(errand));
            }
        }
        System.arraycopy(kept, 0, passage.stations, 0, kept.length);
        return new Choices(all, all.isEmpty() ? 0 : least);
    }
}
