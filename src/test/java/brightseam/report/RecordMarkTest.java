package brightseam.report;

import static org.assertj.core.api.Assertions.assertThat;

import brightseam.kernel.TravellerId;
import org.junit.jupiter.api.Test;

class RecordMarkTest {

    private static final RecordMark MARK = new RecordMark(new TravellerId("T-1042.1"), 57, "0af3".repeat(16));

    @Test
    void what_was_written_is_read_back() {
        assertThat(MARK.payload()).isEqualTo("BSREC1 T-1042.1 57 " + "0AF3".repeat(16));
        assertThat(RecordMark.read(MARK.payload())).contains(MARK);
    }

    @Test
    void the_second_form_names_the_head_that_the_file_is_proven_against() {
        RecordMark sealed = MARK.sealedAt(new RecordMark.Sealed(4812, "ab".repeat(32)));
        assertThat(sealed.payload()).isEqualTo("BSREC2 T-1042.1 57 " + "0AF3".repeat(16) + " 4812 " + "AB".repeat(32));
        assertThat(RecordMark.read(sealed.payload())).contains(sealed);
        assertThat(RecordMark.read(sealed.payload().replace("BSREC2", "BSREC1"))).isEmpty();
        assertThat(RecordMark.read(sealed.payload().replace(" 4812 ", " 0 "))).isEmpty();
    }

    @Test
    void anything_else_is_nothing_of_ours() {
        assertThat(RecordMark.read("BSREC2 T-1042.1 57 " + "0AF3".repeat(16))).isEmpty();
        assertThat(RecordMark.read("BSREC1 t-1042 57 " + "0AF3".repeat(16))).isEmpty();
        assertThat(RecordMark.read("BSREC1 T-1042 0 " + "0AF3".repeat(16))).isEmpty();
        assertThat(RecordMark.read("BSREC1 T-1042 57 0AF3")).isEmpty();
    }
}
