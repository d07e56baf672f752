package brightseam.ui.board;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kit.Kit;
import brightseam.kit.KitLine;
import brightseam.material.Heat;
import brightseam.traveller.Traveller;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KitLinesTest {

    private static final KitLine FIRST = line(1, "LF-100-01", "TUBE");
    private static final KitLine SAME_AGAIN = line(2, "LF-100-01", "TUBE");
    private static final KitLine OTHER = line(3, "LF-200-01", "TUBE");

    @Test
    void each_traveller_answers_one_line_of_its_part() {
        Traveller one = Lot.of("T-1", "K-07").card().traveller();
        Traveller two = Lot.of("T-2", "K-07").card().traveller();
        Kit kit = new Kit(new KitId("K-07"), "Frame", Optional.empty(), List.of(FIRST, SAME_AGAIN, OTHER), false);
        assertThat(KitLines.unreleased(kit, List.of())).containsExactly(FIRST, SAME_AGAIN, OTHER);
        assertThat(KitLines.unreleased(kit, List.of(one))).containsExactly(SAME_AGAIN, OTHER);
        assertThat(KitLines.unreleased(kit, List.of(one, two))).containsExactly(OTHER);
    }

    @Test
    void heats_fit_by_grade_and_hold_and_those_of_the_form_in_the_title_come_first() {
        Heat bar = heat("H-1", "9", "bar", Optional.empty());
        Heat tube = heat("H-2", "9", "tube", Optional.empty());
        Heat held = heat("H-3", "9", "tube", Optional.of("certificate asked for"));
        Heat soft = heat("H-4", "2", "tube", Optional.empty());
        assertThat(KitLines.fitting(Lot.of("T-1", "K-07").card().procedure(), List.of(bar, tube, held, soft)))
                .containsExactly(tube, bar);
    }

    private static KitLine line(int number, String part, String procedure) {
        return new KitLine(number, part, "Frame leg", "B", 2, procedure, Optional.empty());
    }

    private static Heat heat(String id, String grade, String form, Optional<String> hold) {
        return new Heat(new HeatId(id), grade, form, "38.1 x 1.65 mm", "Norrfall Titan", "C-1", Instant.EPOCH, hold);
    }
}
