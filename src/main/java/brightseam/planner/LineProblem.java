package brightseam.planner;

import brightseam.kernel.KitId;
import brightseam.kernel.StationId;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Everything that a plan of the line depends on.
 *
 * @param tanks the stations that take baskets
 * @param hands who moves them
 * @param walking the ways between all places
 * @param baskets what is to be cleaned
 * @param sessions when kits are due; a kit without a session is due never
 * @param goal what the plan is good for
 */
public record LineProblem(
        List<Tank> tanks,
        List<Hands> hands,
        Walking walking,
        List<Basket> baskets,
        List<Session> sessions,
        Goal goal) {

    /** Copies the lists; refuses two baskets, tanks or persons of one name, and stages at tanks that are not there. */
    public LineProblem {
        tanks = List.copyOf(tanks);
        hands = List.copyOf(hands);
        baskets = List.copyOf(baskets);
        sessions = List.copyOf(sessions);
        Set<StationId> known = new HashSet<>();
        tanks.forEach(tank -> once(known.add(tank.id()), tank.id()));
        Set<Object> seen = new HashSet<>();
        baskets.forEach(basket -> once(seen.add(basket.label()), basket.label()));
        hands.forEach(person -> once(seen.add(person.person()), person.person()));
        for (Basket basket : baskets) {
            for (Stage stage : basket.stages()) {
                once(known.containsAll(stage.stations()), basket.label() + " " + stage.step());
            }
        }
    }

    private static void once(boolean fine, Object name) {
        if (!fine) {
            throw new IllegalArgumentException("named twice, or at a tank that is not there: " + name);
        }
    }

    /** The tank called {@code id}. */
    public Tank tank(StationId id) {
        return tanks.stream().filter(tank -> tank.id().equals(id)).findFirst().orElseThrow();
    }

    /** The session that a basket's kit is due for; empty where there is none, or where the goal leaves it aside. */
    public Optional<Session> sessionOf(Basket basket) {
        return goal instanceof Goal.ReadyBy ? Optional.empty() : basket.kit().flatMap(this::session);
    }

    /** Whether a basket may be left out of the plan. */
    public boolean mayLeaveOut(Basket basket) {
        return goal instanceof Goal.ReadyBy && basket.mayStay();
    }

    /** No plan reaches beyond, in seconds: the last shift, and the longest hold that may still run behind it. */
    public int horizonSeconds() {
        int shifts = hands.stream().mapToInt(Hands::lastSecond).max().orElse(0);
        int holds = baskets.stream().flatMap(basket -> basket.stages().stream())
                .mapToInt(stage -> stage.holdMinSeconds() + stage.clearSeconds()).max().orElse(0);
        return shifts + holds;
    }

    /** The same with other baskets. */
    public LineProblem withBaskets(List<Basket> others) {
        return new LineProblem(tanks, hands, walking, others, sessions, goal);
    }

    /** The same with other tanks. */
    public LineProblem withTanks(List<Tank> others) {
        return new LineProblem(others, hands, walking, baskets, sessions, goal);
    }

    /** The same with other hands. */
    public LineProblem withHands(List<Hands> others) {
        return new LineProblem(tanks, others, walking, baskets, sessions, goal);
    }

    /** The same with other sessions. */
    public LineProblem withSessions(List<Session> others) {
        return new LineProblem(tanks, hands, walking, baskets, others, goal);
    }

    /** The same with another goal. */
    public LineProblem withGoal(Goal other) {
        return new LineProblem(tanks, hands, walking, baskets, sessions, other);
    }

    private Optional<Session> session(KitId kit) {
        return sessions.stream().filter(session -> session.kit().equals(kit)).findFirst();
    }
}
