package brightseam.session;

import static brightseam.session.SessionRig.*;
import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.KitId;
import brightseam.kernel.SessionId;
import brightseam.kernel.StepId;
import brightseam.people.Role;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CheckInTest {

    private static final SessionId OTHER = new SessionId("CS-0011");

    @Test
    void a_session_begins_with_the_list_of_its_kit() {
        assertThat(new SessionRig().events(SessionRig::open)).containsExactly(new SessionEvent.Opened(
                new SessionRig().at(), ID, KIT, CHAMBER, Optional.of(LOCK), NEEDS, FABRICATOR));
        assertThat(opened().session().phase()).isEqualTo(Phase.CHECK_IN);
    }

    @Test
    void an_inspector_begins_none() {
        assertThat(new SessionRig().refusals(rig -> rig.open(INSPECTOR, Optional.empty(), Optional.empty())))
                .containsExactly(new SessionRefusal.SessionRoleMissing(
                        INSPECTOR.badge(), List.of(Role.FABRICATOR, Role.LEAD)));
    }

    @Test
    void one_session_at_a_time_in_a_chamber_and_for_a_kit() {
        assertThat(new SessionRig().refusals(rig -> rig.open(LEAD, Optional.of(OTHER), Optional.of(OTHER))))
                .containsExactly(new SessionRefusal.ChamberBusy(CHAMBER, OTHER),
                        new SessionRefusal.KitBusy(KIT, OTHER));
        assertThat(opened().codes(SessionRig::open)).containsExactly("session-already-opened");
    }

    @Test
    void nothing_is_asked_of_a_session_that_was_never_begun() {
        assertThat(new SessionRig().refusals(in(LEG))).containsExactly(new SessionRefusal.SessionUnknown(ID));
    }

    @Test
    void what_is_scanned_lies_in_the_open_chamber() {
        SessionRig rig = opened().later(60);
        assertThat(rig.events(in(LEG))).containsExactly(new SessionEvent.CheckedIn(rig.at(), ID, LEG));
        assertThat(rig.does(in(LEG)).session().placed("T-1042")).contains(
                new Placed(LEG, Placed.Where.CHECKED_IN, rig.now(), Optional.empty()));
    }

    @Test
    void a_thing_is_checked_in_once() {
        SessionRig rig = opened().later(60).does(in(LEG));
        assertThat(rig.later(5).refusals(in(LEG))).containsExactly(new SessionRefusal.ItemCheckedInAlready(
                "T-1042", brightseam.kernel.Samples.origin(60).at()));
    }

    @Test
    void a_thing_of_another_session_stays_out() {
        ItemFact fact = new ItemFact(TRAY, Optional.empty(), Optional.empty(), Optional.empty(), false,
                Optional.of(OTHER), List.of());
        assertThat(opened().refusals(rig -> rig.checkIn(fact))).containsExactly(
                new SessionRefusal.ItemInAnotherSession("TL-0001", OTHER));
    }

    @Test
    void a_part_of_another_kit_stays_out() {
        KitId other = new KitId("K-0048");
        assertThat(opened().refusals(rig -> rig.checkIn(traveller(LEG, other, "9", 30)))).containsExactly(
                new SessionRefusal.ItemOfAnotherKit("T-1042", other, KIT));
    }

    @Test
    void filler_is_of_a_lot_that_the_kit_names() {
        KitId other = new KitId("K-0048");
        Item wire = new Item(Item.Kind.FILLER, "T-1099", "FILLER", "Filler rods", 40);
        assertThat(opened().refusals(rig -> rig.checkIn(traveller(wire, other, "9", 30)))).containsExactly(
                new SessionRefusal.FillerNotOfKit("T-1099", KIT, List.of("T-1044")));
    }

    @Test
    void filler_is_of_a_grade_that_the_parts_have() {
        assertThat(opened().refusals(rig -> rig.checkIn(traveller(WIRE, KIT, "2", 30)))).containsExactly(
                new SessionRefusal.FillerOfWrongGrade("T-1044", "2", List.of("9")));
        assertThat(opened().refusals(rig -> rig.checkIn(traveller(LEG, KIT, "2", 30)))).isEmpty();
    }

    @Test
    void the_window_has_to_last_for_purge_and_work() {
        assertThat(opened().refusals(rig -> rig.checkIn(traveller(LEG, KIT, "9", 5)))).isEmpty();
        assertThat(opened().refusals(rig -> rig.checkIn(traveller(LEG, KIT, "9", 4)))).containsExactly(
                new SessionRefusal.ItemWindowTooShort("T-1042", Duration.ofHours(4), PURGE_AND_WORK));
    }

    @Test
    void every_reason_of_the_registers_is_told_with_the_others() {
        assertThat(opened().does(in(LEG)).codes(rig -> rig.checkIn(fact(LEG,
                new SessionRefusal.ItemStepNotSigned("T-1042", new StepId("bagging")),
                new SessionRefusal.ItemInQuarantine("T-1042", List.of(2))))))
                .containsExactly("item-checked-in-already", "item-step-not-signed", "item-in-quarantine");
    }

    @Test
    void a_supply_is_on_the_list_or_permitted_without_one() {
        Item chill = supply("TL-0009", "copper-chill");
        assertThat(opened().refusals(in(chill))).containsExactly(
                new SessionRefusal.ItemNotOnList("TL-0009", "copper-chill", KIT));
        ItemFact permitted = new ItemFact(chill, Optional.empty(), Optional.empty(), Optional.empty(), true,
                Optional.empty(), List.of());
        assertThat(opened().refusals(rig -> rig.checkIn(permitted))).isEmpty();
        assertThat(opened().refusals(in(supply("TL-0002", "stainless-lock-tray")))).isEmpty();
    }

    @Test
    void what_was_checked_in_is_taken_back() {
        SessionRig rig = opened().does(in(LEG));
        assertThat(rig.refusals(takeBack("T-1043"))).containsExactly(new SessionRefusal.ItemNotCheckedIn("T-1043"));
        assertThat(rig.does(takeBack("T-1042")).session().items()).isEmpty();
        assertThat(rig.refusals(in(LEG))).isEmpty();
    }

    @Test
    void the_list_tells_what_is_there_and_how_much_is_missing() {
        List<ListLine> list = opened().does(in(LEG)).does(in(GLOVES_A)).session().list();
        assertThat(list).extracting(ListLine::missing).containsExactly(0, 1, 1, 1, 1);
        assertThat(list).extracting(ListLine::there).containsExactly(
                List.of("T-1042"), List.of(), List.of(), List.of(), List.of("G-0031"));
        assertThat(list).extracting(ListLine::isMet).containsExactly(true, false, false, false, false);
    }

    @Test
    void a_lead_lets_something_missing_stay_out() {
        SessionRig rig = opened();
        assertThat(rig.codes(ask -> new SessionCommand.LeaveOut(
                ID, "T-1044", "late", list(NEEDS), ask.at(), FABRICATOR))).containsExactly("session-role-missing");
        assertThat(rig.refusals(leaveOut("T-9999"))).containsExactly(
                new SessionRefusal.NotOnTheList("T-9999", KIT));
        assertThat(rig.does(leaveOut("T-1044")).session().leftOut()).containsExactly(
                new LeftOut("T-1044", "comes with the noon batch", "Bram Oduya", rig.now()));
        assertThat(rig.does(in(WIRE)).refusals(leaveOut("T-1044"))).containsExactly(
                new SessionRefusal.NothingMissing("Filler rods"));
    }

    @Test
    void a_list_that_has_changed_is_written_down_with_the_next_scan() {
        SessionRig rig = opened().needing(need(LEG));
        assertThat(rig.events(in(LEG))).containsExactly(
                new SessionEvent.ListChanged(rig.at(), ID, List.of(need(LEG))),
                new SessionEvent.CheckedIn(rig.at(), ID, LEG));
        assertThat(rig.does(in(LEG)).session().needs()).containsExactly(need(LEG));
    }

    @Test
    void the_chamber_shuts_when_every_line_is_met() {
        SessionRig rig = checkedIn();
        assertThat(rig.events(SessionRig::close)).containsExactly(new SessionEvent.ChamberClosed(rig.at(), ID,
                List.of("G-0031", "G-0032", "T-1042", "T-1043", "T-1044", "TL-0001"), "G-0901", FABRICATOR));
        ChamberSession closed = rig.does(SessionRig::close).session();
        assertThat(closed.phase()).isEqualTo(Phase.CLOSED);
        assertThat(closed.items()).allMatch(one -> one.where() == Placed.Where.INSIDE && one.inBy().isEmpty());
        assertThat(closed.travellersPassedIn()).extracting(Object::toString)
                .containsExactly("T-1042", "T-1043", "T-1044");
    }

    @Test
    void every_line_that_is_not_met_is_named() {
        assertThat(opened().does(in(LEG)).does(in(GLOVES_A)).does(leaveOut("T-1044")).refusals(SessionRig::close))
                .containsExactly(new SessionRefusal.NeedNotMet("Release bail lug", "T-1043", 1),
                        new SessionRefusal.NeedNotMet("Tray", "stainless-lock-tray", 1),
                        new SessionRefusal.NeedNotMet("White cotton gloves", "white-cotton", 1));
    }

    @Test
    void a_line_that_came_late_to_the_list_keeps_the_chamber_open() {
        assertThat(checkedIn().needing(need(LEG), new Need(Item.Kind.PARTS, "T-1050", "Brace", 1))
                .refusals(SessionRig::close)).containsExactly(new SessionRefusal.NeedNotMet("Brace", "T-1050", 1));
    }

    @Test
    void an_empty_chamber_is_not_shut() {
        assertThat(opened().needing().codes(SessionRig::close)).containsExactly("chamber-empty");
    }

    @Test
    void a_chamber_is_not_shut_without_an_oxygen_meter_that_tells() {
        assertThat(checkedIn().refusals(rig -> rig.close(Optional.empty(), true, LEAD)))
                .containsExactly(new SessionRefusal.NoOxygenMeter(CHAMBER));
        assertThat(checkedIn().refusals(rig -> rig.close(
                Optional.of(meter(O2, "3", "uncalibrated", "silent")), true, LEAD)))
                .containsExactly(new SessionRefusal.MeterNotUsable(O2, List.of("uncalibrated", "silent")));
        assertThat(checkedIn().refusals(rig -> rig.close(Optional.of(new MeterFact(
                O2, Optional.empty(), Optional.empty(), List.of(), true)), true, LEAD)))
                .containsExactly(new SessionRefusal.MeterNotUsable(O2, List.of("never-heard")));
    }

    @Test
    void a_meter_for_ppm_that_stands_at_its_end_in_air_is_no_fault() {
        assertThat(checkedIn().refusals(rig -> rig.close(
                Optional.of(meter(O2, "1000", "out-of-range", "frozen")), true, LEAD))).isEmpty();
    }

    @Test
    void cautions_are_read_and_somebody_who_may_signs() {
        assertThat(checkedIn().codes(rig -> rig.close(Optional.of(meter(O2, "900")), false, INSPECTOR)))
                .containsExactly("session-role-missing", "session-cautions-not-read");
    }

    @Test
    void nothing_is_checked_in_or_taken_back_through_a_shut_chamber() {
        assertThat(closed().codes(in(supply("TL-0002", "stainless-lock-tray")))).containsExactly("chamber-shut");
        assertThat(closed().codes(takeBack("T-1042"))).containsExactly("chamber-shut");
        assertThat(closed().codes(SessionRig::close)).contains("chamber-shut");
        assertThat(closed().codes(leaveOut("T-1042"))).contains("chamber-shut");
    }

    private static ItemFact traveller(Item item, KitId kit, String grade, int hoursLeft) {
        return new ItemFact(item, Optional.of(kit), Optional.of(grade), Optional.of(Duration.ofHours(hoursLeft)),
                false, Optional.empty(), List.of());
    }
}
