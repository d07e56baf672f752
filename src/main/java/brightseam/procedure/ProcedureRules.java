package brightseam.procedure;

import java.util.List;

/** Every rule of sense, by name, in one place. What a rule looks for is the method of the same words. */
public final class ProcedureRules {

    private static final List<Rule> ALL = List.of(
            Rule.eachStep("step-names-are-unique", RouteRules::stepNamesAreUnique),
            Rule.eachStep("step-numbers-rise", RouteRules::stepNumbersRise),
            Rule.eachStep("a-return-names-a-step", RouteRules::aReturnNamesAStep),
            Rule.eachStep("a-return-leads-back", RouteRules::aReturnLeadsBack),
            Rule.eachStep("an-inspection-is-stamped", RouteRules::anInspectionIsStamped),
            Rule.whole("there-is-one-pass-in", RouteRules::thereIsOnePassIn),
            Rule.eachStep("welding-comes-after-pass-in", RouteRules::weldingComesAfterPassIn),
            Rule.whole("an-inspector-closes", RouteRules::anInspectorCloses),
            Rule.eachStep("the-station-does-such-steps", RouteRules::theStationDoesSuchSteps),
            Rule.eachStep("the-instruction-fits-three-lines", RouteRules::theInstructionFitsThreeLines),

            Rule.eachStep("a-hold-ends-after-it-may", HoldRules::aHoldEndsAfterItMay),
            Rule.eachStep("a-gap-has-a-step-to-follow", HoldRules::aGapHasAStepToFollow),
            Rule.eachStep("wet-and-dry-steps-have-a-minimum", HoldRules::wetAndDryStepsHaveAMinimum),
            Rule.eachStep("a-soak-is-followed-by-a-rinse", HoldRules::aSoakIsFollowedByARinse),
            Rule.eachStep("an-acid-soak-has-a-maximum", HoldRules::anAcidSoakHasAMaximum),
            Rule.eachStep("an-acid-soak-has-a-gap", HoldRules::anAcidSoakHasAGap),
            Rule.eachStep("a-short-gap-leaves-no-time-to-read", HoldRules::aShortGapLeavesNoTimeToRead),
            Rule.eachStep("a-mix-needs-a-basket", RouteRules::aMixNeedsABasket),

            Rule.eachStep("only-lock-and-chamber-are-in-session", SessionRules::onlyLockAndChamberAreInSession),
            Rule.eachStep("welding-is-done-in-a-session", SessionRules::weldingIsDoneInASession),
            Rule.eachStep("a-session-begins-with-the-pass-in", SessionRules::aSessionBeginsWithThePassIn),
            Rule.eachStep("a-session-keeps-its-own-record", SessionRules::aSessionKeepsItsOwnRecord),
            Rule.eachStep("bins-are-named-up-to-the-session", SessionRules::binsAreNamedUpToTheSession),

            Rule.whole("the-window-names-steps", WindowRules::theWindowNamesSteps),
            Rule.whole("the-window-opens-before-it-closes", WindowRules::theWindowOpensBeforeItCloses),
            Rule.whole("pass-in-lies-inside-the-window", WindowRules::passInLiesInsideTheWindow),
            Rule.whole("better-handling-keeps-longer", WindowRules::betterHandlingKeepsLonger),
            Rule.whole("the-margin-fits-the-window", WindowRules::theMarginFitsTheWindow),
            Rule.whole("the-window-is-renewed-from-before-it", WindowRules::theWindowIsRenewedFromBeforeIt),
            Rule.whole("a-touch-returns-as-far-as-a-renewal", WindowRules::aTouchReturnsAsFarAsARenewal),
            Rule.eachStep("clean-parts-stay-in-clean-bins", WindowRules::cleanPartsStayInCleanBins),
            Rule.eachStep("clean-parts-are-held-in-clean-gloves", WindowRules::cleanPartsAreHeldInCleanGloves),

            Rule.eachStep("reading-names-are-unique", ReadingRules::readingNamesAreUnique),
            Rule.eachStep("a-reading-has-room", ReadingRules::aReadingHasRoom),
            Rule.eachStep("a-look-has-no-numbers", ReadingRules::aLookHasNoNumbers),
            Rule.eachStep("limits-fit-the-key-pad", ReadingRules::limitsFitTheKeyPad),
            Rule.eachStep("limits-are-possible", ReadingRules::limitsArePossible),
            Rule.eachStep("a-reading-before-a-hold-has-one", ReadingRules::aReadingBeforeAHoldHasOne),

            Rule.eachStep("what-is-used-is-known", UseRules::whatIsUsedIsKnown),
            Rule.eachStep("a-supply-is-asked-for-once", UseRules::aSupplyIsAskedForOnce),
            Rule.eachStep("only-gloves-are-changed", UseRules::onlyGlovesAreChanged),
            Rule.eachStep("the-gloves-scanned-are-worn", UseRules::theGlovesScannedAreWorn),
            Rule.eachStep("what-touches-cleaned-parts-may", UseRules::whatTouchesCleanedPartsMay),
            Rule.eachStep("a-wipe-uses-solvent-and-cloth", UseRules::aWipeUsesSolventAndCloth),
            Rule.eachStep("clean-gloves-are-put-on-new", UseRules::cleanGlovesArePutOnNew),
            Rule.eachStep("clean-gloves-are-scanned", UseRules::cleanGlovesAreScanned),
            Rule.eachStep("nothing-is-scanned-in-a-short-gap", UseRules::nothingIsScannedInAShortGap),
            Rule.eachStep("nothing-is-scanned-for-a-stamp", UseRules::nothingIsScannedForAStamp),
            Rule.eachStep("a-length-is-read-off-a-gauge", UseRules::aLengthIsReadOffAGauge),

            Rule.eachStep("stations-are-known", CitationRules::stationsAreKnown),
            Rule.eachStep("cautions-are-known", CitationRules::cautionsAreKnown),
            Rule.eachStep("gloves-are-known", CitationRules::glovesAreKnown),
            Rule.eachStep("units-are-known", CitationRules::unitsAreKnown),
            Rule.eachStep("sources-are-listed", CitationRules::sourcesAreListed),
            Rule.whole("source-keys-are-unique", CitationRules::sourceKeysAreUnique),
            Rule.whole("every-source-is-cited", CitationRules::everySourceIsCited),
            Rule.whole("the-shop-specification-goes-first", CitationRules::theShopSpecificationGoesFirst),
            Rule.eachStep("the-cautions-of-the-station-are-shown", CitationRules::theStationsCautionsAreShown),
            Rule.eachStep("nothing-harmful-is-needed", CitationRules::nothingHarmfulIsNeeded));

    private ProcedureRules() {}

    /** Every rule of sense, in the order in which breaches are reported. */
    public static List<Rule> all() {
        return ALL;
    }

    /** Every breach of every rule; an empty list means that {@link Draft#toProcedure} succeeds. */
    public static List<Breach> breaches(Draft draft, Vocabulary vocabulary) {
        return ALL.stream().flatMap(rule -> rule.check(draft, vocabulary).stream()).toList();
    }
}
