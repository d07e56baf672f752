package brightseam.ui.chamber;

import brightseam.chart.ChartFit;
import brightseam.chart.ChartPoint;
import brightseam.chart.ChartWindow;
import brightseam.chart.SeriesChart;
import brightseam.kernel.Moment;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.shell.SharedTables;
import brightseam.ui.parts.Mark;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Cards as an invented session shows them, for looking at. */
final class Samples {

    private static final Vocabulary WORDS = SharedTables.read();
    private static final Gauge MOISTURE = new Gauge("Moisture", "18", "ppm", "limit 40 ppm",
            Gauge.State.IN_ORDER, "within");
    private static final Gauge ARGON = new Gauge("Argon left", "3 h 20 min", "", "at holding flow",
            Gauge.State.PLAIN, "");
    private static final Gauge LOCK = new Gauge("Lock", "both shut", "", "air inside", Gauge.State.PLAIN, "");

    /** Stands in for what a lead draws. */
    private static final String PICTURE = "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' width='800'"
            + " height='600'%3E%3Cpath d='M80 500L400 90 720 500z M240 300h320' fill='none' stroke='%23555'"
            + " stroke-width='26'/%3E%3C/svg%3E";

    private final Moment now;

    Samples(Moment now) {
        this.now = now;
    }

    static String notice() {
        return WORDS.safetyNotice();
    }

    ChamberCard card(String name) {
        return switch (name) {
            case "check-in" -> checkIn();
            case "cautions" -> checkIn().asking(Asked.of(close()));
            case "gloves" -> checkIn().asking(Asked.of(close()).confirmed().with("G-0311"));
            case "pin" -> checkIn().asking(Asked.of(close()).confirmed().with("G-0311").confirmed());
            case "reason" -> checkIn().asking(Asked.of(leaveOut()));
            case "closed" -> closed();
            case "purging", "levels-off" -> new ChamberCard("Chamber CHB-1 · kit K-0047", "Purging",
                    new Doing.Purging(), List.of(Act.other(Act.Kind.STOP_PURGE, "Turn the argon off")),
                    List.of(new ChamberCard.Way("Lock", "chamber/CS-0012/lock")));
            case "fit" -> welding(true);
            case "unfit" -> welding(false);
            case "lock-open" -> lock(Doing.Doors.OUTER_OPEN);
            case "lock-purging" -> lock(Doing.Doors.PURGING);
            case "lock-argon" -> lock(Doing.Doors.BOTH_SHUT_ARGON);
            case "lock-inner" -> lock(Doing.Doors.INNER_OPEN);
            case "joint-asks" -> joint(false);
            case "joint" -> joint(true);
            case "arc", "arc-above" -> new ChamberCard("J03 · node 2 to strut 4", "Arc burns",
                    new Doing.ArcBurns(1, now.plus(Duration.ofSeconds(-47)), "limit 40 ppm"), List.of(), List.of());
            case "cooling" -> cooling();
            case "ending" -> ending();
            case "over" -> over();
            default -> throw new IllegalArgumentException(name);
        };
    }

    Live live(String name) {
        Gauge oxygen = switch (name) {
            case "check-in", "cautions", "gloves", "pin", "reason", "closed" ->
                new Gauge("Oxygen", "20.9", "%", "limit 40 ppm",
                    Gauge.State.PLAIN, "air");
            case "purging" -> new Gauge("Oxygen", "1\u202f690", "ppm", "limit 40 ppm", Gauge.State.ABOVE, "above");
            case "levels-off", "unfit", "arc-above" -> new Gauge("Oxygen", "62.4", "ppm", "limit 40 ppm",
                    Gauge.State.ABOVE, "above");
            default -> new Gauge("Oxygen", "24.1", "ppm", "limit 40 ppm", Gauge.State.IN_ORDER, "within");
        };
        List<String> troubles = name.equals("unfit") ? List.of("Moisture meter G-0502 silent for 14 s") : List.of();
        Strip strip = new Strip("CS-0012", "Kit K-0047 · chamber CHB-1", stops(name),
                List.of(oxygen, MOISTURE, ARGON, LOCK), troubles, true);
        return new Live(strip, oxygen, conditions(name), purge(name), name.startsWith("lock")
                ? Optional.of(new Gauge("Oxygen in the lock", "840", "ppm", "limit 500 ppm", Gauge.State.ABOVE,
                        "above"))
                : Optional.empty());
    }

    private static List<Strip.Stop> stops(String name) {
        List<String> words = List.of("Check-in", "Closed", "Purging", "Fit to weld", "Over");
        int at = switch (name) {
            case "check-in", "cautions", "gloves", "pin", "reason" -> 0;
            case "closed" -> 1;
            case "purging", "levels-off" -> 2;
            case "over" -> 4;
            default -> 3;
        };
        return java.util.stream.IntStream.range(0, words.size()).mapToObj(i -> new Strip.Stop(
                name.equals("unfit") && i == at ? "Unfit" : words.get(i), i < at ? Strip.Standing.DONE : i > at
                        ? Strip.Standing.TO_COME : name.equals("unfit") ? Strip.Standing.TROUBLE : Strip.Standing.NOW))
                .toList();
    }

    private static List<Vocabulary.Caution> cautions(String... keys) {
        return Stream.of(keys).map(WORDS.cautions()::get).toList();
    }

    private static Act close() {
        return Act.main(Act.Kind.CLOSE_CHAMBER, "Close the chamber").asking(new Act.Confirm("Close the chamber",
                List.of("9 of 9 are in, 1 left out."), cautions("leaning-in", "argon-in-pits"), List.of(),
                Optional.of("Scan the gloves that you have on"), Optional.of("Your PIN closes the chamber")));
    }

    private static Act leaveOut() {
        return Act.other(Act.Kind.LEAVE_OUT, "Leave out").to("tungsten").asking(new Act.Confirm(
                "Leave out: tungsten electrodes", List.of("It can still come through the lock."), List.of(),
                List.of("Not needed for this kit", "Comes later through the lock", "Is inside already"),
                Optional.empty(), Optional.of("The lead's PIN")));
    }

    private static ChamberCard checkIn() {
        List<Need> needs = new ArrayList<>();
        needs.add(new Need("Rear node, T-1046", "not scanned yet", Need.Standing.MISSING, List.of(leaveOut())));
        needs.add(new Need("Tungsten electrodes", "0 of 1", Need.Standing.MISSING, List.of(leaveOut())));
        needs.add(new Need("Spare chamber gloves", "left out by Bram Oduya: comes later through the lock",
                Need.Standing.LEFT_OUT, List.of()));
        for (String part : List.of("Main tube, T-1042", "Strut, T-1043", "Foot node, T-1044", "Filler wire, T-1048")) {
            needs.add(new Need(part, "6 pieces · window 7 h 10 min", Need.Standing.IN, List.of()));
        }
        return new ChamberCard("5 of 7 lines in", "Check in",
                new Doing.CheckIn("Scan what goes in: bin, traveller or label", needs),
                List.of(close().held(Optional.of("2 lines are missing.")),
                        Act.other(Act.Kind.TAKE_BACK, "Take something back")),
                List.of());
    }

    private static ChamberCard closed() {
        return new ChamberCard("Chamber CHB-1", "Closed", new Doing.Telling("The purge will take about 48 min.",
                List.of("Argon: about 9.1 m³ of 14.2 m³ left, so 5.1 m³ stay for the work.",
                        "Sweep at 120 L/min, holding at 25 L/min.", "Limit: oxygen 40 ppm, moisture 40 ppm.")),
                List.of(Act.main(Act.Kind.START_PURGE, "Start the purge").asking(new Act.Confirm("Before the purge",
                        List.of(), cautions("argon-and-air", "argon-in-pits"), List.of(),
                        Optional.empty(), Optional.of("Your PIN starts it"))),
                        Act.other(Act.Kind.ABANDON, "Give the session up")),
                List.of(new ChamberCard.Way("Lock", "x")));
    }

    private static ChamberCard welding(boolean fit) {
        List<JointLine> joints = new ArrayList<>();
        List<MapPicture.Spot> spots = new ArrayList<>();
        List<Mark.Kind> marks = List.of(Mark.Kind.SIGNED, Mark.Kind.HALF, Mark.Kind.COOLING, Mark.Kind.NOW,
                Mark.Kind.TO_COME, Mark.Kind.STOPPED);
        List<String> states = List.of("accepted", "welded, to be judged", "cooling, 2 min 10 s", "arc burns",
                "to weld", "nonconformance open");
        for (int i = 0; i < marks.size(); i++) {
            joints.add(new JointLine("J0" + (i + 1), "node 2 to strut " + (i + 1), states.get(i), marks.get(i), "x"));
            spots.add(new MapPicture.Spot("J0" + (i + 1), 180 + 130 * i, 250 + 140 * (i % 3), marks.get(i)));
        }
        return new ChamberCard(fit ? "since 14:32 · oxygen 24.1 ppm" : "2 reasons", fit ? "Fit to weld" : "Not fit",
                new Doing.Welding(fit, fit ? List.of() : List.of(
                        "Oxygen 62.4 ppm at G-0501, above the limit of 40 ppm.",
                        "Moisture meter G-0502 is silent: nobody knows the moisture."),
                        Optional.of(new MapPicture(PICTURE, spots)), joints),
                List.of(Act.other(Act.Kind.END_SESSION, "End the session")),
                List.of(new ChamberCard.Way("Lock", "x")));
    }

    private ChamberCard lock(Doing.Doors doors) {
        List<String> inside = doors == Doing.Doors.INNER_OPEN ? List.of() : List.of("S-0210", "T-1047");
        Optional<Doing.Running> clock = doors == Doing.Doors.PURGING ? Optional.of(new Doing.Running("Lock purge",
                now.plus(Duration.ofSeconds(-70)), Duration.ofMinutes(6), "the inner door may open."))
                : Optional.empty();
        String state = switch (doors) {
            case OUTER_OPEN -> "Outer door open. Air in the lock, 2 things in it.";
            case PURGING -> "Both doors shut. Argon drives the air out.";
            case BOTH_SHUT_ARGON, BOTH_SHUT_AIR -> "Both doors shut. Argon in the lock.";
            case INNER_OPEN -> "Inner door open. Pass in, pass out, shut it.";
        };
        Act act = switch (doors) {
            case OUTER_OPEN -> Act.main(Act.Kind.SHUT_OUTER, "Outer door is shut");
            case PURGING -> Act.main(Act.Kind.OPEN_INNER, "Open the inner door").held(
                    Optional.of("Purged for 1 min 10 s of 6 min."));
            case BOTH_SHUT_ARGON, BOTH_SHUT_AIR -> Act.main(Act.Kind.OPEN_INNER, "Open the inner door");
            case INNER_OPEN -> Act.main(Act.Kind.SHUT_INNER, "Inner door is shut");
        };
        return new ChamberCard("LCK-1 · pass 3", "Transfer lock", new Doing.AtLock(doors, state, inside, clock,
                Optional.empty(), doors == Doing.Doors.INNER_OPEN || doors == Doing.Doors.OUTER_OPEN ? List.of()
                        : List.of("Opening it puts the chamber at about 31 ppm, 4 min back to 24 ppm."),
                doors == Doing.Doors.OUTER_OPEN ? "Scan what goes into the lock" : doors == Doing.Doors.INNER_OPEN
                        ? "Scan what goes out" : ""),
                List.of(act), List.of(new ChamberCard.Way("Back to the session", "x")));
    }

    private ChamberCard joint(boolean armed) {
        List<Act> acts = armed ? List.of() : List.of(
                Act.main(Act.Kind.CONFIRM_BACK_SIDE, "Back side is purged"),
                Act.other(Act.Kind.ARM, "Arm with PIN").held(Optional.of("First the back side and the filler.")));
        return new ChamberCard("node 2 to strut 4 · class A · run 1", "Joint J03", new Doing.ArcReady(armed, armed,
                armed ? "Touch, or press the foot switch, when it starts" : "", armed ? "" : "Scan the filler"),
                acts, List.of(new ChamberCard.Way("Joints", "x")));
    }

    private static List<Live.Condition> conditions(String name) {
        boolean asks = name.equals("joint-asks");
        return !name.startsWith("joint") ? List.of() : List.of(
                new Live.Condition("Back side purged", asks ? "look at vent V2" : "8.2 ppm at the vent",
                        asks ? Live.Standing.ASKED : Live.Standing.HOLDS),
                new Live.Condition("Filler", asks ? "scan it" : "T-1048, grade 5 ELI",
                        asks ? Live.Standing.ASKED : Live.Standing.HOLDS),
                new Live.Condition("Welder", "Ilka Ferrow, qualified until 30 Nov 2031", Live.Standing.HOLDS),
                new Live.Condition("Oxygen", "24.1 ppm, limit 40 ppm", Live.Standing.HOLDS),
                new Live.Condition("Moisture", "18 ppm, limit 40 ppm", Live.Standing.HOLDS),
                new Live.Condition("Lock", asks ? "inner door open" : "both doors shut",
                        asks ? Live.Standing.BROKEN : Live.Standing.HOLDS),
                new Live.Condition("Clean window", "T-1042 until 19:40", Live.Standing.HOLDS));
    }

    private ChamberCard cooling() {
        return new ChamberCard("node 2 to strut 4", "J03: arc is over", new Doing.ArcOver(
                List.of("Arc 1 min 52 s, from 14:41:07 to 14:42:59.",
                        "Oxygen: highest 27.3 ppm, mean 24.6 ppm, limit 40 ppm.", "Above the limit: 0 s. Gaps: none."),
                Optional.empty(), Optional.of(new Doing.Running("Cooling in argon", now.plus(Duration.ofSeconds(-40)),
                        Duration.ofMinutes(5), "it may leave the argon.")), Optional.empty()),
                List.of(), List.of(new ChamberCard.Way("Next joint", "x")));
    }

    private ChamberCard ending() {
        return new ChamberCard("6 joints welded", "Open the chamber", new Doing.Ending(
                List.of("Room oxygen 20.8 % at G-0510, 4 s old. Hazardous below 19.5 %.",
                        "J06 is the last one that is hot."), Optional.of(new Doing.Running("J06 cools",
                        now.plus(Duration.ofSeconds(-200)), Duration.ofMinutes(5), "nothing is hot any more."))),
                List.of(Act.main(Act.Kind.END_SESSION, "Open the chamber").held(Optional.of("J06 is still hot."))),
                List.of(new ChamberCard.Way("Back to the joints", "x")));
    }

    private static ChamberCard over() {
        return new ChamberCard("ended 16:20 by Ilka Ferrow", "Session over", new Doing.Over(List.of(
                new Doing.Line("Argon used", "11.8 m³, forecast 12.4 m³"),
                new Doing.Line("Joints welded", "6 of 6, 1 with a nonconformance"),
                new Doing.Line("Lock passes", "2"), new Doing.Line("Time to fit", "51 min, forecast 48 min"))),
                List.of(), List.of(new ChamberCard.Way("Chambers", "x")));
    }

    private Optional<Live.Purge> purge(String name) {
        boolean level = name.equals("levels-off");
        if (!level && !name.equals("purging")) {
            return Optional.empty();
        }
        SeriesChart chart = chart(level ? 62 : 24, level ? 44 : 29);
        return Optional.of(new Live.Purge(chart.svg(), chart.words(), level ? "Not fit by this curve"
                : "Fit at 14:32 (14:26 to 14:41), in 23 min", level ? Optional.of("Levels off at about 62 ppm: as much"
                        + " as a leak of 3 mL/min of air, or argon with 60 ppm. Look for a glove, a door seal, a hose.")
                        : Optional.empty()));
    }

    private SeriesChart chart(double floor, int minutes) {
        long start = now.elapsedMillis() - minutes * 60_000L;
        List<ChartPoint> points = new ArrayList<>();
        List<ChartFit.Spot> curve = new ArrayList<>();
        for (int minute = 0; minute <= 60; minute++) {
            double middle = 209_460 * Math.exp(-minute / 6.0) + floor;
            if (minute <= minutes) {
                points.add(ChartPoint.good(start + minute * 60_000L, middle * (1 + 0.05 * Math.sin(minute))));
            }
            double wide = Math.exp(Math.max(0, minute - minutes) / 60.0);
            curve.add(new ChartFit.Spot(start + minute * 60_000L, middle / wide, middle, middle * wide));
        }
        Optional<ChartFit.Arrival> arrival = floor > 40 ? Optional.empty() : Optional.of(new ChartFit.Arrival(
                start + 55 * 60_000L, start + 50 * 60_000L, start + 60 * 60_000L));
        return new SeriesChart("Oxygen, analyser G-0501", "ppm", true, new ChartWindow(start, start + 62 * 60_000L,
                now.wall().minusSeconds(minutes * 60L), ZoneOffset.UTC), points, 90_000, Optional.of(40.0),
                Optional.of(new ChartFit(curve, 0.9, arrival)), List.of());
    }
}
