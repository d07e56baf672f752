package brightseam.material;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import brightseam.kernel.Decision;
import brightseam.kernel.HeatId;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HeatDeciderTest {

    private static final HeatId HEAT = new HeatId("H-9T3381");
    private static final Instant RECEIVED = Instant.parse("2031-02-11T09:30:00Z");
    private static final HeatEvent REGISTERED = new HeatEvent.Registered(
            ORIGIN, HEAT, "9", "tube", "38.1 x 1.65 mm", "Cold Shelf Metals", "C-20117", RECEIVED);
    private static final HeatEvent HELD = new HeatEvent.HoldPut(ORIGIN, HEAT, "oxygen above limit on recheck");
    private static final HeatEvent RELEASED = new HeatEvent.HoldReleased(ORIGIN, HEAT, "second laboratory agrees");
    private static final HeatCommand REGISTER = new HeatCommand.RegisterHeat(
            HEAT, "9", "tube", " 38.1 x 1.65 mm ", "Cold Shelf Metals", "C-20117", RECEIVED, ORIGIN);
    private static final HeatCommand HOLD =
            new HeatCommand.PutOnHold(HEAT, "oxygen above limit on recheck", ORIGIN);
    private static final HeatCommand RELEASE =
            new HeatCommand.ReleaseHold(HEAT, "second laboratory agrees", ORIGIN);

    @Test
    void a_heat_is_received_once() {
        accepts(List.of(), REGISTER, REGISTERED);
        refuses(List.of(REGISTERED), REGISTER, new HeatRefusal.HeatAlreadyRegistered(HEAT, "C-20117"));
    }

    @Test
    void an_unknown_heat_is_not_held_or_released() {
        refuses(List.of(), HOLD, new HeatRefusal.HeatUnknown(HEAT));
        refuses(List.of(), RELEASE, new HeatRefusal.HeatUnknown(HEAT));
    }

    @Test
    void a_hold_is_put_and_released_in_turn() {
        accepts(List.of(REGISTERED), HOLD, HELD);
        refuses(List.of(REGISTERED, HELD), HOLD, new HeatRefusal.HeatOnHold(HEAT, "oxygen above limit on recheck"));
        accepts(List.of(REGISTERED, HELD), RELEASE, RELEASED);
        refuses(List.of(REGISTERED, HELD, RELEASED), RELEASE, new HeatRefusal.HeatNotOnHold(HEAT));
        accepts(List.of(REGISTERED, HELD, RELEASED), HOLD, HELD);
    }

    @Test
    void a_hold_needs_a_reason() {
        assertThrows(IllegalArgumentException.class, () -> new HeatCommand.PutOnHold(HEAT, "  ", ORIGIN));
    }

    private static void accepts(List<HeatEvent> given, HeatCommand when, HeatEvent then) {
        assertEquals(Decision.<HeatEvent>accepted(List.of(then)), HeatDecider.decide(fold(given), when));
    }

    private static void refuses(List<HeatEvent> given, HeatCommand when, HeatRefusal then) {
        assertEquals(Decision.<HeatEvent>refused(List.of(then)), HeatDecider.decide(fold(given), when));
    }

    private static Optional<Heat> fold(List<HeatEvent> events) {
        Optional<Heat> heat = Optional.empty();
        for (HeatEvent event : events) {
            heat = Optional.of(Heat.evolve(heat, event));
        }
        return heat;
    }
}
