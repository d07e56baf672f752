package brightseam.ui.admin;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.ContactKind;
import brightseam.kernel.SupplyId;
import brightseam.procedure.Surface;
import brightseam.supply.Standing;
import brightseam.supply.Supply;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SupplyStateTest {

    private static final LocalDate TODAY = LocalDate.of(2031, 3, 4);

    private static Supply supply(String id, ContactKind kind, LocalDate last, Standing standing, String steel) {
        return new Supply(new SupplyId(id), kind, "acetone", "Acetone", "OA-1", "Ostrand", Optional.ofNullable(last),
                Set.of(Surface.CLEANED), standing, Optional.ofNullable(steel));
    }

    private static Supply solvent(LocalDate last) {
        return supply("G-1", ContactKind.SOLVENT, last, Standing.OPENED, null);
    }

    @Test
    void a_state_is_said_in_words_and_what_forbids_use_in_capitals() {
        assertThat(SupplyState.words(solvent(null), TODAY)).isEqualTo("fit for use");
        assertThat(SupplyState.words(solvent(TODAY.plusDays(90)), TODAY)).isEqualTo("fit until 2031-06-02");
        assertThat(SupplyState.words(solvent(TODAY.plusDays(9)), TODAY))
                .isEqualTo("fit until 2031-03-13, ends in 9 days");
        assertThat(SupplyState.words(solvent(TODAY), TODAY)).isEqualTo("fit until 2031-03-04, ENDS TODAY");
        assertThat(SupplyState.words(solvent(TODAY.minusDays(1)), TODAY)).isEqualTo("EXPIRED since 2031-03-03");
        assertThat(SupplyState.words(supply("G-2", ContactKind.GAUGE, TODAY.minusDays(1), Standing.OPENED, null),
                TODAY)).isEqualTo("NOT CALIBRATED since 2031-03-03");
        assertThat(SupplyState.words(supply("G-3", ContactKind.TOOL, null, Standing.OPENED, "steel bench"), TODAY))
                .isEqualTo("CONTAMINATED: steel bench");
        assertThat(SupplyState.words(supply("G-4", ContactKind.TOOL, null, Standing.USED_UP, "steel"), TODAY))
                .isEqualTo("used up");
    }

    @Test
    void what_ends_first_stands_on_top_and_what_is_gone_below() {
        Supply gone = supply("G-1", ContactKind.WIPES, TODAY.minusDays(9), Standing.RETIRED, null);
        Supply ageless = supply("G-2", ContactKind.TOOL, null, Standing.OPENED, null);
        Supply later = supply("G-3", ContactKind.SOLVENT, TODAY.plusDays(9), Standing.OPENED, null);
        Supply past = supply("G-4", ContactKind.SOLVENT, TODAY.minusDays(1), Standing.UNOPENED, null);
        Supply soiled = supply("G-5", ContactKind.TOOL, null, Standing.OPENED, "steel");
        assertThat(SupplyState.sorted(List.of(gone, ageless, later, past, soiled)))
                .containsExactly(soiled, past, later, ageless, gone);
    }
}
