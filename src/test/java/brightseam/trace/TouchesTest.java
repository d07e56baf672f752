package brightseam.trace;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.traveller.Stories;
import brightseam.traveller.TravellerEvent;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class TouchesTest {

    @Test
    void a_closed_lot_was_touched_by_its_heat_its_kit_every_bin_every_station_and_every_hand() {
        List<TravellerEvent> record = Stories.closed();
        List<Touch> touches = TouchLog.of(record).touches();
        assertThat(of(touches, ThingKind.HEAT)).singleElement()
                .satisfies(touch -> assertThat(touch.pieces()).containsExactly(1, 2, 3, 4));
        assertThat(of(touches, ThingKind.KIT)).hasSize(1);
        assertThat(of(touches, ThingKind.BIN)).hasSameSizeAs(all(record, TravellerEvent.PutInBin.class));
        assertThat(of(touches, ThingKind.STATION)).hasSize((int) all(record, TravellerEvent.StepStarted.class).stream()
                .filter(event -> event.station().isPresent()).count());
        assertThat(of(touches, ThingKind.PERSON)).extracting(touch -> touch.thing().label()).contains("P-0001",
                "P-0003", "P-0004").doesNotContain("SHOP");
    }

    @Test
    void a_bin_touches_until_the_next_bin_and_nothing_does_once_the_lot_is_closed() {
        List<Touch> touches = TouchLog.of(Stories.closed()).touches();
        List<Touch> bins = of(touches, ThingKind.BIN);
        for (int i = 1; i < bins.size(); i++) {
            assertThat(bins.get(i - 1).until()).contains(bins.get(i).from());
        }
        assertThat(touches).filteredOn(touch -> touch.until().isEmpty())
                .extracting(touch -> touch.thing().kind()).containsOnly(ThingKind.HEAT, ThingKind.KIT);
    }

    @Test
    void a_tank_touches_from_the_start_of_the_step_until_the_hold_has_ended_not_until_the_signature() {
        List<TravellerEvent> record = Stories.closed();
        Instant out = all(record, TravellerEvent.HoldEnded.class).stream()
                .filter(event -> event.step().value().equals("pickle")).findFirst().orElseThrow().at().wall();
        Touch tank = at(of(TouchLog.of(record).touches(), ThingKind.STATION), "pickle", 1);
        assertThat(tank.until()).contains(out);
        Instant in = all(record, TravellerEvent.StepStarted.class).stream()
                .filter(event -> event.step().value().equals("pickle")).findFirst().orElseThrow().at().wall();
        assertThat(tank.from()).isEqualTo(in);
    }

    @Test
    void rework_gives_the_same_step_a_second_contact() {
        List<Touch> touches = TouchLog.of(Stories.troubled("a sleeve")).touches();
        List<Touch> tanks = of(touches, ThingKind.STATION);
        assertThat(at(tanks, "pickle", 2).from()).isAfter(at(tanks, "pickle", 1).from());
    }

    @Test
    void gas_meter_and_filler_touch_the_pieces_of_a_joint_for_as_long_as_it_is_hot() {
        List<TravellerEvent> record = Stories.inTheChamber();
        List<Touch> argon = of(TouchLog.of(record).touches(), ThingKind.ARGON);
        assertThat(argon).extracting(touch -> touch.joint().orElseThrow().number() + " " + touch.pieces() + " pass "
                + touch.pass()).containsExactly("J03 [1, 2] pass 1", "J04 [3] pass 1", "J05 [4] pass 1",
                "J05 [4] pass 2");
        TravellerEvent.JointWelded first = all(record, TravellerEvent.JointWelded.class).get(1);
        assertThat(argon.getFirst().from()).isEqualTo(first.joint().startedAt().wall());
        assertThat(argon.getFirst().until()).contains(first.joint().hotUntil().wall());
        assertThat(argon.getFirst().thing()).isEqualTo(new Thing(ThingKind.ARGON, "A-0031", "AR 90-117"));
        List<Touch> touches = TouchLog.of(record).touches();
        assertThat(of(touches, ThingKind.GAUGE)).extracting(touch -> touch.thing().label()).contains("G-0701");
        assertThat(of(touches, ThingKind.FILLER)).hasSize(4);
        assertThat(of(touches, ThingKind.PERSON)).anyMatch(touch -> touch.thing().label().equals("P-0001")
                && touch.step().orElseThrow().value().equals("weld"));
    }

    @Test
    void lock_and_chamber_are_stations_that_the_pieces_were_at_and_the_bag_is_left_behind() {
        List<Touch> touches = TouchLog.of(Stories.inTheChamber()).touches();
        assertThat(of(touches, ThingKind.STATION)).extracting(touch -> touch.thing().label())
                .contains("S-LOCK-1", "S-CHAMBER-1");
        Touch bag = of(touches, ThingKind.BIN).getLast();
        Touch chamber = of(touches, ThingKind.STATION).stream()
                .filter(touch -> touch.thing().label().equals("S-CHAMBER-1")).toList().getLast();
        assertThat(bag.until().orElseThrow()).isBeforeOrEqualTo(chamber.from());
    }

    @Test
    void what_is_set_apart_takes_along_what_touched_it_before_for_its_own_pieces_alone() {
        List<TravellerEvent> record = Stories.apart();
        List<Touch> touches = TouchLog.of(record).touches();
        assertThat(touches).allSatisfy(touch -> {
            assertThat(touch.pieces()).containsExactly(3);
            assertThat(touch.traveller().value()).isEqualTo("T-1042.1");
            assertThat(touch.recordedAs().value()).isEqualTo("T-1042");
        });
        assertThat(of(touches, ThingKind.HEAT)).hasSize(1);
        assertThat(of(touches, ThingKind.BIN)).as("scrapped: in no bin").allMatch(touch -> touch.until().isPresent());
    }

    @Test
    void a_clock_that_is_set_back_never_ends_contact_before_it_began() {
        Instant ten = Instant.parse("2031-03-04T10:00:00Z");
        Touch touch = TouchLog.of(Stories.closed()).touches().getFirst().lasting(ten.minusSeconds(3600 * 24 * 365));
        assertThat(touch.until()).contains(touch.from());
    }

    @Test
    void piece_numbers_are_written_short_and_read_back() {
        assertThat(PieceNumbers.write(List.of(7, 1, 2, 3, 4, 4))).isEqualTo("1-4,7");
        assertThat(PieceNumbers.read("1-4,7")).containsExactly(1, 2, 3, 4, 7);
        assertThat(PieceNumbers.write(List.of())).isEmpty();
        assertThat(PieceNumbers.read("")).isEmpty();
    }

    private static List<Touch> of(List<Touch> touches, ThingKind kind) {
        return touches.stream().filter(touch -> touch.thing().kind() == kind).toList();
    }

    private static Touch at(List<Touch> touches, String step, int pass) {
        return touches.stream().filter(touch -> touch.pass() == pass
                && touch.step().filter(at -> at.value().equals(step)).isPresent()).findFirst().orElseThrow();
    }

    private static <E extends TravellerEvent> List<E> all(List<TravellerEvent> record, Class<E> type) {
        return record.stream().filter(type::isInstance).map(type::cast).toList();
    }
}
