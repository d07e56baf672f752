package brightseam.procedure;

import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.Rules;
import brightseam.procedure.ApprovalRefusal.ApproverNotNamed;
import brightseam.procedure.ApprovalRefusal.ProcedureAlreadyApproved;
import brightseam.procedure.ApprovalRefusal.RevisionTooLow;
import brightseam.procedure.ApprovalRefusal.RevisionUnchanged;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What was approved of one procedure, in order. Each approval has a higher revision letter than the one before.
 *
 * @param history the approvals from the first
 */
public record Approvals(List<ProcedureApproved> history) {

    /** Nothing was approved yet. */
    public static final Approvals NONE = new Approvals(List.of());

    /** A before B, Z before AA. */
    private static final Comparator<String> BY_LETTER =
            Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder());

    /** Copies the list. */
    public Approvals {
        history = List.copyOf(history);
    }

    /** What is approved after {@code approved}; {@code before} is empty for the first approval. */
    public static Approvals evolve(Optional<Approvals> before, ProcedureApproved approved) {
        List<ProcedureApproved> history = new ArrayList<>(before.orElse(NONE).history());
        history.add(approved);
        return new Approvals(history);
    }

    /** The revision in use, where there is one. */
    public Optional<ProcedureApproved> last() {
        return history.isEmpty() ? Optional.empty() : Optional.of(history.getLast());
    }

    /** The approval of exactly {@code ref}, where there is one. */
    public Optional<ProcedureApproved> find(ProcedureRef ref) {
        return history.stream().filter(approved -> approved.ref().equals(ref)).findFirst();
    }

    /** How a sound file that holds {@code ref} stands to what is approved. */
    public CandidateState state(ProcedureRef ref) {
        if (find(ref).isPresent()) {
            return last().filter(approved -> approved.ref().equals(ref)).isPresent()
                    ? CandidateState.APPROVED
                    : CandidateState.SUPERSEDED;
        }
        if (sameLetter(ref).isPresent()) {
            return CandidateState.CHANGED_WITHOUT_REVISION;
        }
        return last().filter(approved -> BY_LETTER.compare(ref.revision(), approved.revision()) < 0).isPresent()
                ? CandidateState.REVISION_TOO_LOW
                : CandidateState.AWAITING_APPROVAL;
    }

    /**
     * Approves a sound file. Refused where it is approved already, where it changed and its letter did not, where its
     * letter is too low, and where no person is named.
     */
    public Decision<ProcedureApproved> approve(ProcedureRef ref, String content, Origin origin) {
        Rules rules = Rules.check().refuseIf(origin.by().equals(Origin.SHOP), () -> new ApproverNotNamed(ref.id()));
        refusal(ref).ifPresent(refusal -> rules.refuseIf(true, () -> refusal));
        return rules.accept(new ProcedureApproved(ref.id(), ref.revision(), ref.sha256(), content, origin));
    }

    private Optional<ApprovalRefusal> refusal(ProcedureRef ref) {
        return switch (state(ref)) {
            case AWAITING_APPROVAL, BAD -> Optional.empty();
            case APPROVED, SUPERSEDED -> Optional.of(new ProcedureAlreadyApproved(ref.id(), ref.revision()));
            case CHANGED_WITHOUT_REVISION -> sameLetter(ref).map(approved -> new RevisionUnchanged(
                    ref.id(), ref.revision(), approved.sha256(), ref.sha256()));
            case REVISION_TOO_LOW -> last().map(approved -> new RevisionTooLow(
                    ref.id(), ref.revision(), approved.revision()));
        };
    }

    private Optional<ProcedureApproved> sameLetter(ProcedureRef ref) {
        return history.stream().filter(approved -> approved.revision().equals(ref.revision())).findFirst();
    }
}
