package brightseam.procedure;

import brightseam.kernel.StepId;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One numbered thing to do at a station.
 *
 * @param id its name inside the procedure
 * @param number what people call it, such as 70; rises along the route
 * @param title a few words, such as "Acid pickle"
 * @param kind what sort of step it is
 * @param station the class of station it is done at, such as {@code pickle-tank}
 * @param instruction what to do, three lines on the bench at most
 * @param cautions keys of the shared table of cautions, shown before the start
 * @param bins classes of bin that the pieces may be in while the step is done and when it is signed
 * @param gloves which gloves are put on before the start; empty where none are asked for
 * @param needs what else has to be at hand and is not scanned: water, fixtures, papers
 * @param uses what touches the pieces and is scanned before the start, in the order in which it is asked for
 * @param hold the time that the step must last, where it is timed
 * @param gap the longest time from the end of this step to the start of the next, where it matters
 * @param readings what is measured and written down, in order
 * @param signedBy who passes the step; an inspector's step is an inspection point that only a stamp passes
 * @param reworkTo steps that a rework found here may return to
 * @param sources keys of the procedure's sources for the values of this step
 * @param mix what may lie together in one basket meanwhile
 * @param inSession whether it is done in a chamber session, which keeps the record of it, and never at the bench
 */
public record Step(
        StepId id,
        int number,
        String title,
        StepKind kind,
        String station,
        String instruction,
        List<String> cautions,
        Set<BinClass> bins,
        Optional<String> gloves,
        List<String> needs,
        List<Use> uses,
        Optional<Hold> hold,
        Optional<Gap> gap,
        List<ReadingSpec> readings,
        SignedBy signedBy,
        List<StepId> reworkTo,
        List<String> sources,
        Mix mix,
        boolean inSession) {

    /** Copies the collections. */
    public Step {
        cautions = List.copyOf(cautions);
        bins = Set.copyOf(bins);
        needs = List.copyOf(needs);
        uses = List.copyOf(uses);
        readings = List.copyOf(readings);
        reworkTo = List.copyOf(reworkTo);
        sources = List.copyOf(sources);
    }

    /** Whether only an inspector's stamp passes this step. */
    public boolean isInspectionPoint() {
        return signedBy == SignedBy.INSPECTOR;
    }
}
