package brightseam.supply;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Decision;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Surface;
import brightseam.procedure.Vocabulary.SupplyType;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SupplyDeciderTest {

    private static final LocalDate TODAY = LocalDate.of(2031, 3, 4);
    private static final SupplyId BRUSH = new SupplyId("G-0031");
    private static final SupplyType BRUSHES = new SupplyType(
            "stainless-brush", "Stainless brush", ContactKind.TOOL, Set.of(Surface.UNCLEANED));
    private static final SupplyType CALIPERS =
            new SupplyType("caliper", "Caliper", ContactKind.GAUGE, Set.of(Surface.UNCLEANED));
    private static final SupplyType CLOTHS = new SupplyType(
            "white-cloth", "White cloth", ContactKind.WIPES, Set.of(Surface.values()));
    private static final SupplyCommand SOIL = new SupplyCommand.ReportContaminated(BRUSH, "steel fixture", ORIGIN);
    private static final SupplyCommand CLEAN = new SupplyCommand.DeclareClean(BRUSH, "new bristles", ORIGIN);
    private static final SupplyCommand USE_UP = new SupplyCommand.UseUp(BRUSH, ORIGIN);
    private static final SupplyCommand RETIRE = new SupplyCommand.RetireSupply(BRUSH, "worn", ORIGIN);

    private static SupplyCommand register(SupplyType type, Optional<LocalDate> lastDay, Surface... mayTouch) {
        return new SupplyCommand.RegisterSupply(BRUSH, type, "Green one", "KS-204", "Kelder", lastDay,
                Set.of(mayTouch), ORIGIN);
    }

    private static Optional<Supply> known(SupplyType type, Optional<LocalDate> lastDay, SupplyCommand... then) {
        Optional<Supply> supply = after(Optional.empty(), register(type, lastDay, Surface.UNCLEANED));
        for (SupplyCommand command : then) {
            supply = after(supply, command);
        }
        return supply;
    }

    private static Optional<Supply> after(Optional<Supply> before, SupplyCommand command) {
        Decision.Accepted<SupplyEvent> accepted =
                (Decision.Accepted<SupplyEvent>) SupplyDecider.decide(before, command, TODAY);
        Optional<Supply> supply = before;
        for (SupplyEvent event : accepted.events()) {
            supply = Optional.of(Supply.evolve(supply, event));
        }
        return supply;
    }

    private static void refuses(Optional<Supply> given, SupplyCommand when, SupplyRefusal... then) {
        assertEquals(Decision.<SupplyEvent>refused(List.of(then)), SupplyDecider.decide(given, when, TODAY));
    }

    @Test
    void a_supply_is_registered_once_for_what_its_type_may_touch() {
        refuses(Optional.empty(), register(BRUSHES, Optional.empty(), Surface.UNCLEANED, Surface.CLEANED),
                new SupplyRefusal.TypeMayNotTouch(BRUSH, "Stainless brush", Surface.CLEANED));
        refuses(Optional.empty(), register(BRUSHES, Optional.empty()), new SupplyRefusal.TouchesNothing(BRUSH));
        refuses(known(BRUSHES, Optional.empty()), register(BRUSHES, Optional.empty(), Surface.UNCLEANED),
                new SupplyRefusal.SupplyAlreadyRegistered(BRUSH, "Green one"));
        refuses(Optional.empty(), USE_UP, new SupplyRefusal.SupplyUnknown(BRUSH));
    }

    @Test
    void a_gauge_comes_with_the_end_of_its_calibration_and_gets_a_later_one() {
        refuses(Optional.empty(), register(CALIPERS, Optional.empty(), Surface.UNCLEANED),
                new SupplyRefusal.CalibrationMissing(BRUSH));
        Optional<Supply> caliper = known(CALIPERS, Optional.of(TODAY.minusDays(1)));
        LocalDate next = TODAY.plusDays(180);
        assertEquals(Optional.of(next),
                after(caliper, new SupplyCommand.Calibrate(BRUSH, next, "C-88", ORIGIN)).orElseThrow().lastDay());
        refuses(caliper, new SupplyCommand.Calibrate(BRUSH, TODAY.minusDays(2), "C-77", ORIGIN),
                new SupplyRefusal.CalibrationOverdue(BRUSH, "Green one", TODAY.minusDays(2)));
        refuses(known(BRUSHES, Optional.empty()), new SupplyCommand.Calibrate(BRUSH, next, "C-88", ORIGIN),
                new SupplyRefusal.NoGauge(BRUSH, ContactKind.TOOL));
    }

    @Test
    void a_contaminated_tool_is_cleaned_with_a_reason_and_a_contaminated_cloth_never() {
        assertEquals(Optional.of("steel fixture"),
                known(BRUSHES, Optional.empty(), SOIL).orElseThrow().contamination());
        assertEquals(Optional.empty(), known(BRUSHES, Optional.empty(), SOIL, CLEAN).orElseThrow().contamination());
        refuses(known(BRUSHES, Optional.empty()), CLEAN, new SupplyRefusal.NotContaminated(BRUSH));
        refuses(known(CLOTHS, Optional.empty(), SOIL), CLEAN,
                new SupplyRefusal.NotCleanable(BRUSH, ContactKind.WIPES));
        assertThrows(IllegalArgumentException.class, () -> new SupplyCommand.DeclareClean(BRUSH, " ", ORIGIN));
    }

    @Test
    void what_is_gone_stays_gone() {
        for (SupplyCommand command : List.of(SOIL, USE_UP, RETIRE, new SupplyCommand.OpenSupply(BRUSH, ORIGIN))) {
            refuses(known(BRUSHES, Optional.empty(), USE_UP), command,
                    new SupplyRefusal.SupplyUsedUp(BRUSH, "Green one"));
            refuses(known(BRUSHES, Optional.empty(), RETIRE), command,
                    new SupplyRefusal.SupplyRetired(BRUSH, "Green one"));
        }
    }

    @Test
    void a_pack_is_opened_once() {
        SupplyCommand open = new SupplyCommand.OpenSupply(BRUSH, ORIGIN);
        assertEquals(Standing.OPENED, known(CLOTHS, Optional.empty(), open).orElseThrow().standing());
        refuses(known(CLOTHS, Optional.empty(), open), open, new SupplyRefusal.AlreadyOpen(BRUSH));
    }
}
