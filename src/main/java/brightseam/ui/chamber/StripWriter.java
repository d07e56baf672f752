package brightseam.ui.chamber;

import brightseam.chamber.ArgonOutlook;
import brightseam.device.MeterNow;
import brightseam.device.MeterPlace;
import brightseam.device.Trouble;
import brightseam.session.Lock;
import brightseam.session.MeterFact;
import brightseam.session.Phase;
import brightseam.session.shell.SessionView;
import brightseam.words.Words;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Writes the head of a session's screens. */
final class StripWriter {

    private static final List<String> PHASES = List.of("Check-in", "Closed", "Purging", "Fit to weld", "Over");
    private static final int FIT = 3;
    /** What befalls a meter for ppm in plain air, and is no fault there. */
    private static final Set<Trouble> USUAL_IN_AIR = Set.of(Trouble.OUT_OF_RANGE, Trouble.FROZEN);

    private final ZoneId zone;

    StripWriter(ZoneId zone) {
        this.zone = zone;
    }

    /**
     * The head.
     *
     * @param argon what the argon does; empty where the chamber is not registered
     * @param meters every meter at the chamber and its lock
     */
    Strip strip(SessionView view, Optional<ArgonOutlook> argon, List<MeterNow> meters) {
        List<Gauge> gauges = new ArrayList<>();
        gauges.add(oxygen(view));
        if (view.gas().moisture().isPresent() || view.gas().limits().flatMap(any -> any.moisturePpmMax()).isPresent()) {
            gauges.add(gauge("Moisture", view.gas().moisture(),
                    view.gas().limits().flatMap(limits -> limits.moisturePpmMax()), view.session().phase()));
        }
        argon.ifPresent(outlook -> gauges.add(argon(outlook, view)));
        view.session().lockStation().ifPresent(any -> gauges.add(lock(view.session().lock())));
        return new Strip(view.session().id().value(), view.session().kit() + " · " + view.session().chamber(),
                stops(view.session().phase()), gauges,
                meters.stream().flatMap(meter -> trouble(meter, view.session().phase()).stream()).toList(),
                meters.stream().anyMatch(MeterNow::simulated));
    }

    /** Oxygen in the chamber. */
    Gauge oxygen(SessionView view) {
        return gauge("Oxygen", view.gas().oxygen(), view.gas().limits().map(limits -> limits.oxygenPpmMax()),
                view.session().phase());
    }

    static List<Strip.Stop> stops(Phase phase) {
        int at = switch (phase) {
            case CHECK_IN -> 0;
            case CLOSED -> 1;
            case PURGING -> 2;
            case FIT, UNFIT -> FIT;
            case ENDED, ABANDONED -> PHASES.size() - 1;
        };
        boolean trouble = phase == Phase.UNFIT || phase == Phase.ABANDONED;
        String word = switch (phase) {
            case UNFIT -> "Not fit";
            case ABANDONED -> "Given up";
            case CHECK_IN, CLOSED, PURGING, FIT, ENDED -> PHASES.get(at);
        };
        return IntStream.range(0, PHASES.size()).mapToObj(i -> i == at
                ? new Strip.Stop(word, trouble ? Strip.Standing.TROUBLE : Strip.Standing.NOW)
                : new Strip.Stop(PHASES.get(i), i < at ? Strip.Standing.DONE : Strip.Standing.TO_COME)).toList();
    }

    static Gauge gauge(String name, Optional<MeterFact> meter, Optional<BigDecimal> limit, Phase phase) {
        String most = limit.map(Ppm::limit).orElse("");
        Optional<BigDecimal> value = meter.flatMap(MeterFact::value);
        boolean air = !phase.isPurged();
        List<String> troubles = meter.map(MeterFact::troubles).orElse(List.of()).stream()
                .filter(trouble -> !air || USUAL_IN_AIR.stream().noneMatch(usual -> usual == named(trouble))).toList();
        if (meter.isEmpty()) {
            return new Gauge(name, "no meter", "", most, Gauge.State.UNKNOWN, "not registered");
        }
        if (value.isEmpty() || !troubles.isEmpty()) {
            Ppm last = value.map(Ppm::of).orElse(new Ppm("?", ""));
            return new Gauge(name, last.number(), last.unit(), most, Gauge.State.UNKNOWN,
                    troubles.isEmpty() ? "never heard" : troubles.getFirst().replace('-', ' '));
        }
        Ppm now = Ppm.of(value.get());
        if (air) {
            return new Gauge(name, now.number(), now.unit(), most, Gauge.State.PLAIN,
                    phase.isOver() ? "" : "not purged");
        }
        if (limit.isEmpty()) {
            return new Gauge(name, now.number(), now.unit(), most, Gauge.State.PLAIN, "");
        }
        boolean within = value.get().compareTo(limit.get()) <= 0;
        boolean falling = phase == Phase.PURGING;
        return new Gauge(name, now.number(), now.unit(), most, within ? Gauge.State.IN_ORDER
                : falling ? Gauge.State.NOT_YET : Gauge.State.ABOVE, within ? "within" : falling ? "not yet" : "above");
    }

    private static Trouble named(String trouble) {
        return Trouble.valueOf(trouble.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private Gauge argon(ArgonOutlook outlook, SessionView view) {
        if (outlook.connectedStandardLitres() <= 0) {
            return new Gauge("Argon left", "none", "", "nothing connected", Gauge.State.ABOVE, "connect");
        }
        String lasts = Words.duration(outlook.lastsHolding().truncatedTo(java.time.temporal.ChronoUnit.MINUTES));
        return outlook.changeOverAt().filter(any -> !view.session().phase().isOver())
                .map(at -> new Gauge("Argon left", lasts, "", "change over by "
                        + Words.clockTime(at, view.now().wall(), zone), Gauge.State.PLAIN, ""))
                .orElseGet(() -> new Gauge("Argon left", lasts, "", "at holding flow", Gauge.State.PLAIN, ""));
    }

    private static Gauge lock(Lock lock) {
        String doors = switch (lock.doors()) {
            case BOTH_SHUT -> "both shut";
            case OUTER_OPEN -> "outer open";
            case PURGING -> "purging";
            case INNER_OPEN -> "inner open";
        };
        String gas = switch (lock.doors()) {
            case BOTH_SHUT -> lock.clean() ? "argon inside" : "air inside";
            case OUTER_OPEN -> "air inside";
            case PURGING -> "argon flows in";
            case INNER_OPEN -> "open to the chamber";
        };
        return new Gauge("Lock", doors, "", gas, Gauge.State.PLAIN, "");
    }

    /** What is wrong with {@code meter}, by its name and place. */
    private static Optional<String> trouble(MeterNow meter, Phase phase) {
        boolean inAir = meter.meter().place() == MeterPlace.LOCK
                || meter.meter().place() == MeterPlace.CHAMBER && !phase.isPurged();
        return meter.troubles().stream().filter(trouble -> !inAir || !USUAL_IN_AIR.contains(trouble)).findFirst()
                .map(trouble -> MeterWords.name(meter.meter()) + " " + MeterWords.trouble(meter, trouble));
    }
}
