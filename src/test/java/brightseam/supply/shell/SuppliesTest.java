package brightseam.supply.shell;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.SupplyId;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.ledger.shell.Projection;
import brightseam.procedure.Surface;
import brightseam.procedure.Use;
import brightseam.procedure.Vocabulary.SupplyType;
import brightseam.supply.Scanned;
import brightseam.supply.Supply;
import brightseam.supply.SupplyCommand;
import brightseam.supply.SupplyEvent;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class SuppliesTest {

    private static final SupplyId GLOVES = new SupplyId("G-0101");
    private static final SupplyId CALIPER = new SupplyId("G-0401");
    private static final LocalDate LAST_DAY = LocalDate.of(2031, 9, 1);
    private static final SupplyType NITRILE = new SupplyType(
            "clean-nitrile", "Nitrile gloves", ContactKind.GLOVES, Set.of(Surface.values()));
    private static final SupplyType CALIPERS =
            new SupplyType("caliper", "Caliper", ContactKind.GAUGE, Set.of(Surface.UNCLEANED));

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final Projection projection = Supplies.supplyProjection(jdbc);
    private final MemoryLedger ledger = new MemoryLedger(projection);
    private final Supplies supplies = new Supplies(ledger, jdbc);

    private void done(SupplyCommand command) {
        assertInstanceOf(Outcome.Done.class, supplies.execute(command));
    }

    private void twoRegistered() {
        done(new SupplyCommand.RegisterSupply(GLOVES, NITRILE, "Box of 100", "FN-1", "Fennmark", Optional.empty(),
                Set.of(Surface.values()), ORIGIN));
        done(new SupplyCommand.RegisterSupply(CALIPER, CALIPERS, "Caliper, 150 mm", "VC-1", "Vantwick",
                Optional.of(LAST_DAY), Set.of(Surface.UNCLEANED), ORIGIN));
    }

    @Test
    void rows_are_the_folded_states_and_a_rebuild_gives_the_same_rows() {
        twoRegistered();
        done(new SupplyCommand.OpenSupply(GLOVES, ORIGIN));
        done(new SupplyCommand.ReportContaminated(CALIPER, "lay on the steel bench", ORIGIN));
        done(new SupplyCommand.DeclareClean(CALIPER, "wiped with acetone, jaws looked at", ORIGIN));
        done(new SupplyCommand.ReportContaminated(GLOVES, "oil on the box", ORIGIN));
        assertEquals(List.of(supplies.find(GLOVES).orElseThrow().state(), supplies.find(CALIPER).orElseThrow().state()),
                supplies.all());
        Map<String, List<String>> rows = FreshDatabase.rows(jdbc, projection);
        FreshDatabase.rebuild(jdbc, projection, ledger);
        assertEquals(rows, FreshDatabase.rows(jdbc, projection));
    }

    @Test
    void a_day_ends_at_midnight_on_the_shop_s_wall() {
        twoRegistered();
        Instant midnight = LAST_DAY.plusDays(1).atStartOfDay(ZoneId.systemDefault()).toInstant();
        assertEquals(List.of(), objections(CALIPER, midnight.minusMillis(1)));
        assertEquals(List.of("calibration-overdue"), objections(CALIPER, midnight));
    }

    @Test
    void what_is_not_registered_is_said_and_the_rest_is_found_all_the_same() {
        twoRegistered();
        Scanned scanned = supplies.look(List.of(CALIPER, new SupplyId("G-9999")), use(), Surface.UNCLEANED,
                new Moment(Instant.parse("2031-03-04T09:00:00Z"), 1));
        assertEquals(List.of(CALIPER), scanned.known().stream().map(Supply::id).toList());
        assertEquals(List.of("supply-unknown"), scanned.objections().stream().map(Refusal::code).toList());
    }

    @Test
    void every_event_is_written_as_approved() {
        ApprovedEvents.check("supply-events.txt", SupplyStreams.TYPES, SupplyStreams.KIND.codec(), List.of(
                new SupplyEvent.Registered(ORIGIN, CALIPER, ContactKind.GAUGE, "caliper", "Caliper, 150 mm", "VC-1",
                        "Vantwick", Optional.of(LAST_DAY), List.of(Surface.UNCLEANED)),
                new SupplyEvent.Registered(ORIGIN, GLOVES, ContactKind.GLOVES, "clean-nitrile", "Box of 100", "FN-1",
                        "Fennmark", Optional.empty(), List.of(Surface.UNCLEANED, Surface.CLEANED)),
                new SupplyEvent.Opened(ORIGIN, GLOVES),
                new SupplyEvent.Contaminated(ORIGIN, CALIPER, "lay on the steel bench"),
                new SupplyEvent.MadeClean(ORIGIN, CALIPER, "wiped with acetone"),
                new SupplyEvent.Calibrated(ORIGIN, CALIPER, LAST_DAY.plusDays(180), "C-88"),
                new SupplyEvent.UsedUp(ORIGIN, GLOVES),
                new SupplyEvent.Retired(ORIGIN, CALIPER, "jaws bent")));
    }

    private static List<Use> use() {
        return List.of(new Use(ContactKind.GAUGE, "caliper", false));
    }

    private List<String> objections(SupplyId id, Instant at) {
        return supplies.look(List.of(id), use(), Surface.UNCLEANED, new Moment(at, 1)).objections().stream()
                .map(Refusal::code).toList();
    }
}
