package brightseam.supply;

import static org.junit.jupiter.api.Assertions.assertEquals;

import brightseam.kernel.ContactKind;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Surface;
import brightseam.procedure.Use;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FitnessTest {

    private static final LocalDate TODAY = LocalDate.of(2031, 3, 4);
    private static final SupplyId ID = new SupplyId("G-0031");
    private static final List<Use> ASKED = List.of(new Use(ContactKind.GLOVES, "clean-nitrile", true),
            new Use(ContactKind.SOLVENT, "acetone", false));

    private static Supply acetone(LocalDate lastDay, Standing standing, Optional<String> contamination) {
        return new Supply(ID, ContactKind.SOLVENT, "acetone", "Acetone", "OA-1", "Ostrand", Optional.of(lastDay),
                Set.of(Surface.CLEANED), standing, contamination);
    }

    private static List<SupplyRefusal> objections(Supply supply) {
        return Fitness.objections(supply, ASKED, Surface.CLEANED, TODAY);
    }

    @Test
    void an_item_lasts_to_the_end_of_its_last_day() {
        assertEquals(List.of(), objections(acetone(TODAY, Standing.OPENED, Optional.empty())));
        assertEquals(List.of(new SupplyRefusal.SupplyExpired(ID, "Acetone", TODAY.minusDays(1))),
                objections(acetone(TODAY.minusDays(1), Standing.OPENED, Optional.empty())));
    }

    @Test
    void a_gauge_past_its_last_day_is_out_of_calibration() {
        Supply caliper = new Supply(ID, ContactKind.GAUGE, "caliper", "Caliper", "V-1", "Vantwick",
                Optional.of(TODAY.minusDays(3)), Set.of(Surface.UNCLEANED), Standing.OPENED, Optional.empty());
        assertEquals(List.of(new SupplyRefusal.CalibrationOverdue(ID, "Caliper", TODAY.minusDays(3))),
                Fitness.objections(caliper, List.of(new Use(ContactKind.GAUGE, "caliper", false)),
                        Surface.UNCLEANED, TODAY));
    }

    @Test
    void something_else_than_the_step_asks_for_is_named_beside_what_it_asks_for() {
        Supply cotton = new Supply(ID, ContactKind.GLOVES, "white-cotton", "Cotton gloves", "FC-1", "Fennmark",
                Optional.empty(), Set.of(Surface.CLEANED), Standing.OPENED, Optional.empty());
        assertEquals(List.of(new SupplyRefusal.WrongSupply(ID, List.of("acetone", "clean-nitrile"),
                ContactKind.GLOVES, "white-cotton")), objections(cotton));
        assertEquals(Optional.empty(), Fitness.use(cotton, ASKED));
    }

    @Test
    void everything_that_stands_against_it_is_told_at_once() {
        Supply worst = new Supply(ID, ContactKind.TOOL, "stainless-brush", "Brush", "KS-1", "Kelder",
                Optional.of(TODAY.minusDays(1)), Set.of(Surface.UNCLEANED), Standing.USED_UP, Optional.of("steel"));
        assertEquals(List.of("wrong-supply", "supply-used-up", "supply-expired", "supply-contaminated",
                "supply-may-not-touch"), objections(worst).stream().map(SupplyRefusal::code).toList());
    }

    @Test
    void what_was_retired_is_not_used() {
        assertEquals(List.of(new SupplyRefusal.SupplyRetired(ID, "Acetone")),
                objections(acetone(TODAY, Standing.RETIRED, Optional.empty())));
    }
}
