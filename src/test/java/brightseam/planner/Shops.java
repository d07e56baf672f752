package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

/** Random shops, the same for the same seed: 2 to 6 baskets, 3 to 8 tanks, 1 to 3 pairs of hands. */
public final class Shops {

    private static final int HOUR = 3600;

    private final Random random;
    private final List<Tank> tanks = new ArrayList<>();
    private final Map<StationId, Double> places = new HashMap<>();

    private Shops(long seed) {
        random = new Random(seed);
    }

    /** The shop of {@code seed}. */
    public static LineProblem random(long seed) {
        return new Shops(seed).shop();
    }

    private LineProblem shop() {
        int count = 3 + random.nextInt(6);
        for (int i = 0; i < count; i++) {
            StationId id = new StationId("T-" + i);
            tanks.add(new Tank(id, 1 + random.nextInt(2), random.nextInt(12) == 0));
            places.put(id, random.nextInt(16) * 1.0);
        }
        places.put(new StationId("DOOR"), 0.0);
        List<Stage> route = route();
        List<Stage> other = route();
        List<Basket> baskets = new ArrayList<>();
        int number = 2 + random.nextInt(5);
        for (int i = 0; i < number; i++) {
            baskets.add(basket("B-" + i, random.nextInt(3) == 0 ? other : route));
        }
        return new LineProblem(tanks, hands(), Walking.along(places, 1.5), baskets, sessions(), goal());
    }

    private List<Stage> route() {
        List<Stage> route = new ArrayList<>();
        int stages = 2 + random.nextInt(4);
        for (int i = 0; i < stages; i++) {
            int min = 30 + 10 * random.nextInt(40);
            Stage stage = Stage.of(new StepId("step-" + i), stations(), min)
                    .handled(random.nextInt(12), random.nextInt(12), random.nextInt(8));
            if (random.nextInt(2) == 0) {
                stage = stage.upTo(min + 10 + random.nextInt(200));
            }
            if (random.nextInt(3) == 0) {
                stage = stage.attended();
            }
            if (i > 0 && random.nextInt(4) == 0) {
                stage = stage.waiting();
            }
            if (i > 0 && random.nextInt(5) == 0) {
                stage = new Stage(stage.step(), route.getLast().stations(), min, stage.holdMaxSeconds(),
                        OptionalInt.empty(), 0, 5, 0, stage.isAttended(), false, true);
            }
            if (random.nextInt(3) == 0) {
                stage = stage.withGapMax(OptionalInt.of(60 + random.nextInt(120)));
            }
            route.add(stage);
        }
        return route;
    }

    private List<StationId> stations() {
        List<StationId> some = new ArrayList<>();
        some.add(tanks.get(random.nextInt(tanks.size())).id());
        StationId second = tanks.get(random.nextInt(tanks.size())).id();
        if (random.nextInt(3) == 0 && !some.contains(second)) {
            some.add(second);
        }
        return some;
    }

    private Basket basket(String label, List<Stage> route) {
        Progress progress = Progress.waitingAt(new StationId("DOOR"));
        int skipped = 0;
        if (random.nextInt(6) == 0) {
            skipped = random.nextInt(route.size());
            Stage stage = route.get(skipped);
            progress = new Progress.InStage(stage.stations().getFirst(), -random.nextInt(stage.holdMinSeconds()));
        } else if (random.nextInt(8) == 0) {
            progress = new Progress.Waiting(new StationId("DOOR"), OptionalInt.of(60 + random.nextInt(600)));
        }
        List<Stage> left = route.subList(skipped, route.size());
        Optional<PartWindow> window = left.size() < 2 || random.nextInt(2) == 0 ? Optional.empty()
                : Optional.of(PartWindow.of(left.size() - 2, HOUR, left.size() - 1, 4 * HOUR));
        return new Basket(label, random.nextInt(3) == 0 ? Optional.empty()
                : Optional.of(new KitId("K-" + random.nextInt(2))), progress, 60 * random.nextInt(3), left, window);
    }

    private List<Hands> hands() {
        List<Hands> hands = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            int noon = 1200 + random.nextInt(2400);
            List<Shift> shifts = random.nextInt(2) == 0 ? List.of(new Shift(0, 3 * HOUR))
                    : List.of(new Shift(0, noon), new Shift(noon + 900, 4 * HOUR));
            hands.add(new Hands(new BadgeId("P-" + i), shifts,
                    random.nextInt(3) == 0 ? Optional.of(new StationId("DOOR")) : Optional.empty()));
        }
        return hands;
    }

    private List<Session> sessions() {
        return List.of(new Session(new KitId("K-0"), HOUR + random.nextInt(2 * HOUR), 300, 600),
                new Session(new KitId("K-1"), 2 * HOUR + random.nextInt(2 * HOUR), 300, 600));
    }

    private Goal goal() {
        return switch (random.nextInt(3)) {
            case 0 -> new Goal.ForSessions();
            case 1 -> new Goal.Soonest();
            default -> new Goal.ReadyBy(HOUR + random.nextInt(HOUR));
        };
    }
}
