package brightseam.procedure.shell;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;

import brightseam.ledger.Append;
import brightseam.ledger.NewEvent;
import brightseam.ledger.StreamName;
import brightseam.ledger.shell.FreshDatabase;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.procedure.ProcedureApproved;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class ProcedureRowsTest {

    private final JdbcClient jdbc = FreshDatabase.migrated();
    private final ProcedureRows rows = new ProcedureRows(jdbc);
    private final MemoryLedger ledger = new MemoryLedger(rows);

    @Test
    void names_of_approved_procedures_are_known_and_a_rebuild_gives_the_same_rows() {
        ledger.append(List.of(
                new Append(new StreamName("procedure/TUBE"), 0, List.of(approved("TUBE", "A"), approved("TUBE", "B"))),
                new Append(new StreamName("procedure/ROD"), 0, List.of(approved("ROD", "A"))),
                new Append(new StreamName("other/ONE"), 0, List.of(new NewEvent("other.1", "{}")))));
        assertEquals(Set.of("ROD", "TUBE"), rows.ids());
        Map<String, List<String>> before = FreshDatabase.rows(jdbc, rows);
        assertEquals(3, before.get("procedure_row").size());
        FreshDatabase.rebuild(jdbc, rows, ledger);
        assertEquals(before, FreshDatabase.rows(jdbc, rows));
    }

    private static NewEvent approved(String id, String revision) {
        return ProcedureStreams.KIND.codec()
                .write(new ProcedureApproved(id, revision, "0".repeat(64), "text", ORIGIN));
    }
}
