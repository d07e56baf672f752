package brightseam.procedure.shell;

import static brightseam.kernel.Samples.ORIGIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import brightseam.kernel.Refusal;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.Outcome;
import brightseam.ledger.shell.ApprovedEvents;
import brightseam.ledger.shell.MemoryLedger;
import brightseam.procedure.ApprovalRefusal.ProcedureChangedSinceShown;
import brightseam.procedure.ApprovalRefusal.ProcedureUnknown;
import brightseam.procedure.ApprovalRefusal.ProcedureUnsound;
import brightseam.procedure.ApprovalRefusal.RevisionUnchanged;
import brightseam.procedure.Approvals;
import brightseam.procedure.Candidate;
import brightseam.procedure.CandidateState;
import brightseam.procedure.Procedure;
import brightseam.procedure.ProcedureApproved;
import brightseam.procedure.ProcedureRef;
import brightseam.procedure.Vocabulary;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProcedureLibraryTest {

    private static final Vocabulary VOCABULARY = SharedTables.read();
    private static final Path GOOD = Path.of("src/test/resources/bad-procedures/good.yaml");

    @TempDir
    Path folder;

    private final MemoryLedger ledger = new MemoryLedger();
    private ProcedureLibrary library;
    private String good;

    @BeforeEach
    void put_one_good_file_into_the_folder() throws IOException {
        good = Files.readString(GOOD);
        write(good);
        library = library();
    }

    @Test
    void a_sound_file_waits_until_a_named_person_approves_it() {
        assertEquals(CandidateState.AWAITING_APPROVAL, only().state());
        assertEquals(List.of(), library.current());
        assertInstanceOf(Outcome.Done.class, library.approve("ROD", ORIGIN));
        assertEquals(CandidateState.APPROVED, only().state());
        assertEquals("ROD rev A", library.current().getFirst().ref().label());
        assertEquals(ORIGIN, library.history("ROD").getFirst().origin());
    }

    @Test
    void an_approved_revision_is_found_by_name_letter_and_hash_after_the_file_went_on() throws IOException {
        ProcedureRef first = approve();
        write(revisionB());
        library.reload();
        ProcedureRef second = approve();
        assertEquals("B", library.current("ROD").orElseThrow().ref().revision());
        assertEquals("Short rod", library.find(first).orElseThrow().title());
        assertEquals("Shorter rod", library.find(second).orElseThrow().title());
        assertTrue(library.find(new ProcedureRef("ROD", "A", second.sha256())).isEmpty());
    }

    @Test
    void a_restarted_library_reads_the_same_procedures_from_the_ledger_alone() throws IOException {
        Procedure before = library.find(approve()).orElseThrow();
        Files.delete(folder.resolve("rod.yaml"));
        assertEquals(before, library().find(before.ref()).orElseThrow());
        assertEquals(List.of(before), library().current());
    }

    @Test
    void a_changed_file_with_an_unchanged_letter_is_refused_and_the_approved_one_stays() throws IOException {
        ProcedureRef approved = approve();
        write(good.replace("Short rod", "Other rod"));
        library.reload();
        assertEquals(CandidateState.CHANGED_WITHOUT_REVISION, only().state());
        assertInstanceOf(RevisionUnchanged.class, refusal(library.approve("ROD", ORIGIN)));
        assertEquals(approved, library.current("ROD").orElseThrow().ref());
    }

    @Test
    void a_bad_file_is_listed_with_its_problems_and_the_approved_one_stays() throws IOException {
        ProcedureRef approved = approve();
        write(good.replace("revision: A", "revision: B").replace("open: 4 h", "open: 4"));
        library.reload();
        assertEquals(CandidateState.BAD, only().state());
        assertEquals(10, only().problems().getFirst().line());
        assertInstanceOf(ProcedureUnsound.class, refusal(library.approve("ROD", ORIGIN)));
        assertEquals(approved, library.current().getFirst().ref());
    }

    @Test
    void a_file_that_changed_since_it_was_shown_is_not_approved_unseen() throws IOException {
        ProcedureRef shown = only().procedure().orElseThrow().ref();
        write(good.replace("Short rod", "Other rod"));
        library.reload();
        assertInstanceOf(ProcedureChangedSinceShown.class, refusal(library.approve(shown, ORIGIN)));
        assertEquals(List.of(new ProcedureUnknown("TUBE")), refusals(library.approve("TUBE", ORIGIN)));
    }

    @Test
    void of_two_libraries_that_approve_the_same_file_exactly_one_does() {
        ProcedureLibrary other = library();
        assertInstanceOf(Outcome.Done.class, other.approve("ROD", ORIGIN));
        assertEquals("procedure-already-approved", refusal(library.approve("ROD", ORIGIN)).code());
        assertEquals(1, library.history("ROD").size());
    }

    @Test
    void an_approval_that_is_not_on_disk_is_none() {
        ledger.failWith("disk full");
        assertThrows(NotStoredException.class, () -> library.approve("ROD", ORIGIN));
        assertEquals(CandidateState.AWAITING_APPROVAL, only().state());
    }

    @Test
    void every_event_is_written_as_approved() {
        ApprovedEvents.check("procedure-events.txt", ProcedureStreams.TYPES, ProcedureStreams.KIND.codec(), List.of(
                new ProcedureApproved("ROD", "A", "0".repeat(64), "id: ROD\n", ORIGIN)));
    }

    /** Written before anything was scanned: today's rules would ask for more, and its travellers go on all the same. */
    @Test
    void a_revision_that_was_approved_before_anything_was_scanned_is_read_as_it_was() {
        String before = good.replaceAll("(?m)^ {4}uses:.*\\R(?: {6}- .*\\R)*", "");
        Procedure restored = new ProcedureLoader(VOCABULARY).restore(before);
        assertTrue(restored.steps().stream().allMatch(step -> step.uses().isEmpty()));
        assertInstanceOf(ProcedureLoader.Unsound.class,
                new ProcedureLoader(VOCABULARY).load("rod.yaml", before.getBytes(StandardCharsets.UTF_8)));
    }

    private String revisionB() {
        return good.replace("revision: A", "revision: B").replace("Short rod", "Shorter rod");
    }

    private ProcedureRef approve() {
        return switch (library.approve("ROD", ORIGIN)) {
            case Outcome.Done<Approvals> done -> done.result().last().orElseThrow().ref();
            case Outcome.Refused<Approvals> refused -> throw new AssertionError(refused.refusals());
        };
    }

    private static Refusal refusal(Outcome<Approvals> outcome) {
        return refusals(outcome).getFirst();
    }

    private static List<Refusal> refusals(Outcome<Approvals> outcome) {
        return switch (outcome) {
            case Outcome.Done<Approvals> done -> throw new AssertionError("approved " + done.result());
            case Outcome.Refused<Approvals> refused -> refused.refusals();
        };
    }

    private Candidate only() {
        assertEquals(1, library.candidates().size());
        return library.candidates().getFirst();
    }

    private ProcedureLibrary library() {
        return new ProcedureLibrary(folder, VOCABULARY, ledger, () -> Set.of("ROD"));
    }

    private void write(String text) throws IOException {
        Files.writeString(folder.resolve("rod.yaml"), text);
    }
}
