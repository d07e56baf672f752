package brightseam.ui.admin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class BinRunTest {

    @Test
    void a_run_numbers_on_and_keeps_leading_zeros() {
        assertThat(BinRun.labels("B-0098", 3)).extracting(Object::toString)
                .containsExactly("B-0098", "B-0099", "B-0100");
        assertThat(BinRun.labels("B-BAG-9", 2)).extracting(Object::toString).containsExactly("B-BAG-9", "B-BAG-10");
    }

    @Test
    void a_single_label_needs_no_number() {
        assertThat(BinRun.labels(" B-RED ", 1)).extracting(Object::toString).containsExactly("B-RED");
    }

    @Test
    void what_is_no_bin_label_or_cannot_be_numbered_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> BinRun.labels("T-1", 1));
        assertThatIllegalArgumentException().isThrownBy(() -> BinRun.labels("B-RED", 2));
        assertThatIllegalArgumentException().isThrownBy(() -> BinRun.labels("B-1", 0));
        assertThatIllegalArgumentException().isThrownBy(() -> BinRun.labels("B-1", 101));
    }
}
