package brightseam.session;

import static brightseam.session.SessionRig.*;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.Decision;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Hands that do anything at any time, by seeds: whatever they try, what must never be does not come about. */
class SessionWalkTest {

    private static final int SESSIONS = 30;
    private static final int TRIES = 400;

    /** What the events say, kept apart from the state that they fold to. */
    private static final class Observer {
        private boolean outerOpen;
        private boolean innerOpen;
        private boolean shut;
        private boolean readFit;
        private final Set<String> checkedIn = new HashSet<>();
        private final Set<String> lock = new HashSet<>();
        private final Set<String> inside = new HashSet<>();
        private final Set<Integer> passes = new HashSet<>();
        private final TreeMap<String, Integer> seen = new TreeMap<>();

        void sees(SessionEvent event, boolean fitByReadings) {
            seen.merge(event.getClass().getSimpleName(), 1, Integer::sum);
            switch (event) {
                case SessionEvent.CheckedIn e -> {
                    assertThat(shut).as("checked in through a shut door").isFalse();
                    checkedIn.add(e.item().label());
                }
                case SessionEvent.TakenBack e -> checkedIn.remove(e.label());
                case SessionEvent.ChamberClosed e -> {
                    assertThat(e.inside()).containsExactlyInAnyOrderElementsOf(checkedIn);
                    shut = true;
                    inside.addAll(checkedIn);
                }
                case SessionEvent.AtLock e -> atLock(e);
                case SessionEvent.FoundFit e -> assertThat(readFit = fitByReadings).isTrue();
                case SessionEvent.Ended e -> assertThat(outerOpen || innerOpen || !lock.isEmpty()).isFalse();
                case SessionEvent other -> { }
            }
            assertThat(outerOpen && innerOpen).as("both doors open").isFalse();
        }

        private void atLock(SessionEvent.AtLock event) {
            switch (event) {
                case SessionEvent.OuterOpened e -> outerOpen = true;
                case SessionEvent.OuterShut e -> outerOpen = false;
                case SessionEvent.PutInLock e -> {
                    assertThat(outerOpen).isTrue();
                    lock.add(e.item().label());
                }
                case SessionEvent.TakenFromLock e -> lock.remove(e.label());
                case SessionEvent.InnerOpened e -> {
                    assertThat(passes.add(e.pass())).as("a pass number once").isTrue();
                    assertThat(lock).containsAll(e.in());
                    innerOpen = true;
                    inside.addAll(e.in());
                    lock.removeAll(e.in());
                }
                case SessionEvent.InnerShut e -> innerOpen = false;
                case SessionEvent.PutOut e -> {
                    assertThat(inside.remove(e.label())).as("out goes what was in").isTrue();
                    lock.add(e.label());
                }
                case SessionEvent.TakenBackInside e -> {
                    lock.remove(e.label());
                    inside.add(e.label());
                }
                case SessionEvent.PassedOut e -> assertThat(lock.remove(e.label())).isTrue();
                case SessionEvent.AtLock other -> { }
            }
        }

        void agreesWith(ChamberSession state) {
            assertThat(state.in(Placed.Where.INSIDE)).extracting(Item::label)
                    .containsExactlyInAnyOrderElementsOf(inside);
            assertThat(state.inLock()).containsExactlyInAnyOrderElementsOf(lock);
            assertThat(state.lock().doors() == Lock.Doors.OUTER_OPEN).isEqualTo(outerOpen);
            assertThat(state.lock().doors() == Lock.Doors.INNER_OPEN).isEqualTo(innerOpen);
            if (state.phase() == Phase.FIT) {
                assertThat(readFit).as("fit without readings").isTrue();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89})
    void what_must_never_be_does_not_come_about(long seed) {
        Random random = new Random(seed);
        TreeMap<String, Integer> seen = new TreeMap<>();
        for (int session = 0; session < SESSIONS; session++) {
            walk(random).seen.forEach((event, count) -> seen.merge(event, count, Integer::sum));
        }
        assertThat(seen.keySet()).as("the walk gets everywhere").contains("CheckedIn", "ChamberClosed", "FoundFit",
                "InnerOpened", "PutOut", "PassedOut", "PutInLock", "TakenFromLock", "Ended");
    }

    private static Observer walk(Random random) {
        Observer observer = new Observer();
        SessionRig rig = new SessionRig().later(600);
        for (int i = 0; i < TRIES && !(rig.known() && rig.session().phase().isOver()); i++) {
            rig.later(random.nextInt(400));
            Ask ask = any(random);
            SessionCommand command = ask.apply(rig);
            boolean fit = command instanceof SessionCommand.NoteGas note && note.fitness() instanceof Fitness.Fit;
            if (rig.decide(any -> command) instanceof Decision.Accepted<SessionEvent> accepted) {
                accepted.events().forEach(event -> observer.sees(event, fit));
                rig.does(any -> command);
                observer.agreesWith(rig.session());
            }
        }
        return observer;
    }

    /** Ends are rare, so that something comes before them. */
    private static Ask any(Random random) {
        List<Item> all = List.of(LEG, LUG, WIRE, TRAY, GLOVES_A, GLOVES_B);
        Item item = all.get(random.nextInt(all.size()));
        List<Ask> asks = new ArrayList<>(List.of(SessionRig::open, in(item), in(item), in(item), in(item),
                takeBack(item.label()), leaveOut("T-1044"), SessionRig::close, SessionRig::startPurge,
                SessionRig::noteFit, SessionRig::noteFit, SessionRig::noteUnfit, SessionRig::openOuter, late(item),
                late(item), late(item), out(item.label()), out(item.label()), take(item.label()),
                take(item.label()), rig -> rig.shutOuter(random.nextBoolean() ? sweep() : cycles(2)),
                rig -> rig.shutOuter(sweep()), rig -> rig.purgeLock(byMeter()), SessionRig::cycle,
                SessionRig::openInner, SessionRig::openInner,
                rig -> rig.openInner(Optional.of(rig.read(LOCK_O2, String.valueOf(random.nextInt(100)))), true, LEAD),
                SessionRig::shutInner, SessionRig::shutInner, rig -> rig.notePass(1)));
        if (random.nextInt(40) == 0) {
            asks = List.of(SessionRig::openChamber, rig -> rig.stopPurge(), rig -> rig.openChamber(
                    opening(Optional.of(new MeterFact(ROOM, Optional.of(new BigDecimal("18.9")), Optional.empty(),
                            List.of(), true)), true), LEAD));
        }
        return asks.get(random.nextInt(asks.size()));
    }
}
