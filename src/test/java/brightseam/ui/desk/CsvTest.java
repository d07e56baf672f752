package brightseam.ui.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CsvTest {

    @Test
    void cells_are_quoted_where_they_must_be() {
        assertThat(Csv.write(List.of("a", "b"), List.of(List.of("x, y", "6\" tube"), List.of("", "plain"))))
                .isEqualTo("a,b\r\n\"x, y\",\"6\"\" tube\"\r\n,plain\r\n");
    }

    @Test
    void no_cell_can_be_run_as_a_formula() {
        for (String evil : List.of("=1+1", "+1+1", "-x", "@x", "＝1", " =1")) {
            assertThat(Csv.write(List.of("a"), List.of(List.of(evil)))).startsWith("a\r\n")
                    .contains("'" + evil.strip());
        }
    }

    @Test
    void no_cell_can_be_run_as_a_formula_by_a_program_that_parts_at_another_separator() {
        for (String evil : List.of("x;=1+1", "x,=1+1", "x\t=1", "x\n@y", "x\";=1", "x; +1*2", "x';-y", "x|=1")) {
            assertThat(Csv.write(List.of("a"), List.of(List.of(evil))).substring(3))
                    .matches("(?s).*'[=+@-].*").doesNotContain(evil.substring(1));
        }
    }

    @Test
    void a_number_below_zero_stays_a_number() {
        assertThat(Csv.write(List.of("dew_point_deg_c"), List.of(List.of("-80.5")))).endsWith("\r\n-80.5\r\n");
    }
}
