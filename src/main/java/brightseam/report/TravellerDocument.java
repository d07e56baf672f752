package brightseam.report;

import brightseam.kernel.HeatId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.TravellerId;
import brightseam.procedure.Procedure;
import brightseam.procedure.ProcedureRef;
import brightseam.traveller.Nonconformance.Cause;
import brightseam.traveller.PartIdentity;
import brightseam.traveller.Phase;
import java.util.List;
import java.util.Optional;

/**
 * The whole record of one traveller, as screen and print show it.
 *
 * @param identity which lot of what
 * @param heat of which metal; empty where its label is not registered
 * @param procedure on which revision, approved by whom
 * @param steps every step of the route in order, with every pass
 * @param chamber what happened in chamber sessions
 * @param findings nonconformances by number
 * @param incidents returns, touches, partings and scrap, in order
 * @param window clean windows as a time line
 * @param refused attempts that were refused, in order
 * @param authority who signed, by badge
 * @param chain what ties this to the ledger
 * @param demo whether any of it was recorded in a demo shop
 */
public record TravellerDocument(
        Identity identity,
        Optional<HeatDetails> heat,
        FollowedProcedure procedure,
        List<StepPage> steps,
        ChamberPart chamber,
        List<Finding> findings,
        List<Incident> incidents,
        List<WindowSpan> window,
        List<RefusedAttempt> refused,
        List<Authority> authority,
        ChainEnd chain,
        boolean demo) {

    /**
     * Which lot of what.
     *
     * @param released numbers of the pieces that it began with
     * @param pieces numbers of the pieces still in it
     * @param releasedThrough the shop system that released it for that person, where one did
     * @param quarantined whether an open nonconformance stops it
     */
    public record Identity(TravellerId id, Optional<TravellerId> parent, KitId kit, PartIdentity part,
            List<Integer> released, List<Integer> pieces, HeatId heat, Moment releasedAt, Who releasedBy,
            Optional<String> releasedThrough, Phase phase, boolean quarantined) {}

    /** The revision that is followed to the end. */
    public record FollowedProcedure(ProcedureRef ref, String title, Optional<Approval> approval) {}

    /** Copies the lists. */
    public TravellerDocument {
        steps = List.copyOf(steps);
        findings = List.copyOf(findings);
        incidents = List.copyOf(incidents);
        window = List.copyOf(window);
        refused = List.copyOf(refused);
        authority = List.copyOf(authority);
    }

    /** Whether something that touched the pieces is under suspicion and nobody has decided yet. */
    public boolean isSuspect() {
        return identity.quarantined() && findings.stream().anyMatch(finding ->
                finding.cause() == Cause.SUSPECT && finding.decision().isEmpty() && !finding.pieces().isEmpty());
    }

    /**
     * Tells {@code lines} as a document.
     *
     * @param lines everything recorded of one traveller, from the first
     * @param procedure the revision that it follows
     * @param lookups names, metal, approval and words
     * @param flaw what is wrong with the chain, where something is
     * @throws IllegalArgumentException where there are no lines, or {@code procedure} is another revision
     */
    public static TravellerDocument of(
            List<RecordedLine> lines, Procedure procedure, Lookups lookups, Optional<String> flaw) {
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("nothing was recorded");
        }
        Telling telling = new Telling(procedure, lookups);
        lines.forEach(line -> telling.tell(line.event()));
        return telling.document(new ChainEnd(lines.getLast().version(), lines.getLast().hash(), flaw));
    }

    /** What the printed Data Matrix carries. */
    public RecordMark recordMark() {
        return new RecordMark(identity.id(), chain.entries(), chain.lastHash());
    }
}
