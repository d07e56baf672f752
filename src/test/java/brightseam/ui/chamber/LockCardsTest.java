package brightseam.ui.chamber;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.procedure.shell.SharedTables;
import brightseam.session.ChamberSession;
import brightseam.session.Fitness;
import brightseam.session.Gas;
import brightseam.session.Lock;
import brightseam.session.LockNeed;
import brightseam.session.Phase;
import brightseam.session.SessionRefusal;
import brightseam.session.shell.LockMove;
import brightseam.session.shell.SessionView;
import brightseam.words.Wording;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LockCardsTest {

    private static final Moment NOW = new Moment(Instant.parse("2031-10-14T08:00:00Z"), 10_000_000);
    private static final SessionId SESSION = new SessionId("CS-0012");
    private static final LockNeed SWEEP = new LockNeed(LockNeed.Method.SWEEP, Duration.ofMinutes(12), 0,
            new BigDecimal("100"), Optional.empty());

    @ParameterizedTest
    @EnumSource(Lock.Doors.class)
    void what_the_rules_refuse_is_never_offered_and_never_both_doors(Lock.Doors doors) {
        Map<LockMove, List<Refusal>> moves = new EnumMap<>(LockMove.class);
        for (LockMove move : LockMove.values()) {
            moves.put(move, List.of(new SessionRefusal.LockHoldsAir(SESSION)));
        }
        ChamberCard card = card(doors, moves);
        assertThat(card.acts()).hasSize(1).allMatch(act -> act.held().isPresent());
        moves.replaceAll((move, against) -> List.of());
        List<Act.Kind> all = card(doors, moves).acts().stream().map(Act::kind).toList();
        assertThat(card(doors, moves).acts().getFirst().main()).isTrue();
        assertThat(all).doesNotHaveDuplicates();
        if (doors == Lock.Doors.OUTER_OPEN) {
            assertThat(all.getFirst()).isEqualTo(Act.Kind.SHUT_OUTER);
        }
        if (doors == Lock.Doors.INNER_OPEN) {
            assertThat(all.getFirst()).isEqualTo(Act.Kind.SHUT_INNER);
        }
    }

    @Test
    void a_purging_lock_shows_how_long_it_still_takes_and_why_the_door_waits() {
        ChamberCard card = card(Lock.Doors.PURGING, Map.of(LockMove.OPEN_INNER,
                List.of(new SessionRefusal.LockHoldsAir(SESSION)), LockMove.SHUT_INNER,
                List.of(new SessionRefusal.InnerDoorShut(SESSION))));
        Doing.AtLock lock = (Doing.AtLock) card.doing();
        assertThat(lock.doors()).isEqualTo(Doing.Doors.PURGING);
        assertThat(lock.clock().orElseThrow().length()).isEqualTo(Duration.ofMinutes(12));
        assertThat(lock.ask()).isEmpty();
        assertThat(card.acts().getFirst().kind()).isEqualTo(Act.Kind.OPEN_INNER);
        assertThat(card.acts().getFirst().held()).isPresent();
    }

    @Test
    void things_are_scanned_in_while_the_outer_door_is_open_and_out_while_the_inner_one_is() {
        assertThat(((Doing.AtLock) card(Lock.Doors.OUTER_OPEN, Map.of()).doing()).ask()).contains("into the lock");
        assertThat(((Doing.AtLock) card(Lock.Doors.INNER_OPEN, Map.of()).doing()).ask()).contains("out of the chamber");
        assertThat(((Doing.AtLock) card(Lock.Doors.BOTH_SHUT, Map.of()).doing()).ask()).isEmpty();
    }

    @Test
    void what_is_measured_changes_words_and_exchanges_no_button() {
        ChamberCard one = card(Lock.Doors.PURGING, Map.of(LockMove.OPEN_INNER,
                List.of(new SessionRefusal.LockPurgeRunning(Duration.ofSeconds(70), Duration.ofMinutes(12), NOW))));
        ChamberCard later = card(Lock.Doors.PURGING, Map.of(LockMove.OPEN_INNER,
                List.of(new SessionRefusal.LockPurgeRunning(Duration.ofSeconds(71), Duration.ofMinutes(12), NOW))));
        ChamberCard ready = card(Lock.Doors.PURGING, Map.of(LockMove.OPEN_INNER, List.of()));
        assertThat(one).isNotEqualTo(later);
        assertThat(one.still()).isEqualTo(later.still()).isNotEqualTo(ready.still());
    }

    @Test
    void whoever_only_looks_is_offered_nothing() {
        ChamberCard card = new LockCards(SharedTables.read(), wording(), false).card(view(Lock.Doors.BOTH_SHUT,
                Map.of()));
        assertThat(card.acts()).isEmpty();
        assertThat(card.ways()).isNotEmpty();
    }

    private static ChamberCard card(Lock.Doors doors, Map<LockMove, List<Refusal>> moves) {
        return new LockCards(SharedTables.read(), wording(), true).card(view(doors, moves));
    }

    private static Wording wording() {
        return new Wording(Map.of(), ZoneOffset.UTC);
    }

    private static SessionView view(Lock.Doors doors, Map<LockMove, List<Refusal>> moves) {
        Lock lock = new Lock(doors, false, NOW, Optional.of(SWEEP), 0);
        ChamberSession session = new ChamberSession(SESSION, new KitId("K-0047"), new StationId("S-CHAMBER-1"),
                Optional.of(new StationId("S-LOCK-1")), NOW, Phase.FIT, List.of(), List.of(), List.of(), lock,
                new Gas(Optional.empty(), Optional.empty(), List.of(), Optional.empty()), List.of(), Optional.of(NOW),
                Optional.empty(), List.of());
        SessionView.GasView gas = new SessionView.GasView(Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), new Fitness.NotFit(List.of(new SessionRefusal.NotPurged(SESSION))), Duration.ZERO,
                Optional.empty());
        return new SessionView(session, 1, "Kit", NOW, List.of(), List.of(), List.of(), List.of(), List.of(), gas,
                Optional.empty(), Optional.of(new SessionView.LockView(doors, false, List.of(), List.of(),
                        Optional.empty(), Optional.of(SWEEP).filter(any -> doors == Lock.Doors.PURGING),
                        Duration.ofMinutes(1), Optional.empty(), 0, Optional.of(new BigDecimal("31")), moves)));
    }
}
