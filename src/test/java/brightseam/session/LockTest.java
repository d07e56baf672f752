package brightseam.session;

import static brightseam.kernel.Samples.origin;
import static brightseam.session.SessionRig.*;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.Refusal;
import brightseam.session.Lock.Doors;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LockTest {

    /** Stands for what the joints say of a part that is hot. */
    private record Hot(String label) implements Refusal {
        @Override
        public String code() {
            return "hot";
        }
    }

    @Test
    void a_late_thing_goes_through_the_lock_and_its_pass_has_a_number_and_a_record() {
        SessionRig rig = wireInPurgedLock();
        assertThat(rig.events(SessionRig::openInner)).containsExactly(new SessionEvent.InnerOpened(rig.at(), ID, 1,
                List.of("T-1044"), Duration.ofMinutes(10), 0, Optional.empty(),
                Optional.of(new BigDecimal("9.5")), FABRICATOR));
        ChamberSession session = rig.does(SessionRig::openInner).later(30).does(SessionRig::shutInner).session();
        assertThat(session.placed("T-1044").orElseThrow()).satisfies(wire -> {
            assertThat(wire.where()).isEqualTo(Placed.Where.INSIDE);
            assertThat(wire.inBy()).contains(1);
        });
        assertThat(session.passes()).singleElement().satisfies(pass -> {
            assertThat(pass.in()).containsExactly("T-1044");
            assertThat(pass.out()).isEmpty();
            assertThat(pass.by()).isEqualTo("Iva Roen");
            assertThat(pass.shutAt()).contains(rig.now());
        });
        assertThat(session.list().get(2).missing()).isZero();
    }

    @Test
    void late_things_are_looked_at_like_those_before() {
        SessionRig rig = fitWithoutWire().does(SessionRig::openOuter);
        assertThat(rig.codes(late(LEG))).containsExactly("item-checked-in-already");
        assertThat(rig.codes(late(supply("TL-0009", "copper-chill")))).containsExactly("item-not-on-list");
    }

    @Test
    void the_inner_door_waits_for_the_minutes() {
        SessionRig rig = fitWithoutWire().does(SessionRig::openOuter).does(ask -> ask.shutOuter(sweep())).later(599);
        assertThat(rig.refusals(SessionRig::openInner)).containsExactly(new SessionRefusal.LockPurgeRunning(
                Duration.ofSeconds(599), Duration.ofMinutes(10), rig.now().plus(Duration.ofSeconds(1))));
        assertThat(rig.later(1).refusals(SessionRig::openInner)).isEmpty();
    }

    @Test
    void the_inner_door_waits_for_the_cycles() {
        SessionRig rig = fit().does(SessionRig::openOuter).does(ask -> ask.shutOuter(cycles(2))).later(9_999)
                .does(SessionRig::cycle);
        assertThat(rig.refusals(SessionRig::openInner)).containsExactly(new SessionRefusal.LockCyclesLeft(1, 2));
        assertThat(rig.does(SessionRig::cycle).events(SessionRig::openInner)).singleElement()
                .extracting(event -> ((SessionEvent.InnerOpened) event).cycles()).isEqualTo(2);
    }

    @Test
    void cycles_are_counted_only_where_they_are_made() {
        assertThat(fit().codes(SessionRig::cycle)).containsExactly("lock-not-purging");
        assertThat(fit().does(ask -> ask.purgeLock(sweep())).codes(SessionRig::cycle))
                .containsExactly("lock-not-cycled");
    }

    @Test
    void where_the_lock_has_a_meter_its_reading_decides_and_not_the_minutes() {
        SessionRig rig = fit().does(SessionRig::openOuter).later(60).does(ask -> ask.shutOuter(byMeter()));
        assertThat(rig.later(9_999).refusals(SessionRig::openInner)).containsExactly(
                new SessionRefusal.MeterNotUsable(LOCK_O2, List.of("never-heard")));
        assertThat(inner(rig, rig.read(LOCK_O2, "50.1"))).containsExactly(new SessionRefusal.LockOxygenAboveLimit(
                LOCK_O2, new BigDecimal("50.1"), new BigDecimal("50")));
        assertThat(inner(rig, rig.read(LOCK_O2, "50"))).isEmpty();
        assertThat(inner(rig, meter(LOCK_O2, "12", "silent"))).containsExactly(
                new SessionRefusal.MeterNotUsable(LOCK_O2, List.of("silent")));
    }

    @Test
    void a_reading_from_before_the_lock_was_shut_opens_no_door() {
        SessionRig rig = fit().does(SessionRig::openOuter).later(60).does(ask -> ask.shutOuter(byMeter())).later(60);
        assertThat(inner(rig, meter(LOCK_O2, "12"))).containsExactly(new SessionRefusal.LockNotReadYet(
                LOCK_O2, rig.session().lock().since()));
    }

    @Test
    void both_doors_are_never_open() {
        SessionRig outer = fit().does(SessionRig::openOuter);
        assertThat(outer.refusals(SessionRig::openInner)).containsExactly(
                new SessionRefusal.OuterDoorOpen(outer.now()));
        SessionRig inner = wireInPurgedLock().does(SessionRig::openInner);
        assertThat(inner.refusals(SessionRig::openOuter)).containsExactly(
                new SessionRefusal.InnerDoorOpen(inner.now()));
        assertThat(inner.codes(ask -> ask.shutOuter(sweep()))).containsExactly("outer-door-shut");
        assertThat(inner.codes(ask -> ask.purgeLock(sweep()))).containsExactly("inner-door-open");
    }

    @Test
    void a_lock_that_was_never_purged_holds_air() {
        assertThat(fit().refusals(SessionRig::openInner)).containsExactly(new SessionRefusal.LockHoldsAir(ID));
        assertThat(fit().does(ask -> ask.purgeLock(sweep())).later(600).refusals(SessionRig::openInner)).isEmpty();
    }

    @Test
    void an_outer_door_that_opens_again_makes_the_purge_begin_anew() {
        SessionRig rig = wireInPurgedLock().does(SessionRig::openOuter).does(ask -> ask.shutOuter(sweep()));
        assertThat(rig.later(500).codes(SessionRig::openInner)).containsExactly("lock-purge-running");
    }

    @Test
    void a_lock_shut_from_inside_stays_clean_until_its_outer_door_opens() {
        SessionRig rig = wireInPurgedLock().does(SessionRig::openInner).does(SessionRig::shutInner);
        assertThat(rig.session().lock().doors()).isEqualTo(Doors.BOTH_SHUT);
        assertThat(rig.refusals(SessionRig::openInner)).isEmpty();
        assertThat(rig.does(SessionRig::openInner).session().passes()).hasSize(2);
    }

    @Test
    void a_lock_that_took_the_gas_of_a_chamber_not_fit_is_purged_again() {
        SessionRig rig = purging().does(ask -> ask.purgeLock(sweep())).later(600).does(SessionRig::openInner)
                .does(SessionRig::shutInner).later(7_200).does(SessionRig::noteFit);
        assertThat(rig.refusals(SessionRig::openInner)).containsExactly(new SessionRefusal.LockHoldsAir(ID));
        SessionRig spoilt = wireInPurgedLock().does(SessionRig::openInner).does(SessionRig::noteUnfit)
                .does(SessionRig::shutInner);
        assertThat(spoilt.codes(SessionRig::openInner)).containsExactly("lock-holds-air");
    }

    @Test
    void a_cold_part_goes_out_through_the_lock() {
        SessionRig rig = wireInPurgedLock().does(SessionRig::openInner).later(20);
        assertThat(rig.refusals(out("T-1042", new Hot("T-1042")))).containsExactly(new Hot("T-1042"));
        assertThat(rig.refusals(out("T-9999"))).containsExactly(new SessionRefusal.NotInside("T-9999"));
        assertThat(rig.events(out("T-1042"))).containsExactly(
                new SessionEvent.PutOut(rig.at(), ID, "T-1042", 1));
        rig.does(out("T-1042")).does(SessionRig::shutInner).does(SessionRig::openOuter);
        assertThat(rig.events(take("T-1042"))).containsExactly(new SessionEvent.PassedOut(rig.at(), ID, "T-1042"));
        ChamberSession session = rig.does(take("T-1042")).session();
        assertThat(session.placed("T-1042").orElseThrow().where()).isEqualTo(Placed.Where.PASSED_OUT);
        assertThat(session.passes().getFirst().out()).containsExactly("T-1042");
        assertThat(session.travellersPassedIn()).extracting(Object::toString).contains("T-1042");
    }

    @Test
    void what_lies_in_the_lock_from_inside_is_taken_back_inside() {
        SessionRig rig = wireInPurgedLock().does(SessionRig::openInner).does(out("T-1042"));
        assertThat(rig.events(take("T-1042"))).containsExactly(
                new SessionEvent.TakenBackInside(rig.at(), ID, "T-1042", 1));
        assertThat(rig.does(take("T-1042")).session().passes().getFirst().out()).isEmpty();
        assertThat(rig.session().placed("T-1042").orElseThrow().where()).isEqualTo(Placed.Where.INSIDE);
    }

    @Test
    void what_lies_in_the_lock_from_outside_is_taken_out_again_and_was_never_in() {
        SessionRig rig = fitWithoutWire().does(SessionRig::openOuter).does(late(WIRE));
        assertThat(rig.events(take("T-1044"))).containsExactly(
                new SessionEvent.TakenFromLock(rig.at(), ID, "T-1044"));
        assertThat(rig.does(take("T-1044")).session().placed("T-1044")).isEmpty();
        assertThat(rig.codes(take("T-1044"))).containsExactly("not-in-lock");
    }

    @Test
    void nothing_is_taken_from_a_shut_lock() {
        assertThat(wireInPurgedLock().codes(take("T-1044"))).containsExactly("lock-shut");
    }

    @Test
    void what_came_out_leaves_the_lock_before_its_outer_door_shuts() {
        SessionRig rig = wireInPurgedLock().does(SessionRig::openInner).does(out("T-1042"))
                .does(SessionRig::shutInner).does(SessionRig::openOuter);
        assertThat(rig.refusals(ask -> ask.shutOuter(sweep()))).containsExactly(
                new SessionRefusal.OutboundInLock(List.of("T-1042")));
    }

    @Test
    void cautions_are_read_and_the_opening_of_the_inner_door_is_signed() {
        assertThat(wireInPurgedLock().codes(rig -> rig.openInner(Optional.empty(), false, INSPECTOR)))
                .containsExactly("session-role-missing", "session-cautions-not-read");
    }

    @Test
    void the_lock_waits_until_the_chamber_is_shut() {
        assertThat(checkedIn().codes(SessionRig::openOuter)).containsExactly("chamber-still-open");
        assertThat(checkedIn().does(SessionRig::close).codes(SessionRig::openOuter)).isEmpty();
    }

    @Test
    void a_chamber_without_a_lock_offers_none() {
        ChamberSession bare = ChamberSession.evolve(Optional.empty(), new SessionEvent.Opened(
                origin(0), ID, KIT, CHAMBER, Optional.empty(), List.of(), LEAD));
        ChamberSession shut = ChamberSession.evolve(Optional.of(bare), new SessionEvent.ChamberClosed(
                origin(1), ID, List.of(), "G-0901", LEAD));
        assertThat(SessionDecider.decide(Optional.of(shut), new SessionCommand.OpenOuter(ID, origin(2))))
                .isEqualTo(brightseam.kernel.Decision.refused(List.of(new SessionRefusal.NoLock(CHAMBER))));
    }

    @Test
    void what_an_opening_did_is_noted_once_and_only_when_it_is_over() {
        SessionRig rig = wireInPurgedLock().does(SessionRig::openInner);
        assertThat(rig.refusals(ask -> ask.notePass(1))).containsExactly(new SessionRefusal.PassNotOver(1));
        rig.does(SessionRig::shutInner);
        assertThat(rig.session().passesToJudge()).hasSize(1);
        rig.does(ask -> ask.notePass(1));
        assertThat(rig.session().passesToJudge()).isEmpty();
        assertThat(rig.session().passes().getFirst().effect().orElseThrow().oxygenPpmHighest())
                .isEqualTo(new BigDecimal("14.2"));
        assertThat(rig.events(ask -> ask.notePass(1))).isEmpty();
        assertThat(rig.codes(ask -> ask.notePass(2))).containsExactly("lock-pass-not-over");
    }

    private static List<Refusal> inner(SessionRig rig, MeterFact lock) {
        return rig.refusals(ask -> ask.openInner(Optional.of(lock), true, FABRICATOR));
    }
}
