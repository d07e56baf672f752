package brightseam.ui.chamber;

import brightseam.kernel.Refusal;
import brightseam.procedure.Vocabulary;
import brightseam.session.Item;
import brightseam.session.Lock;
import brightseam.session.LockNeed;
import brightseam.session.shell.LockMove;
import brightseam.session.shell.SessionView;
import brightseam.session.shell.SessionView.LockView;
import brightseam.words.Explanation;
import brightseam.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes the card of a transfer lock. Only what the session's rules let through is offered. */
final class LockCards {

    private final Vocabulary vocabulary;
    private final Wording wording;
    private final boolean acts;

    LockCards(Vocabulary vocabulary, Wording wording, boolean acts) {
        this.vocabulary = vocabulary;
        this.wording = wording;
        this.acts = acts;
    }

    ChamberCard card(SessionView view) {
        List<ChamberCard.Way> back = List.of(new ChamberCard.Way("Back to the session",
                "chamber/" + view.session().id()));
        return view.lock().map(lock -> new ChamberCard(view.session().lockStation().map(Object::toString).orElse("")
                        + " · pass " + view.session().nextPass(), "Transfer lock", doing(view, lock),
                        acts ? acts(lock) : List.of(), back))
                .orElseGet(() -> new ChamberCard("", "No lock to work", new Doing.Telling(
                        "The lock is worked once the chamber is closed.", List.of()), List.of(), back));
    }

    private Doing doing(SessionView view, LockView lock) {
        List<String> inside = Stream.concat(
                lock.inbound().stream().map(item -> named(item) + ", on its way in"),
                lock.outbound().stream().map(item -> named(item) + ", on its way out")).toList();
        return new Doing.AtLock(doors(lock, view), state(lock, view), inside, clock(lock, view), cycles(lock),
                effect(lock), ask(lock));
    }

    private static String named(Item item) {
        return item.title() + ", " + item.label();
    }

    private static Doing.Doors doors(LockView lock, SessionView view) {
        return switch (lock.doors()) {
            case BOTH_SHUT -> view.session().lock().clean() ? Doing.Doors.BOTH_SHUT_ARGON
                    : Doing.Doors.BOTH_SHUT_AIR;
            case OUTER_OPEN -> Doing.Doors.OUTER_OPEN;
            case PURGING -> Doing.Doors.PURGING;
            case INNER_OPEN -> Doing.Doors.INNER_OPEN;
        };
    }

    private static String state(LockView lock, SessionView view) {
        return switch (doors(lock, view)) {
            case BOTH_SHUT_AIR -> "Both doors shut, air inside.";
            case BOTH_SHUT_ARGON -> "Both doors shut, argon inside.";
            case OUTER_OPEN -> "Outer door open, air inside.";
            case PURGING -> lock.readyInner() ? "Both doors shut, purged."
                    : "Both doors shut, argon drives the air out.";
            case INNER_OPEN -> "Inner door open.";
        };
    }

    private static Optional<Doing.Running> clock(LockView lock, SessionView view) {
        return lock.need().filter(need -> need.method() == LockNeed.Method.SWEEP && need.sweep().isPositive())
                .map(need -> new Doing.Running("Lock purge", view.session().lock().since(), need.sweep(),
                        need.meter().isPresent() ? "by forecast; the lock's meter decides."
                                : "the inner door may open."));
    }

    private static Optional<Integer> cycles(LockView lock) {
        return lock.need().filter(need -> need.method() == LockNeed.Method.VACUUM_CYCLES)
                .map(need -> Math.max(0, need.cycles() - lock.cyclesDone()));
    }

    private static List<String> effect(LockView lock) {
        return lock.doors() == Lock.Doors.INNER_OPEN ? List.of() : lock.oxygenPpmAfterOpening().map(ppm ->
                List.of("If the inner door opened now, the chamber would be at about " + Ppm.of(ppm)
                        + " of oxygen, at worst."))
                .orElse(List.of());
    }

    private static String ask(LockView lock) {
        if (lock.takesScansOutside()) {
            return lock.outbound().isEmpty() ? "Scan what goes into the lock" : "Scan what is taken out of the lock";
        }
        return lock.takesScansInside() ? "Scan what goes out of the chamber" : "";
    }

    private List<Act> acts(LockView lock) {
        List<LockMove> offered = lock.offered();
        LockMove main = switch (lock.doors()) {
            case OUTER_OPEN -> LockMove.SHUT_OUTER;
            case INNER_OPEN -> LockMove.SHUT_INNER;
            case PURGING -> LockMove.OPEN_INNER;
            case BOTH_SHUT -> lock.readyInner() && !lock.inbound().isEmpty()
                    ? LockMove.OPEN_INNER : LockMove.OPEN_OUTER;
        };
        List<Act> acts = new ArrayList<>();
        acts.add(act(main, true, lock).held(why(lock.moves().getOrDefault(main, List.of()))));
        offered.stream().filter(move -> move != main).forEach(move -> acts.add(act(move, false, lock)));
        return acts;
    }

    private Act act(LockMove move, boolean main, LockView lock) {
        return switch (move) {
            case OPEN_OUTER -> made(Act.Kind.OPEN_OUTER, "Open the outer door", main);
            case SHUT_OUTER -> made(Act.Kind.SHUT_OUTER, "Outer door is shut: purge", main);
            case PURGE -> made(Act.Kind.PURGE_LOCK, "Purge the lock", main);
            case NOTE_CYCLE -> made(Act.Kind.NOTE_CYCLE, "One cycle done", main);
            case OPEN_INNER -> made(Act.Kind.OPEN_INNER, "Open the inner door", main).asking(new Act.Confirm(
                    "Open the inner door", effect(lock), Stream.of("argon-and-air", "leaning-in")
                            .map(vocabulary.cautions()::get).filter(Objects::nonNull).toList(), List.of(),
                    lock.inbound().stream().anyMatch(Item::hasTraveller) ? Optional.of(
                            "Scan the gloves that you have on, and whatever else touches the pieces")
                            : Optional.empty(), Optional.of("Your PIN passes them in")));
            case SHUT_INNER -> made(Act.Kind.SHUT_INNER, "Inner door is shut", main);
        };
    }

    private static Act made(Act.Kind kind, String words, boolean main) {
        return main ? Act.main(kind, words) : Act.other(kind, words);
    }

    private Optional<String> why(List<Refusal> against) {
        List<String> reasons = against.stream().map(wording::explain).map(Explanation::reason).distinct().toList();
        return reasons.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", reasons));
    }

    /** What the lock's meter says; empty where there is none. */
    static Optional<Gauge> oxygen(SessionView view) {
        return view.lock().flatMap(lock -> lock.oxygen().map(meter -> StripWriter.gauge("Oxygen in the lock",
                Optional.of(meter), lock.need().map(LockNeed::oxygenPpmMax), brightseam.session.Phase.PURGING)));
    }
}
