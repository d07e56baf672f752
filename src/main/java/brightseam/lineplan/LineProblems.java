package brightseam.lineplan;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.StationId;
import brightseam.planner.Basket;
import brightseam.planner.Goal;
import brightseam.planner.Hands;
import brightseam.planner.LineProblem;
import brightseam.planner.Session;
import brightseam.planner.Shift;
import brightseam.planner.Tank;
import brightseam.planner.Walking;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** States what the line has to do as a problem for the planner, in whole seconds from a moment on. */
public final class LineProblems {

    /** Sessions further ahead than this are planned when they come nearer; so many days of shifts are looked at. */
    static final int DAYS = 3;

    private final Layout layout;
    private final ZoneId zone;

    /** For a line laid out as {@code layout}, whose hours are read in {@code zone}. */
    public LineProblems(Layout layout, ZoneId zone) {
        this.layout = layout;
        this.zone = zone;
    }

    /**
     * How the line stands at {@code now}.
     *
     * @param lots every traveller that has not ended
     * @param stations every station of the shop
     * @param working who works at the line
     * @param due when the chamber sessions of kits begin
     */
    public LineSituation read(Moment now, List<LineLoad.Lot> lots, List<LineStation> stations,
            List<Working> working, Map<KitId, Instant> due, Aim aim) {
        List<LineStation> line = stations.stream()
                .filter(station -> layout.place(station.stationClass()).isPresent())
                .sorted(Comparator.comparing(LineStation::id)).toList();
        List<LineLoad> found = LoadFinder.loads(lots);
        List<LineLoad> plannable = found.stream().filter(load -> hasStations(load, line)).toList();
        List<Session> sessions = sessions(now, plannable, due);
        LoadStages stages = new LoadStages(layout, line, now);
        List<Basket> baskets = plannable.stream().map(load -> stages.basket(load, due)).toList();
        List<Tank> tanks = line.stream().map(station -> new Tank(
                station.id(), station.baskets(), station.locked())).toList();
        List<Hands> hands = working.stream()
                .map(person -> new Hands(person.badge(), shifts(now), Optional.empty())).toList();
        LineProblem problem = new LineProblem(tanks, hands, walking(line), baskets, sessions, goal(aim, now));
        List<LineLoad.Lot> upstream = lots.stream().filter(LoadFinder::isUpstream).toList();
        return new LineSituation(now, aim, problem, plannable, upstream.stream().map(lot -> lot.traveller().id())
                .toList(), found.stream().filter(load -> !plannable.contains(load)).map(LineLoad::label).toList());
    }

    /** Working hours that are still to come, the one that runs from zero on; what meets at midnight is one. */
    List<Shift> shifts(Moment now) {
        List<Shift> shifts = new ArrayList<>();
        LocalDate today = LocalDate.ofInstant(now.wall(), zone);
        for (int day = 0; day < DAYS; day++) {
            for (Layout.Hours hours : layout.shifts()) {
                int from = seconds(now, today.plusDays(day).atTime(hours.from()).atZone(zone).toInstant());
                int until = seconds(now, end(today.plusDays(day), hours).atZone(zone).toInstant());
                if (until > 0 && !shifts.isEmpty() && shifts.getLast().untilSeconds() >= from) {
                    shifts.add(new Shift(shifts.removeLast().fromSeconds(), until));
                } else if (until > 0) {
                    shifts.add(new Shift(Math.max(0, from), until));
                }
            }
        }
        return shifts;
    }

    private static LocalDateTime end(LocalDate day, Layout.Hours hours) {
        return hours.untilMidnight() ? day.plusDays(1).atStartOfDay() : day.atTime(hours.until());
    }

    private Goal goal(Aim aim, Moment now) {
        return switch (aim) {
            case FOR_SESSIONS -> new Goal.ForSessions();
            case SOONEST -> new Goal.Soonest();
            case STILL_TODAY -> new Goal.ReadyBy(endOfDay(now));
        };
    }

    /** When the last shift of today ends; where that is over, of tomorrow. */
    private int endOfDay(Moment now) {
        List<Shift> ahead = shifts(now);
        LocalDate day = LocalDate.ofInstant(now.wall().plusSeconds(ahead.getFirst().fromSeconds()), zone);
        return ahead.stream().filter(shift -> LocalDate.ofInstant(
                        now.wall().plusSeconds(shift.fromSeconds()), zone).equals(day))
                .mapToInt(Shift::untilSeconds).max().orElseThrow();
    }

    private List<Session> sessions(Moment now, List<LineLoad> loads, Map<KitId, Instant> due) {
        Map<KitId, Session> sessions = new HashMap<>();
        for (LineLoad load : loads) {
            for (LineLoad.Lot lot : load.lots()) {
                Optional<Instant> starts = Optional.ofNullable(due.get(lot.traveller().kit()))
                        .filter(at -> at.isAfter(now.wall().plus(layout.readyBefore())))
                        .filter(at -> at.isBefore(now.wall().plus(Duration.ofDays(DAYS))));
                starts.ifPresent(at -> sessions.merge(lot.traveller().kit(),
                        new Session(lot.traveller().kit(), seconds(now, at), (int) layout.readyBefore().toSeconds(),
                                (int) lot.procedure().window().passInMargin().toSeconds()),
                        (one, other) -> one.windowMarginSeconds() >= other.windowMarginSeconds() ? one : other));
            }
        }
        return sessions.values().stream().sorted(Comparator.comparing(Session::kit)).toList();
    }

    /** Several stations of one class stand a stride apart. */
    private Walking walking(List<LineStation> line) {
        Map<StationId, Double> positions = new HashMap<>();
        Map<String, Integer> seen = new HashMap<>();
        for (LineStation station : line) {
            int before = seen.merge(station.stationClass(), 1, Integer::sum) - 1;
            double first = layout.place(station.stationClass()).orElseThrow().positionMetres();
            positions.put(station.id(), first + before * 1.0);
        }
        return Walking.along(positions, layout.secondsPerMetre());
    }

    private static boolean hasStations(LineLoad load, List<LineStation> line) {
        return load.steps().stream().allMatch(step ->
                line.stream().anyMatch(station -> station.stationClass().equals(step.station())));
    }

    static int seconds(Moment now, Instant at) {
        return (int) Math.clamp(Duration.between(now.wall(), at).toSeconds(), Integer.MIN_VALUE / 4,
                Integer.MAX_VALUE / 4);
    }
}
