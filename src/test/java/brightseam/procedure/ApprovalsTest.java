package brightseam.procedure;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.procedure.ApprovalRefusal.ApproverNotNamed;
import brightseam.procedure.ApprovalRefusal.ProcedureAlreadyApproved;
import brightseam.procedure.ApprovalRefusal.RevisionTooLow;
import brightseam.procedure.ApprovalRefusal.RevisionUnchanged;
import java.util.List;
import org.junit.jupiter.api.Test;

class ApprovalsTest {

    private static final String ONE = "1".repeat(64);
    private static final String TWO = "2".repeat(64);
    private static final Origin SERVER = new Origin(ORIGIN.at(), Origin.SHOP, "server", false);

    @Test
    void given_nothing_when_a_named_person_approves_then_the_revision_is_in_use() {
        Decision<ProcedureApproved> decision = Approvals.NONE.approve(ref("A", ONE), "text", ORIGIN);
        assertEquals(Decision.accepted(List.of(approved("A", ONE))), decision);
        assertEquals(CandidateState.APPROVED, given(approved("A", ONE)).state(ref("A", ONE)));
    }

    @Test
    void given_a_revision_when_the_file_changed_and_the_letter_did_not_then_it_is_refused() {
        Approvals given = given(approved("A", ONE));
        assertEquals(CandidateState.CHANGED_WITHOUT_REVISION, given.state(ref("A", TWO)));
        assertRefused(given.approve(ref("A", TWO), "text", ORIGIN), new RevisionUnchanged("TUBE", "A", ONE, TWO));
    }

    @Test
    void given_a_replaced_revision_when_its_letter_comes_back_changed_then_it_is_refused() {
        Approvals given = given(approved("A", ONE), approved("B", TWO));
        String three = "3".repeat(64);
        assertRefused(given.approve(ref("A", three), "text", ORIGIN), new RevisionUnchanged("TUBE", "A", ONE, three));
    }

    @Test
    void given_a_revision_when_it_is_approved_again_then_it_is_refused() {
        Approvals given = given(approved("A", ONE), approved("B", TWO));
        assertEquals(CandidateState.SUPERSEDED, given.state(ref("A", ONE)));
        assertRefused(given.approve(ref("A", ONE), "text", ORIGIN), new ProcedureAlreadyApproved("TUBE", "A"));
        assertRefused(given.approve(ref("B", TWO), "text", ORIGIN), new ProcedureAlreadyApproved("TUBE", "B"));
    }

    @Test
    void given_a_revision_when_a_lower_letter_comes_then_it_is_refused() {
        assertRefused(given(approved("C", ONE)).approve(ref("B", TWO), "text", ORIGIN),
                new RevisionTooLow("TUBE", "B", "C"));
        assertRefused(given(approved("AA", ONE)).approve(ref("Z", TWO), "text", ORIGIN),
                new RevisionTooLow("TUBE", "Z", "AA"));
        assertInstanceOf(Decision.Accepted.class, given(approved("Z", ONE)).approve(ref("AA", TWO), "text", ORIGIN));
    }

    @Test
    void the_server_itself_approves_nothing_and_every_broken_rule_is_named() {
        assertRefused(given(approved("A", ONE)).approve(ref("A", TWO), "text", SERVER),
                new ApproverNotNamed("TUBE"), new RevisionUnchanged("TUBE", "A", ONE, TWO));
    }

    private static void assertRefused(Decision<ProcedureApproved> decision, ApprovalRefusal... refusals) {
        assertEquals(Decision.<ProcedureApproved>refused(List.of(refusals)), decision);
    }

    private static Approvals given(ProcedureApproved... history) {
        return new Approvals(List.of(history));
    }

    private static ProcedureApproved approved(String revision, String sha256) {
        return new ProcedureApproved("TUBE", revision, sha256, "text", ORIGIN);
    }

    private static ProcedureRef ref(String revision, String sha256) {
        return new ProcedureRef("TUBE", revision, sha256);
    }
}
