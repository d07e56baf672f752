package brightseam.ledger.shell;

import static brightseam.ledger.shell.Signatures.append;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class RebuildTest {

    private final TestLedger shop = TestLedger.inMemory(Signatures::new);

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void a_rebuild_gives_the_same_rows() {
        signs();
        List<Map<String, Object>> before = rows();
        assertThat(shop.rebuild().rebuild()).isEqualTo(new Rebuild.Counts(2_500, Map.of("test_signatures", 50L)));
        assertThat(rows()).isEqualTo(before).hasSize(50);
        assertThat(shop.rebuild().compare()).isEmpty();
    }

    @Test
    void rows_that_do_not_follow_from_the_ledger_are_named_and_a_rebuild_mends_them() {
        signs();
        List<Map<String, Object>> before = rows();
        shop.jdbc().sql("delete from test_signatures where stream = 'traveller/T-7'").update();
        shop.jdbc().sql("insert into test_signatures values ('traveller/X-1', 3, 'made up')").update();
        List<Map<String, Object>> spoiled = rows();
        List<Rebuild.Difference> differences = shop.rebuild().compare();
        assertThat(differences).hasSize(1);
        assertThat(differences.getFirst().missing()).singleElement().asString().contains("traveller/T-7");
        assertThat(differences.getFirst().surplus()).singleElement().asString().contains("traveller/X-1");
        assertThat(rows()).as("comparing changes nothing").isEqualTo(spoiled);
        shop.rebuild().rebuild();
        assertThat(rows()).isEqualTo(before);
    }

    private void signs() {
        for (int version = 0; version < 10; version++) {
            for (int i = 0; i < 50; i++) {
                shop.ledger().append(List.of(append("T-" + i, version * 5L, "a", "b", "c", "d", "e" + version)));
            }
        }
    }

    private List<Map<String, Object>> rows() {
        return shop.jdbc().sql("select * from test_signatures order by stream").query().listOfRows();
    }
}
