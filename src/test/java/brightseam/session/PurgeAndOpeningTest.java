package brightseam.session;

import static brightseam.session.SessionRig.*;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.Refusal;
import brightseam.people.Role;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PurgeAndOpeningTest {

    /** Stands for what the joints say of one that is hot, or of an arc without an end. */
    private record Hot(String joint) implements Refusal {
        @Override
        public String code() {
            return "hot";
        }
    }

    @Test
    void a_purge_starts_with_argon_that_lasts_and_keeps_the_limits_of_that_moment() {
        SessionRig rig = closed();
        assertThat(rig.events(SessionRig::startPurge)).containsExactly(new SessionEvent.PurgeStarted(rig.at(), ID,
                argon("16000", "5200", "2", "3.5"), LIMITS, Optional.of(Duration.ofMinutes(110))));
        assertThat(rig.does(SessionRig::startPurge).session().gas().limits()).contains(LIMITS);
        assertThat(rig.session().phase()).isEqualTo(Phase.PURGING);
    }

    @Test
    void a_purge_that_cannot_be_finished_does_not_start() {
        assertThat(closed().refusals(rig -> rig.startPurge(Optional.of(argon("5199.9", "5200", "2", "3.5")))))
                .containsExactly(new SessionRefusal.ArgonTooLittle(
                        ARGON, new BigDecimal("5199.9"), new BigDecimal("5200")));
        assertThat(closed().refusals(rig -> rig.startPurge(Optional.of(argon("5200", "5200", "2", "3.5"))))).isEmpty();
        assertThat(closed().codes(rig -> rig.startPurge(Optional.empty()))).containsExactly("session-without-argon");
    }

    @Test
    void no_purge_makes_the_gas_better_than_what_flows_in() {
        assertThat(closed().refusals(rig -> rig.startPurge(Optional.of(argon("9000", "5200", "20", "50")))))
                .containsExactly(
                        new SessionRefusal.ArgonTooImpure(ARGON, new BigDecimal("20"), new BigDecimal("20")),
                        new SessionRefusal.ArgonTooWet(ARGON, new BigDecimal("50"), new BigDecimal("50")));
    }

    @Test
    void an_open_chamber_is_not_purged_and_a_purged_one_not_again() {
        assertThat(checkedIn().codes(SessionRig::startPurge)).containsExactly("chamber-still-open");
        assertThat(purging().codes(SessionRig::startPurge)).containsExactly("purge-running");
        assertThat(fit().codes(SessionRig::startPurge)).containsExactly("purge-running");
    }

    @Test
    void a_purge_is_stopped_and_begun_again_from_nothing() {
        SessionRig rig = fit().later(60);
        assertThat(rig.does(ask -> ask.stopPurge()).session().phase()).isEqualTo(Phase.CLOSED);
        assertThat(rig.session().gas().fit()).isEmpty();
        assertThat(rig.session().gas().purge().orElseThrow().stoppedAt()).contains(rig.now());
        assertThat(rig.codes(ask -> ask.stopPurge())).containsExactly("no-purge-running");
        assertThat(rig.events(SessionRig::noteFit)).isEmpty();
        assertThat(rig.does(SessionRig::startPurge).does(SessionRig::noteFit).session().phase()).isEqualTo(Phase.FIT);
    }

    @Test
    void argon_is_not_turned_off_over_a_hot_joint() {
        assertThat(fit().refusals(rig -> rig.stopPurge(new Hot("K-0047.J01"))))
                .containsExactly(new Hot("K-0047.J01"));
    }

    @Test
    void fit_and_unfit_are_written_down_where_they_change() {
        SessionRig rig = purging().later(7_200);
        assertThat(rig.events(SessionRig::noteUnfit)).isEmpty();
        assertThat(rig.events(SessionRig::noteFit)).containsExactly(new SessionEvent.FoundFit(rig.at(), ID,
                rig.now().plus(Duration.ofMinutes(-6)), new BigDecimal("8.4"), Optional.of(new BigDecimal("22.0"))));
        rig.does(SessionRig::noteFit).later(1);
        assertThat(rig.events(SessionRig::noteFit)).isEmpty();
        assertThat(rig.events(SessionRig::noteUnfit)).singleElement().satisfies(event ->
                assertThat(((SessionEvent.FoundUnfit) event).reasons()).extracting(Broken::code)
                        .containsExactly("oxygen-above-limit"));
        assertThat(rig.does(SessionRig::noteUnfit).session().phase()).isEqualTo(Phase.UNFIT);
        assertThat(rig.events(SessionRig::noteUnfit)).isEmpty();
        assertThat(rig.does(SessionRig::noteFit).session().phase()).isEqualTo(Phase.FIT);
    }

    @Test
    void readings_of_a_chamber_that_is_not_purged_make_nothing_fit() {
        assertThat(checkedIn().later(600).events(SessionRig::noteFit)).isEmpty();
        assertThat(closed().later(600).events(SessionRig::noteFit)).isEmpty();
    }

    @Test
    void the_chamber_is_opened_and_the_argon_counted() {
        SessionRig rig = fit().later(9_000);
        assertThat(rig.events(SessionRig::openChamber)).containsExactly(new SessionEvent.Ended(rig.at(), ID,
                List.of(new ArgonUse(ARGON, "LOT 5", new BigDecimal("5010"))), Optional.of(new BigDecimal("5200")),
                Optional.of(new BigDecimal("20.9")), LEAD));
        ChamberSession ended = rig.does(SessionRig::openChamber).session();
        assertThat(ended.phase()).isEqualTo(Phase.ENDED);
        assertThat(ended.overAt()).contains(rig.now());
        assertThat(ended.gas().purge().orElseThrow().stoppedAt()).contains(rig.now());
    }

    @Test
    void a_hot_joint_keeps_the_chamber_shut() {
        assertThat(open(opening(Optional.of(meter(ROOM, "20.9")), true, new Hot("K-0047.J01"))))
                .containsExactly(new Hot("K-0047.J01"));
    }

    @Test
    void bad_air_in_the_room_keeps_the_chamber_shut() {
        assertThat(open(opening(Optional.of(meter(ROOM, "19.4")), true))).containsExactly(
                new SessionRefusal.RoomOxygenLow(ROOM, new BigDecimal("19.4"), new BigDecimal("19.5")));
        assertThat(open(opening(Optional.of(meter(ROOM, "19.5")), true))).isEmpty();
        assertThat(open(opening(Optional.of(meter(ROOM, "20.9", "uncalibrated")), true))).containsExactly(
                new SessionRefusal.RoomMonitorNotUsable(ROOM, List.of("uncalibrated")));
        assertThat(open(opening(Optional.empty(), true))).isEmpty();
    }

    @Test
    void cautions_are_read_before_the_chamber_is_opened() {
        assertThat(open(opening(Optional.empty(), false))).containsExactly(
                new SessionRefusal.SessionCautionsNotRead(ID));
    }

    @Test
    void the_chamber_stays_shut_while_the_lock_is_in_use() {
        assertThat(wireInPurgedLock().refusals(SessionRig::openChamber)).containsExactly(
                new SessionRefusal.ItemsInLock(List.of("T-1044")));
        assertThat(wireInPurgedLock().does(SessionRig::openInner).codes(SessionRig::openChamber))
                .containsExactly("inner-door-open");
        assertThat(fit().does(SessionRig::openOuter).codes(SessionRig::openChamber))
                .containsExactly("outer-door-open");
    }

    @Test
    void an_inspector_does_not_open_it_and_an_open_one_is_not_opened() {
        assertThat(fit().codes(rig -> rig.openChamber(opening(Optional.empty(), true), INSPECTOR)))
                .containsExactly("session-role-missing");
        assertThat(checkedIn().codes(SessionRig::openChamber)).containsExactly("chamber-still-open");
    }

    @Test
    void a_lead_gives_a_session_up_and_a_shut_chamber_asks_the_same_then() {
        assertThat(opened().refusals(rig -> rig.abandon(FABRICATOR))).containsExactly(
                new SessionRefusal.SessionRoleMissing(FABRICATOR.badge(), List.of(Role.LEAD)));
        assertThat(opened().does(rig -> rig.abandon(LEAD)).session().phase()).isEqualTo(Phase.ABANDONED);
        assertThat(wireInPurgedLock().codes(rig -> rig.abandon(LEAD))).containsExactly("items-in-lock");
        assertThat(fit().does(rig -> rig.abandon(LEAD)).session().phase()).isEqualTo(Phase.ABANDONED);
    }

    @Test
    void nothing_is_done_in_a_session_that_is_over() {
        SessionRig rig = fit().does(SessionRig::openChamber);
        assertThat(List.of(rig.codes(SessionRig::openOuter), rig.codes(in(LEG)), rig.codes(SessionRig::startPurge),
                rig.codes(ask -> ask.abandon(LEAD)), rig.codes(SessionRig::openChamber)))
                .allSatisfy(codes -> assertThat(codes).contains("session-over"));
        assertThat(rig.events(SessionRig::noteFit)).isEmpty();
    }

    private static List<Refusal> open(OpeningFact opening) {
        return fit().refusals(rig -> rig.openChamber(opening, LEAD));
    }
}
