package brightseam.procedure;

import static brightseam.procedure.Rule.when;

import brightseam.kernel.ContactKind;
import brightseam.procedure.Draft.ReadingDraft;
import brightseam.procedure.Draft.StepDraft;
import brightseam.procedure.Draft.UseDraft;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Rules about what is scanned because it touches the pieces: that it is known, may touch them, and is asked for. */
final class UseRules {

    /** The unit of lengths that are read off a gauge. */
    private static final String MILLIMETRE = "mm";

    private UseRules() {}

    static Stream<Breach> whatIsUsedIsKnown(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return each(step, place, (use, at) -> {
            Vocabulary.SupplyType type = vocabulary.supplies().get(use.type());
            return type == null
                    ? Stream.of(new Breach(at + "/type", "unknown supply " + use.type(), types(vocabulary, use.kind())))
                    : when(type.kind() != use.kind(), at + "/kind",
                            use.type() + " as " + RouteRules.word(use.kind()), RouteRules.word(type.kind()));
        });
    }

    static Stream<Breach> aSupplyIsAskedForOnce(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return each(step, place, (use, at) -> when(
                step.uses().stream().takeWhile(other -> other != use)
                        .anyMatch(other -> other.type().equals(use.type())),
                at + "/type", use.type() + " for the second time", "each supply once"));
    }

    static Stream<Breach> onlyGlovesAreChanged(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return each(step, place, (use, at) -> when(use.isChange() && use.kind() != ContactKind.GLOVES, at + "/change",
                "a change of " + RouteRules.word(use.kind()), "change on gloves only"));
    }

    static Stream<Breach> theGlovesScannedAreWorn(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return each(step, place, (use, at) -> when(
                use.kind() == ContactKind.GLOVES && !step.gloves().equals(Optional.of(use.type())), at + "/type",
                use.type() + " scanned, " + step.gloves().orElse("no gloves") + " worn", "the gloves of the step"));
    }

    static Stream<Breach> whatTouchesCleanedPartsMay(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return each(step, place, (use, at) -> when(isCleaned(draft, place)
                && Optional.ofNullable(vocabulary.supplies().get(use.type()))
                        .filter(type -> !type.mayTouch().contains(Surface.CLEANED)).isPresent(), at + "/type",
                use.type() + " on cleaned parts", "a supply that may touch cleaned titanium"));
    }

    static Stream<Breach> aWipeUsesSolventAndCloth(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return when(step.kind() == StepKind.WIPE && !(uses(step, ContactKind.SOLVENT) && uses(step, ContactKind.WIPES)),
                "/steps/" + place + "/uses", "a wipe without solvent and wipes",
                "uses of kind solvent and of kind wipes");
    }

    /** Gauntlets that keep acid off the hand carry chlorine, which cracks cleaned titanium: new gloves behind them. */
    static Stream<Breach> cleanGlovesArePutOnNew(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        boolean others = !step.gloves().equals(wornBefore(draft, place));
        boolean changed = step.uses().stream().anyMatch(use -> use.kind() == ContactKind.GLOVES && use.isChange());
        return when(isScanned(step) && isClean(vocabulary, step) && others && !changed, "/steps/" + place + "/uses",
                step.gloves().orElse("") + " after " + wornBefore(draft, place).orElse("bare hands")
                        + ", and no change of gloves", "a use of kind gloves with change: true");
    }

    static Stream<Breach> cleanGlovesAreScanned(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        boolean worn = isCleaned(draft, place) && isClean(vocabulary, step);
        return when(worn && isScanned(step) && !HoldRules.isHurried(draft, place) && !uses(step, ContactKind.GLOVES),
                "/steps/" + place + "/uses", step.gloves().orElse("") + " on cleaned parts, not scanned",
                "a use of kind gloves");
    }

    static Stream<Breach> nothingIsScannedInAShortGap(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return when(HoldRules.isHurried(draft, place) && !step.uses().isEmpty(), "/steps/" + place + "/uses",
                "a scan before a step that has to begin within "
                        + draft.steps().get(Math.max(0, place - 1)).gap().map(Gap::maximum).map(DurationText::print)
                                .orElse(""), "nothing to scan there");
    }

    static Stream<Breach> nothingIsScannedForAStamp(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        return when(!isScanned(step) && !step.uses().isEmpty(), "/steps/" + place + "/uses",
                "a scan at an inspection point", "nothing to scan: a stamp is given at a desk");
    }

    static Stream<Breach> aLengthIsReadOffAGauge(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        boolean measured = step.readings().stream().map(ReadingDraft::unit).anyMatch(MILLIMETRE::equals);
        return when(measured && isScanned(step) && !uses(step, ContactKind.GAUGE), "/steps/" + place + "/uses",
                "a reading in mm and no gauge", "a use of kind gauge");
    }

    private interface UseCheck {
        Stream<Breach> breaches(UseDraft use, String at);
    }

    private static Stream<Breach> each(StepDraft step, int place, UseCheck check) {
        return IntStream.range(0, step.uses().size()).boxed()
                .flatMap(i -> check.breaches(step.uses().get(i), "/steps/" + place + "/uses/" + i));
    }

    private static boolean uses(StepDraft step, ContactKind kind) {
        return step.uses().stream().anyMatch(use -> use.kind() == kind);
    }

    private static boolean isScanned(StepDraft step) {
        return step.signedBy() != SignedBy.INSPECTOR;
    }

    private static boolean isClean(Vocabulary vocabulary, StepDraft step) {
        return step.gloves().map(vocabulary.gloves()::get).filter(Objects::nonNull)
                .filter(Vocabulary.Glove::cleanSide).isPresent();
    }

    /** As {@link Procedure#surface} has it. */
    private static boolean isCleaned(Draft draft, int place) {
        return draft.steps().subList(0, place + 1).stream().flatMap(step -> step.uses().stream())
                .anyMatch(UseDraft::isChange);
    }

    private static Optional<String> wornBefore(Draft draft, int place) {
        return draft.steps().subList(0, place).stream().flatMap(step -> step.gloves().stream())
                .reduce((earlier, later) -> later);
    }

    private static String types(Vocabulary vocabulary, ContactKind kind) {
        return vocabulary.supplies().values().stream().filter(type -> type.kind() == kind)
                .map(Vocabulary.SupplyType::key).collect(Collectors.toCollection(TreeSet::new))
                .stream().collect(Collectors.joining(", ", "one of ", ""));
    }
}
