package brightseam.demo;

import brightseam.chamber.ArgonFlows;
import brightseam.chamber.Chamber;
import brightseam.demo.physics.Situation;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Entry;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the shop's record says of the chamber, from entry to entry: which doors are open, which valves, whether an arc
 * burns. It knows the written names of events, which are kept for ever, and nothing else of their features.
 */
final class Scene {

    private static final Pattern ELAPSED = Pattern.compile("\"elapsed_millis\":(\\d{1,15}),\"wall\"");
    private static final Set<String> FAMILIES = Set.of("session", "joint", "chamber", "meter");

    private final Set<String> arcs = new HashSet<>();
    private ArgonFlows flows = DemoChamber.terms().flows();
    private List<String> connected = List.of();
    private Valve valve = Valve.SHUT;
    private boolean attended;
    private boolean open = true;
    private boolean outerOpen;
    private boolean innerOpen;
    private boolean lockPurged;

    /** How far the valve of the chamber is open. */
    private enum Valve { SHUT, HOLDING, PURGING }

    /** What people have set now. */
    Situation situation() {
        double purge = switch (valve) {
            case SHUT -> 0;
            case HOLDING -> flows.holdLitresPerMinute().doubleValue();
            case PURGING -> flows.purgeLitresPerMinute().doubleValue();
        };
        return new Situation(purge, lockPurged ? flows.lockLitresPerMinute().doubleValue() : 0, open, outerOpen,
                innerOpen, !arcs.isEmpty(), connected, attended);
    }

    /** The chamber's register says {@code chamber} now: its flows, and the argon at its manifold. */
    void register(Chamber chamber) {
        flows = chamber.terms().flows();
        connected = chamber.connected().stream().map(SupplyId::value).toList();
    }

    /** When {@code entry} was made, on the elapsed time line; empty where it does not concern a chamber. */
    static Optional<Long> concerns(Entry entry) {
        Matcher at = ELAPSED.matcher(FAMILIES.contains(entry.stream().family()) ? entry.json() : "");
        return at.find() ? Optional.of(Long.parseLong(at.group(1))) : Optional.empty();
    }

    /** Goes on with {@code entry}. */
    void apply(Entry entry) {
        switch (entry.stream().family()) {
            case "joint" -> joint(entry.stream().identity(), entry.type());
            case "session" -> session(entry.type());
            default -> { }
        }
    }

    private void joint(String joint, String type) {
        switch (type) {
            case "joint-arc-started.1" -> arcs.add(joint);
            case "joint-arc-stopped.1" -> arcs.remove(joint);
            default -> { }
        }
    }

    private void session(String type) {
        switch (type) {
            case "session-opened.1" -> begin();
            case "session-chamber-closed.1" -> open = false;
            case "session-purge-started.1", "session-found-unfit.1" -> valve = Valve.PURGING;
            case "session-found-fit.1" -> valve = Valve.HOLDING;
            case "session-purge-stopped.1" -> valve = Valve.SHUT;
            case "session-outer-opened.1" -> lock(true, false, false);
            case "session-outer-shut.1", "session-lock-purge-started.1" -> lock(false, false, true);
            case "session-inner-opened.1" -> lock(false, true, false);
            case "session-inner-shut.1" -> lock(false, false, false);
            case "session-ended.1", "session-abandoned.1" -> end();
            default -> { }
        }
    }

    private void begin() {
        attended = true;
        open = true;
    }

    private void end() {
        attended = false;
        open = true;
        valve = Valve.SHUT;
        arcs.clear();
        lock(false, false, false);
    }

    private void lock(boolean outer, boolean inner, boolean purged) {
        outerOpen = outer;
        innerOpen = inner;
        lockPurged = purged;
    }
}
