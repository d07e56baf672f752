package brightseam.line.shell;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.kernel.StationId;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import brightseam.line.StationCommand;
import brightseam.line.StationEvent;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class StationsTest {

    private static final StationId TANK = new StationId("S-ACID-1");
    private static final StationId SAW = new StationId("S-SAW-1");

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final Projection projection = Stations.stationProjection(jdbc);
    private final MemoryLedger ledger = new MemoryLedger(projection);
    private final Stations stations = new Stations(ledger, jdbc);

    @Test
    void rows_are_the_folded_states_and_a_rebuild_gives_the_same_rows() {
        done(new StationCommand.RegisterStation(TANK, "pickle-tank", "Acid tank 1", true, ORIGIN));
        done(new StationCommand.RegisterStation(SAW, "saw", "Cold saw", false, ORIGIN));
        done(new StationCommand.TakeOutOfUse(TANK, "extraction fan stopped", ORIGIN));
        done(new StationCommand.TakeOutOfUse(SAW, "blade worn", ORIGIN));
        done(new StationCommand.PutBackIntoUse(SAW, ORIGIN));
        assertEquals(
                List.of(
                        stations.find(TANK).orElseThrow().state(),
                        stations.find(SAW).orElseThrow().state()),
                stations.all());
        Map<String, List<String>> rows = FreshDatabase.rows(jdbc, projection);
        FreshDatabase.rebuild(jdbc, projection, ledger);
        assertEquals(rows, FreshDatabase.rows(jdbc, projection));
    }

    @Test
    void every_event_is_written_as_approved() {
        ApprovedEvents.check("station-events.txt", StationStreams.TYPES, StationStreams.KIND.codec(), List.of(
                new StationEvent.Registered(ORIGIN, TANK, "pickle-tank", "Acid tank 1", true),
                new StationEvent.TakenOutOfUse(ORIGIN, TANK, "extraction fan stopped"),
                new StationEvent.PutBackIntoUse(ORIGIN, TANK)));
    }

    private void done(StationCommand command) {
        assertInstanceOf(Outcome.Done.class, stations.execute(command));
    }
}
