package brightseam.ui.chamber;

import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Vocabulary;
import brightseam.procedure.Vocabulary.Caution;
import brightseam.session.ArgonUse;
import brightseam.session.ChamberSession;
import brightseam.session.SessionRefusal;
import brightseam.session.shell.ChamberGear;
import brightseam.session.shell.SessionView;
import brightseam.weld.shell.JointView;
import brightseam.words.Explanation;
import brightseam.words.Wording;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes the card of a session by its phase. What may be done, and why not, comes from the session's own rules. */
final class SessionCards {

    private static final List<String> GIVE_UP = List.of("Wrong kit", "Chamber is out of order", "Not today");
    private static final List<String> STOP = List.of("Leak to look for", "Argon to change", "Alarm");
    private static final int REASONS_SHOWN_MAX = 3;

    private final Vocabulary vocabulary;
    private final Wording wording;
    private final ZoneId zone;
    private final boolean lead;
    private final boolean acts;

    /**
     * Cards for somebody.
     *
     * @param lead whether they are a lead
     * @param acts whether they may do something at all; an inspector only looks
     */
    SessionCards(Vocabulary vocabulary, Wording wording, ZoneId zone, boolean lead, boolean acts) {
        this.vocabulary = vocabulary;
        this.wording = wording;
        this.zone = zone;
        this.lead = lead;
        this.acts = acts;
    }

    /**
     * The card of {@code view}.
     *
     * @param joints the kit's joints
     * @param map the weld map's picture
     * @param takesBack whether what is scanned is taken back
     * @param ends whether the chamber is about to be opened
     */
    ChamberCard card(SessionView view, List<JointView> joints, Optional<MapPicture> map, boolean takesBack,
            boolean ends) {
        ChamberCard card = switch (view.session().phase()) {
            case CHECK_IN -> checkIn(view, takesBack);
            case CLOSED -> closed(view);
            case PURGING -> purging(view);
            case FIT, UNFIT -> ends ? ending(view, joints) : welding(view, joints, map);
            case ENDED, ABANDONED -> over(view, joints);
        };
        return acts ? card : new ChamberCard(card.over(), card.title(), card.doing(), List.of(), card.ways());
    }

    private ChamberCard checkIn(SessionView view, boolean takesBack) {
        List<Act> offered = new ArrayList<>();
        offered.add(Act.main(Act.Kind.CLOSE_CHAMBER, "Close the chamber").held(whyOpen(view))
                .asking(new Act.Confirm("Close the chamber", List.of(Needs.count(view) + "."),
                        cautions("leaning-in", "argon-in-pits"), List.of(),
                        Optional.of("Scan the gloves that you have on, and whatever else touches the pieces"),
                        Optional.of("Your PIN closes the chamber and passes the pieces in"))));
        offered.add(Act.other(Act.Kind.TAKE_BACK, takesBack ? "Back to checking in" : "Take something back"));
        giveUp().ifPresent(offered::add);
        String ask = takesBack ? "Scan what comes out again" : "Scan what goes in";
        return new ChamberCard(Needs.count(view), takesBack ? "Take back" : "Check in",
                new Doing.CheckIn(ask, new Needs(lead && !takesBack).of(view)), offered, List.of());
    }

    private ChamberCard closed(SessionView view) {
        List<String> lines = new ArrayList<>();
        view.outlook().ifPresent(outlook -> {
            outlook.neededStandardLitres().ifPresent(litres -> lines.add("Argon for the whole session: about "
                    + cubic(litres) + outlook.argon().map(argon -> ", " + cubic(argon.leftStandardLitres())
                            + " are there, " + label(argon.supply()) + " is connected").orElse("") + "."));
            lines.add("Counted with " + Words.duration(outlook.work()) + " of work behind it.");
        });
        view.gas().limits().ifPresent(limits -> lines.add("Fit to weld at " + Ppm.atMost(limits.oxygenPpmMax())
                + " of oxygen" + limits.moisturePpmMax().map(most -> " and " + Ppm.atMost(most) + " of moisture")
                        .orElse("") + ", held for " + Words.duration(limits.dwell()) + "."));
        String takes = view.outlook().flatMap(ChamberGear.Outlook::purge)
                .map(time -> "The purge will take about " + Words.duration(minutes(time)) + ".")
                .orElse("Nobody can say how long the purge takes.");
        List<Act> offered = new ArrayList<>(List.of(Act.main(Act.Kind.START_PURGE, "Start the purge")
                .held(why(view.againstPurge())).asking(new Act.Confirm("Before the argon flows", List.of(),
                        cautions("argon-and-air", "argon-in-pits", "leaning-in"), List.of(), Optional.empty(),
                        Optional.empty()))));
        giveUp().ifPresent(offered::add);
        return new ChamberCard(view.kitTitle(), "Chamber closed", new Doing.Telling(takes, lines), offered, ways(view));
    }

    private ChamberCard purging(SessionView view) {
        Act stop = Act.other(Act.Kind.STOP_PURGE, "Turn the argon off").asking(new Act.Confirm("Turn the argon off",
                List.of("The chamber stays shut. What was reached is lost slowly."), List.of(), STOP,
                Optional.empty(), Optional.empty()));
        return new ChamberCard(view.gas().forecast().map(time -> "forecast at the start "
                + Words.duration(minutes(time))).orElse(""), "Purging", new Doing.Purging(), List.of(stop), ways(view));
    }

    private ChamberCard welding(SessionView view, List<JointView> joints, Optional<MapPicture> map) {
        List<String> whyNot = reasons(view.gas().fitness().reasons());
        boolean fit = whyNot.isEmpty();
        String over = view.gas().fitSince().map(since -> "since " + clock(view, since.wall()))
                .orElse(Words.count(whyNot.size(), "reason", "reasons"));
        return new ChamberCard(over, fit ? "Fit to weld" : "Not fit", new Doing.Welding(fit, whyNot, map,
                joints.stream().map(joint -> JointLines.line(view.session().id(), joint)).toList()),
                List.of(Act.other(Act.Kind.END_SESSION, "End the session")), ways(view));
    }

    private ChamberCard ending(SessionView view, List<JointView> joints) {
        List<String> lines = new ArrayList<>();
        lines.add(view.gas().room().map(room -> "Room oxygen at " + room.meter() + ": " + room.value()
                .map(percent -> percent + "\u00a0%").orElse("not heard") + ". Below 19.5\u00a0% air is hazardous.")
                .orElse("No room monitor is registered: measure the air before anybody comes near the opening."));
        long open = joints.stream().filter(joint -> !JointLines.isWelded(joint)).count();
        lines.add(open == 0 ? "Every joint of the map is welded."
                : Words.count(open, "joint of the map is", "joints of the map are") + " not welded.");
        Optional<Doing.Running> cooling = joints.stream().map(JointLines::cooling).flatMap(Optional::stream)
                .max(java.util.Comparator.comparing(running -> running.since().plus(running.length())));
        Act opening = Act.main(Act.Kind.OPEN_CHAMBER, "Open the chamber").held(why(view.againstOpening()))
                .asking(new Act.Confirm("Open the chamber", List.of(), cautions("leaning-in", "argon-in-pits"),
                        List.of(), Optional.empty(), Optional.of("Your PIN opens it and ends the session")));
        return new ChamberCard(view.kitTitle(), "End the session", new Doing.Ending(lines, cooling),
                List.of(opening, Act.other(Act.Kind.STAY_SHUT, "Back to the joints")), List.of());
    }

    private ChamberCard over(SessionView view, List<JointView> joints) {
        List<Doing.Line> lines = new ArrayList<>();
        lines.add(new Doing.Line("Argon used", argonUsed(view.session())));
        lines.add(new Doing.Line("Joints welded", joints.stream().filter(JointLines::isWelded).count() + " of "
                + joints.size()));
        lines.add(new Doing.Line("Joints with a doubt", String.valueOf(
                joints.stream().filter(JointView::isDoubtful).count())));
        lines.add(new Doing.Line("Lock passes", String.valueOf(view.session().passes().size())));
        view.session().overAt().ifPresent(at -> lines.add(new Doing.Line("Over at", clock(view, at.wall()))));
        return new ChamberCard(view.kitTitle(), StripWriter.stops(view.session().phase()).getLast().word()
                .equals("Over") ? "Session over" : "Given up", new Doing.Over(lines), signing(view),
                List.of(new ChamberCard.Way("Chambers", "chamber")));
    }

    /** By what the sources held before and after; none can hold more afterwards. */
    static String argonUsed(ChamberSession session) {
        List<ArgonUse> uses = session.argonUsed();
        String contrary = uses.stream().filter(use -> use.standardLitres().signum() < 0)
                .map(use -> use.supply().value()).sorted().collect(Collectors.joining(", "));
        if (uses.isEmpty()) {
            return "not measured";
        }
        if (!contrary.isEmpty()) {
            return "not known: by its readings " + contrary + " held more afterwards";
        }
        return cubic(uses.stream().map(ArgonUse::standardLitres).reduce(BigDecimal.ZERO, BigDecimal::add))
                + session.gas().purge().map(purge -> ", forecast " + cubic(purge.argon().neededStandardLitres()))
                        .orElse("");
    }

    /** What an open nonconformance kept from being signed at the end, once it is decided. */
    private List<Act> signing(SessionView view) {
        return !acts || view.weldsToSign().isEmpty() ? List.of() : List.of(
                Act.main(Act.Kind.SIGN_WELDS, "Sign the welds").asking(new Act.Confirm("Sign the welds",
                        List.of("Welded and decided: " + view.weldsToSign().stream().map(TravellerId::value)
                                .collect(Collectors.joining(", ")) + "."), List.of(), List.of(), Optional.empty(),
                        Optional.of("Your PIN signs the weld step of each"))));
    }

    /** What is missing stands on the list; the button only counts it. */
    private Optional<String> whyOpen(SessionView view) {
        long missing = view.missing().size();
        List<Refusal> besides = view.againstClosing().stream()
                .filter(refusal -> !(refusal instanceof SessionRefusal.NeedNotMet)).toList();
        String count = missing == 0 ? "" : Words.count(missing, "line is", "lines are") + " missing. ";
        String said = (count + why(besides).orElse("")).strip();
        return said.isEmpty() ? Optional.empty() : Optional.of(said);
    }

    private Optional<Act> giveUp() {
        return !lead ? Optional.empty() : Optional.of(Act.other(Act.Kind.ABANDON, "Give the session up")
                .asking(new Act.Confirm("Give the session up", List.of("What is in comes out. Nothing is welded."),
                        cautions("leaning-in"), GIVE_UP, Optional.empty(),
                        Optional.of("The lead's PIN gives it up"))));
    }

    private List<ChamberCard.Way> ways(SessionView view) {
        List<ChamberCard.Way> ways = new ArrayList<>();
        view.session().lockStation().ifPresent(any ->
                ways.add(new ChamberCard.Way("Transfer lock", "chamber/" + view.session().id() + "/lock")));
        if (acts) {
            ways.add(new ChamberCard.Way("Argon", "argon"));
        }
        return ways;
    }

    private List<Caution> cautions(String... keys) {
        return Stream.of(keys).map(vocabulary.cautions()::get).filter(Objects::nonNull).toList();
    }

    private Optional<String> why(List<Refusal> against) {
        List<String> reasons = reasons(against);
        if (reasons.isEmpty()) {
            return Optional.empty();
        }
        String shown = String.join(" ", reasons.subList(0, Math.min(REASONS_SHOWN_MAX, reasons.size())));
        return Optional.of(reasons.size() <= REASONS_SHOWN_MAX ? shown
                : shown + " And " + (reasons.size() - REASONS_SHOWN_MAX) + " more.");
    }

    private List<String> reasons(List<Refusal> against) {
        return against.stream().map(wording::explain).map(Explanation::reason).distinct().toList();
    }

    /** A label that no line breaks. */
    private static String label(SupplyId supply) {
        return supply.value().replace('-', '\u2011');
    }

    private String clock(SessionView view, java.time.Instant at) {
        return Words.clockTime(at, view.now().wall(), zone);
    }

    private static java.time.Duration minutes(java.time.Duration time) {
        return java.time.Duration.ofMinutes(time.plusSeconds(59).toMinutes());
    }

    /** Standard litres as cubic metres with one decimal. */
    static String cubic(BigDecimal standardLitres) {
        return standardLitres.movePointLeft(3).setScale(1, java.math.RoundingMode.HALF_UP) + "\u00a0m³";
    }
}
