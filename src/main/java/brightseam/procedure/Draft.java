package brightseam.procedure;

import brightseam.kernel.ContactKind;
import brightseam.kernel.Limits;
import brightseam.kernel.StepId;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A procedure as its file says it: well-formed, every part of the right type, but not yet found to make sense.
 * {@link ProcedureRules} look at it; only then {@link #toProcedure} makes the object that travellers follow.
 * Components mean what those of {@link Procedure} and its parts mean.
 */
public record Draft(
        String id,
        String revision,
        String title,
        String scope,
        List<String> grades,
        WindowDraft window,
        String touchReturnsTo,
        List<Source> sources,
        List<StepDraft> steps) {

    /** The clean window as written. */
    public record WindowDraft(
            String openedBy,
            String closedBy,
            Duration open,
            Duration closedCleanBin,
            Duration sealedBag,
            Duration passInMargin,
            String renewReturnsTo) {

        private CleanWindow toWindow() {
            return new CleanWindow(
                    new StepId(openedBy),
                    new StepId(closedBy),
                    new WindowLimits(open, closedCleanBin, sealedBag),
                    passInMargin,
                    new StepId(renewReturnsTo));
        }
    }

    /** A hold as written: a minimum, a maximum or both. */
    public record HoldDraft(Optional<Duration> minimum, Optional<Duration> maximum) {

        private Hold toHold() {
            return new Hold(minimum.orElse(Duration.ZERO), maximum);
        }
    }

    /** A reading as written; decimals are 0 and it is read after the hold where nothing else is said. */
    public record ReadingDraft(
            String id,
            String label,
            String unit,
            Optional<BigDecimal> minimum,
            Optional<BigDecimal> maximum,
            Optional<Integer> decimals,
            Optional<Boolean> beforeHold) {

        boolean isPassFail() {
            return unit.equals(ReadingSpec.PASS_FAIL);
        }

        private ReadingSpec toReading() {
            Limits limits = isPassFail()
                    ? new Limits(Optional.of(BigDecimal.ONE), Optional.of(BigDecimal.ONE))
                    : new Limits(minimum, maximum);
            return new ReadingSpec(id, label, unit, limits, decimals.orElse(0), beforeHold.orElse(false));
        }
    }

    /** Something that is scanned at a step, as written; it is not changed where nothing else is said. */
    public record UseDraft(ContactKind kind, String type, Optional<Boolean> change) {

        boolean isChange() {
            return change.orElse(false);
        }

        private Use toUse() {
            return new Use(kind, type, isChange());
        }
    }

    /** A step as written; lists that are left out are empty, and without a mix anything lies together. */
    public record StepDraft(
            String id, int number, String title, StepKind kind,
            String station, String instruction,
            List<String> cautions,
            List<BinClass> bins,
            Optional<String> gloves,
            List<String> needs,
            List<UseDraft> uses,
            Optional<HoldDraft> hold, Optional<Gap> gap,
            List<ReadingDraft> readings,
            SignedBy signedBy,
            List<String> reworkTo,
            List<String> sources,
            Optional<Mix> mix, Optional<Boolean> inSession) {

        /** Takes a list that is left out as empty. */
        public StepDraft {
            cautions = orEmpty(cautions);
            bins = orEmpty(bins);
            needs = orEmpty(needs);
            uses = orEmpty(uses);
            readings = orEmpty(readings);
            reworkTo = orEmpty(reworkTo);
            sources = orEmpty(sources);
        }

        private Step toStep() {
            return new Step(
                    new StepId(id), number, title.strip(), kind, station, instruction.strip(), cautions,
                    bins.isEmpty() ? Set.of() : EnumSet.copyOf(bins), gloves, needs,
                    uses.stream().map(UseDraft::toUse).toList(), hold.map(HoldDraft::toHold), gap,
                    readings.stream().map(ReadingDraft::toReading).toList(), signedBy,
                    reworkTo.stream().map(StepId::new).toList(), sources, mix.orElse(Mix.ANY),
                    isInSession());
        }

        boolean isInSession() {
            return inSession.orElse(false);
        }
    }

    /**
     * The procedure whose file has the hash {@code sha256}.
     *
     * @throws IllegalArgumentException where a part breaks its own type's rule, which the rules of sense find earlier
     */
    public Procedure toProcedure(String sha256) {
        return new Procedure(
                new ProcedureRef(id, revision, sha256), title.strip(), scope.strip(), grades,
                steps.stream().map(StepDraft::toStep).toList(), window.toWindow(), new StepId(touchReturnsTo), sources);
    }

    /** The place of the step named {@code step} in the route from 0, or -1. */
    int position(String step) {
        return steps.stream().map(StepDraft::id).toList().indexOf(step);
    }

    private static <T> List<T> orEmpty(List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }
}
