package brightseam.line;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import brightseam.kernel.Decision;
import brightseam.kernel.StationId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StationDeciderTest {

    private static final StationId TANK = new StationId("S-ACID-1");
    private static final StationEvent REGISTERED =
            new StationEvent.Registered(ORIGIN, TANK, "pickle-tank", "Acid tank 1", true);
    private static final StationEvent STOPPED = new StationEvent.TakenOutOfUse(ORIGIN, TANK, "extraction fan stopped");
    private static final StationEvent BACK = new StationEvent.PutBackIntoUse(ORIGIN, TANK);
    private static final StationCommand REGISTER =
            new StationCommand.RegisterStation(TANK, "pickle-tank", "Acid tank 1", true, ORIGIN);
    private static final StationCommand STOP =
            new StationCommand.TakeOutOfUse(TANK, "extraction fan stopped", ORIGIN);
    private static final StationCommand PUT_BACK = new StationCommand.PutBackIntoUse(TANK, ORIGIN);

    @Test
    void a_station_is_registered_once() {
        accepts(List.of(), REGISTER, REGISTERED);
        refuses(List.of(REGISTERED), REGISTER, new StationRefusal.StationAlreadyRegistered(TANK, "Acid tank 1"));
    }

    @Test
    void an_unknown_station_is_not_stopped_or_put_back() {
        refuses(List.of(), STOP, new StationRefusal.StationUnknown(TANK));
        refuses(List.of(), PUT_BACK, new StationRefusal.StationUnknown(TANK));
    }

    @Test
    void a_station_goes_out_of_use_and_back_in_turn() {
        accepts(List.of(REGISTERED), STOP, STOPPED);
        refuses(List.of(REGISTERED), PUT_BACK, new StationRefusal.StationInUse(TANK));
        refuses(
                List.of(REGISTERED, STOPPED),
                STOP,
                new StationRefusal.StationOutOfUse(TANK, "extraction fan stopped"));
        accepts(List.of(REGISTERED, STOPPED), PUT_BACK, BACK);
        accepts(List.of(REGISTERED, STOPPED, BACK), STOP, STOPPED);
    }

    @Test
    void a_station_class_is_written_as_procedures_write_it() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new StationCommand.RegisterStation(TANK, "Pickle Tank", "Acid tank 1", true, ORIGIN));
    }

    private static void accepts(List<StationEvent> given, StationCommand when, StationEvent then) {
        assertEquals(Decision.<StationEvent>accepted(List.of(then)), StationDecider.decide(fold(given), when));
    }

    private static void refuses(List<StationEvent> given, StationCommand when, StationRefusal then) {
        assertEquals(Decision.<StationEvent>refused(List.of(then)), StationDecider.decide(fold(given), when));
    }

    private static Optional<Station> fold(List<StationEvent> events) {
        Optional<Station> station = Optional.empty();
        for (StationEvent event : events) {
            station = Optional.of(Station.evolve(station, event));
        }
        return station;
    }
}
