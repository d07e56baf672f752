package brightseam.kit.shell;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kit.KitCommand;
import brightseam.kit.KitEvent;
import brightseam.kit.KitLine;
import brightseam.kit.SetNeed;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class KitsTest {

    private static final KitId FRAME = new KitId("K-07");
    private static final KitId SPARES = new KitId("K-08");
    private static final Optional<Instant> DUE = Optional.of(Instant.parse("2031-03-06T05:30:00Z"));
    private static final KitLine LEG = new KitLine(
            1, "LF-100-01", "Leg, upper tube", "B", 4, "TUBE", Optional.of(new HeatId("H-9T3381")));
    private static final KitLine LUG =
            new KitLine(2, "LF-110-03", "Release bail lug", "-", 2, "FITTING", Optional.empty());
    private static final SetNeed GLOVES = new SetNeed("white-cotton", "White cotton gloves", 2);
    private static final SetNeed TRAY = new SetNeed("stainless-lock-tray", "Tray", 1);

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final Projection projection = Kits.kitProjection(jdbc);
    private final MemoryLedger ledger = new MemoryLedger(projection);
    private final Kits kits = new Kits(ledger, jdbc);

    @Test
    void rows_are_the_folded_states_and_a_rebuild_gives_the_same_rows() {
        done(new KitCommand.OpenKit(FRAME, "Lander frame 3", DUE, ORIGIN));
        done(new KitCommand.AddLines(FRAME, List.of(LUG), ORIGIN));
        done(new KitCommand.AddLines(FRAME, List.of(LEG), ORIGIN));
        done(new KitCommand.OpenKit(SPARES, "Spare lugs", Optional.empty(), ORIGIN));
        done(new KitCommand.ChangeSessionDue(SPARES, DUE, ORIGIN));
        done(new KitCommand.SetNeeds(FRAME, List.of(GLOVES, TRAY), ORIGIN));
        done(new KitCommand.SetNeeds(FRAME, List.of(TRAY), ORIGIN));
        done(new KitCommand.SetNeeds(SPARES, List.of(), ORIGIN));
        assertEquals(
                List.of(
                        kits.find(FRAME).orElseThrow().state(),
                        kits.find(SPARES).orElseThrow().state()),
                kits.open());
        done(new KitCommand.CloseKit(SPARES, ORIGIN));
        assertEquals(List.of(kits.find(FRAME).orElseThrow().state()), kits.open());
        Map<String, List<String>> rows = FreshDatabase.rows(jdbc, projection);
        FreshDatabase.rebuild(jdbc, projection, ledger);
        assertEquals(rows, FreshDatabase.rows(jdbc, projection));
    }

    @Test
    void every_event_is_written_as_approved() {
        ApprovedEvents.check("kit-events.txt", KitStreams.TYPES, KitStreams.KIND.codec(), List.of(
                new KitEvent.Opened(ORIGIN, FRAME, "Lander frame 3", DUE),
                new KitEvent.Opened(ORIGIN, SPARES, "Spare lugs", Optional.empty()),
                new KitEvent.SessionDueChanged(ORIGIN, SPARES, DUE),
                new KitEvent.SessionDueChanged(ORIGIN, SPARES, Optional.empty()),
                new KitEvent.LinesAdded(ORIGIN, FRAME, List.of(LEG, LUG)),
                new KitEvent.NeedsSet(ORIGIN, FRAME, List.of(GLOVES, TRAY)),
                new KitEvent.NeedsSet(ORIGIN, SPARES, List.of()),
                new KitEvent.Closed(ORIGIN, FRAME)));
    }

    private void done(KitCommand command) {
        assertInstanceOf(Outcome.Done.class, kits.execute(command));
    }
}
