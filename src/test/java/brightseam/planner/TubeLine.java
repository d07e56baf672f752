package brightseam.planner;

import brightseam.kernel.BadgeId;
import brightseam.kernel.KitId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A line of eight stations for the wet steps of {@code procedures/tube.yaml}, degrease to bagging, with that
 * procedure's holds, gaps and window. Places, walking and handling times are invented for the tests.
 */
public final class TubeLine {

    /** Where baskets come from. */
    public static final StationId DOOR = new StationId("DOOR");
    /** The pickle tank. */
    public static final StationId PICKLE = new StationId("S-ACID-1");
    /** The first kit. */
    public static final KitId KIT = new KitId("K-1");

    private static final int HOUR = 3600;
    private static final StationId DEGREASE = new StationId("S-ALK-1");
    private static final StationId RINSE = new StationId("S-RINSE-1");
    private static final StationId RINSE_2 = new StationId("S-RINSE-2");
    private static final StationId DI = new StationId("S-DI-1");
    private static final StationId DRYER = new StationId("S-DRY-1");
    private static final StationId WIPE = new StationId("S-WIPE-1");
    private static final StationId BAG = new StationId("S-BAG-1");
    private static final Map<StationId, Double> METRES = Map.of(DOOR, 0.0, DEGREASE, 2.0, RINSE, 3.5, PICKLE, 5.0,
            RINSE_2, 6.5, DI, 8.0, DRYER, 11.0, WIPE, 15.0, BAG, 18.0);

    private TubeLine() {}

    /**
     * {@code count} baskets at the door, {@code persons} pairs of hands on four days of eight hours with a break.
     *
     * @param rinsesAttended whether somebody moves the baskets all through the rinses
     */
    public static LineProblem of(int count, int persons, boolean rinsesAttended, Goal goal) {
        List<Basket> baskets = IntStream.rangeClosed(1, count)
                .mapToObj(i -> basket(i, rinsesAttended)).toList();
        List<Session> sessions = IntStream.rangeClosed(1, kit(count)).mapToObj(kit -> new Session(
                new KitId("K-" + kit), (6 + 24 * kit) * HOUR, HOUR, 2 * HOUR)).toList();
        return new LineProblem(tanks(), hands(persons), walking(), baskets,
                goal instanceof Goal.ForSessions ? sessions : List.of(), goal);
    }

    /** Twenty baskets make a kit, and each day from the second on has a session. */
    private static int kit(int basket) {
        return (basket + 19) / 20;
    }

    private static Basket basket(int number, boolean rinsesAttended) {
        return new Basket("B-%04d".formatted(number), Optional.of(new KitId("K-" + kit(number))),
                Progress.waitingAt(DOOR), 0, stages(rinsesAttended),
                Optional.of(PartWindow.of(8, 4 * HOUR, 9, 48 * HOUR)));
    }

    /** The eight stations. */
    public static List<Tank> tanks() {
        return List.of(new Tank(DEGREASE, 2, false), new Tank(RINSE, 1, false), new Tank(PICKLE, 1, false),
                new Tank(RINSE_2, 1, false), new Tank(DI, 1, false), new Tank(DRYER, 3, false),
                new Tank(WIPE, 1, false), new Tank(BAG, 1, false));
    }

    /** Ways along the line at one metre a second. */
    public static Walking walking() {
        return Walking.along(METRES, 1);
    }

    /** Persons with four days before them. */
    public static List<Hands> hands(int persons) {
        List<Hands> hands = new ArrayList<>();
        for (int i = 1; i <= persons; i++) {
            List<Shift> shifts = new ArrayList<>();
            for (int day = 0; day < 4; day++) {
                shifts.add(new Shift(day * 24 * HOUR, day * 24 * HOUR + 4 * HOUR));
                shifts.add(new Shift(day * 24 * HOUR + 4 * HOUR + HOUR / 2, day * 24 * HOUR + 8 * HOUR + HOUR / 2));
            }
            hands.add(new Hands(new BadgeId("P-010" + i), shifts, Optional.empty()));
        }
        return hands;
    }

    private static List<Stage> stages(boolean rinsesAttended) {
        Stage rinse = stage("degrease-rinse", 120, 600, RINSE, RINSE_2).handled(5, 5, 5);
        Stage second = stage("pickle-rinse", 120, 300, RINSE, RINSE_2).handled(5, 5, 5);
        Stage deionised = stage("deionised-rinse", 60, 120, DI).handled(5, 5, 0);
        return List.of(
                stage("alkaline-degrease", 600, 60, DEGREASE).upTo(1800).handled(10, 5, 10),
                rinsesAttended ? rinse.attended() : rinse,
                stage("acid-pickle", 60, 30, PICKLE).upTo(300).attended().handled(5, 5, 5),
                rinsesAttended ? second.attended() : second,
                rinsesAttended ? deionised.attended() : deionised,
                stage("water-break-check", 60, 600, DI).attended().atStationBefore(),
                stage("dry", 900, 4 * HOUR, DRYER).handled(20, 20, 0),
                stage("solvent-wipe", 120, 1800, WIPE).attended().waiting(),
                stage("white-cloth-check", 120, 1800, WIPE).attended().atStationBefore(),
                stage("bagging", 180, 0, BAG).withGapMax(OptionalInt.empty()).attended().waiting());
    }

    private static Stage stage(String step, int min, int gapMax, StationId... stations) {
        return Stage.of(new StepId(step), List.of(stations), min).withGapMax(OptionalInt.of(gapMax));
    }
}
