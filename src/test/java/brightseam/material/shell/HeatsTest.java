package brightseam.material.shell;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.kernel.HeatId;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import brightseam.material.HeatCommand;
import brightseam.material.HeatEvent;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class HeatsTest {

    private static final HeatId TUBE = new HeatId("H-9T3381");
    private static final HeatId BAR = new HeatId("H-5B1120");
    private static final Instant RECEIVED = Instant.parse("2031-02-11T09:30:00.25Z");

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final Projection projection = Heats.heatProjection(jdbc);
    private final MemoryLedger ledger = new MemoryLedger(projection);
    private final Heats heats = new Heats(ledger, jdbc);

    @Test
    void rows_are_the_folded_states_and_a_rebuild_gives_the_same_rows() {
        done(register(TUBE, "tube"));
        done(register(BAR, "bar"));
        done(new HeatCommand.PutOnHold(TUBE, "certificate missing", ORIGIN));
        done(new HeatCommand.PutOnHold(BAR, "wrong form", ORIGIN));
        done(new HeatCommand.ReleaseHold(BAR, "form checked", ORIGIN));
        assertEquals(
                List.of(
                        heats.find(BAR).orElseThrow().state(),
                        heats.find(TUBE).orElseThrow().state()),
                heats.all());
        Map<String, List<String>> rows = FreshDatabase.rows(jdbc, projection);
        FreshDatabase.rebuild(jdbc, projection, ledger);
        assertEquals(rows, FreshDatabase.rows(jdbc, projection));
    }

    @Test
    void every_event_is_written_as_approved() {
        ApprovedEvents.check("heat-events.txt", HeatStreams.TYPES, HeatStreams.KIND.codec(), List.of(
                new HeatEvent.Registered(
                        ORIGIN, TUBE, "9", "tube", "38.1 x 1.65 mm", "Cold Shelf Metals", "C-20117", RECEIVED),
                new HeatEvent.HoldPut(ORIGIN, TUBE, "certificate missing"),
                new HeatEvent.HoldReleased(ORIGIN, TUBE, "certificate received")));
    }

    private void done(HeatCommand command) {
        assertInstanceOf(Outcome.Done.class, heats.execute(command));
    }

    private static HeatCommand register(HeatId heat, String form) {
        return new HeatCommand.RegisterHeat(
                heat, "9", form, "38.1 x 1.65 mm", "Cold Shelf Metals", "C-20117", RECEIVED, ORIGIN);
    }
}
