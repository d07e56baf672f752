package brightseam.procedure;

import static brightseam.procedure.Rule.when;

import brightseam.procedure.Draft.StepDraft;
import brightseam.procedure.Draft.WindowDraft;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Rules about the clean window: who opens and closes it, how long it is, and what may touch parts while it is open. */
final class WindowRules {

    private WindowRules() {}

    static Stream<Breach> theWindowNamesSteps(Draft draft, Vocabulary vocabulary) {
        WindowDraft window = draft.window();
        return Stream.of(
                        named(draft, "/window/opened_by", window.openedBy(), "the window is opened by "),
                        named(draft, "/window/closed_by", window.closedBy(), "the window is closed by "),
                        named(draft, "/window/renew_returns_to", window.renewReturnsTo(), "a renewal returns to "),
                        named(draft, "/touch_returns_to", draft.touchReturnsTo(), "a touch returns to "))
                .flatMap(breach -> breach);
    }

    static Stream<Breach> theWindowOpensBeforeItCloses(Draft draft, Vocabulary vocabulary) {
        int opens = draft.position(draft.window().openedBy());
        int closes = draft.position(draft.window().closedBy());
        return when(opens >= 0 && closes >= 0 && closes <= opens, "/window/closed_by",
                "a window that " + draft.window().closedBy() + " closes before "
                        + draft.window().openedBy() + " opens it",
                "a step after " + draft.window().openedBy());
    }

    static Stream<Breach> passInLiesInsideTheWindow(Draft draft, Vocabulary vocabulary) {
        int opens = draft.position(draft.window().openedBy());
        int closes = draft.position(draft.window().closedBy());
        return RouteRules.places(draft, StepKind.PASS_IN).stream().flatMap(place -> when(
                opens >= 0 && closes >= 0 && opens < closes && (place <= opens || place > closes),
                "/steps/" + place + "/kind",
                "a pass-in while the clean window is not open",
                "pass-in after " + draft.window().openedBy() + " and not after " + draft.window().closedBy()));
    }

    static Stream<Breach> betterHandlingKeepsLonger(Draft draft, Vocabulary vocabulary) {
        WindowDraft window = draft.window();
        return Stream.concat(
                when(window.closedCleanBin().compareTo(window.open()) < 0, "/window/closed_clean_bin",
                        "a window shorter in a closed clean bin than in the open",
                        "at least " + DurationText.print(window.open())),
                when(window.sealedBag().compareTo(window.closedCleanBin()) < 0, "/window/sealed_bag",
                        "a window shorter in a sealed bag than in a closed clean bin",
                        "at least " + DurationText.print(window.closedCleanBin())));
    }

    static Stream<Breach> theMarginFitsTheWindow(Draft draft, Vocabulary vocabulary) {
        WindowDraft window = draft.window();
        return when(window.passInMargin().compareTo(window.open()) >= 0, "/window/pass_in_margin",
                "a pass-in margin of " + DurationText.print(window.passInMargin()),
                "less than the window in the open, " + DurationText.print(window.open()));
    }

    static Stream<Breach> theWindowIsRenewedFromBeforeIt(Draft draft, Vocabulary vocabulary) {
        int opens = draft.position(draft.window().openedBy());
        return Stream.concat(
                when(opens >= 0 && draft.position(draft.window().renewReturnsTo()) > opens, "/window/renew_returns_to",
                        "a renewal that returns to " + draft.window().renewReturnsTo() + ", behind the opening",
                        draft.window().openedBy() + " or a step before it"),
                when(opens >= 0 && draft.position(draft.touchReturnsTo()) > opens, "/touch_returns_to",
                        "a touch that returns to " + draft.touchReturnsTo() + ", behind the opening",
                        draft.window().openedBy() + " or a step before it"));
    }

    static Stream<Breach> aTouchReturnsAsFarAsARenewal(Draft draft, Vocabulary vocabulary) {
        int renewal = draft.position(draft.window().renewReturnsTo());
        return when(renewal >= 0 && draft.position(draft.touchReturnsTo()) > renewal, "/touch_returns_to",
                "a touch that returns less far than a window that ran out",
                draft.window().renewReturnsTo() + " or a step before it");
    }

    static Stream<Breach> cleanPartsStayInCleanBins(Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        if (!insideWindow(draft, place)) {
            return Stream.empty();
        }
        List<BinClass> bins = step.bins();
        return IntStream.range(0, bins.size()).boxed().flatMap(i -> when(!bins.get(i).isClean(),
                "/steps/" + place + "/bins/" + i,
                RouteRules.word(bins.get(i)) + " while the clean window is open", "clean-bin or sealed-bag"));
    }

    static Stream<Breach> cleanPartsAreHeldInCleanGloves(
            Draft draft, Vocabulary vocabulary, StepDraft step, int place) {
        boolean clean = step.gloves()
                .flatMap(key -> Optional.ofNullable(vocabulary.gloves().get(key)))
                .filter(Vocabulary.Glove::cleanSide)
                .isPresent();
        boolean chamberGloves = step.isInSession() && step.kind() == StepKind.WELD;
        boolean unknown = step.gloves().filter(key -> !vocabulary.gloves().containsKey(key)).isPresent();
        return when(insideWindow(draft, place) && !clean && !unknown && !chamberGloves, "/steps/" + place + "/gloves",
                step.gloves().orElse("no gloves") + " while the clean window is open", cleanGloves(vocabulary));
    }

    private static boolean insideWindow(Draft draft, int place) {
        int opens = draft.position(draft.window().openedBy());
        return opens >= 0 && place >= opens && place <= draft.position(draft.window().closedBy());
    }

    private static String cleanGloves(Vocabulary vocabulary) {
        return vocabulary.gloves().values().stream()
                .filter(Vocabulary.Glove::cleanSide)
                .map(Vocabulary.Glove::key)
                .sorted()
                .collect(Collectors.joining(" or "));
    }

    private static Stream<Breach> named(Draft draft, String at, String step, String what) {
        return when(draft.position(step) < 0, at, what + step + ", which is not a step here", "the name of a step");
    }
}
