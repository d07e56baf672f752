package brightseam.ui.board;

import brightseam.traveller.NextAction;
import brightseam.traveller.Phase;
import brightseam.traveller.Placement;
import brightseam.traveller.StepRun;
import brightseam.traveller.shell.Card;
import brightseam.words.Wording;

/** Where a traveller is and what is done with it now, in words. */
final class Whereabouts {

    private Whereabouts() {}

    /** Step and station: {@code Step 70 Acid pickle at S-ACID-1}. */
    static String step(Card card) {
        if (card.currentStep().isEmpty()) {
            return Wording.words(card.traveller().phase().name());
        }
        var step = card.currentStep().get();
        String inside = card.traveller().phase() == Phase.PASSED_IN ? "Passed in. " : "";
        String words = inside + "Step " + step.number() + " " + step.title();
        return words + card.traveller().run(step.id()).flatMap(StepRun::station)
                .map(station -> " at " + station)
                .orElse(step.isInspectionPoint() ? "" : ", to be begun at a " + Wording.words(step.station()));
    }

    /** The bin: {@code in process basket B-0031}. */
    static String bin(Card card) {
        if (card.traveller().phase() == Phase.CLOSED) {
            return "out of its bin";
        }
        return card.traveller().placement().map(Whereabouts::bin).orElse("in no bin");
    }

    /** What is to be done now. */
    static String now(Card card) {
        return switch (card.next()) {
            case NextAction.PutInto put -> "to be put into a " + String.join(" or ",
                    put.classes().stream().map(wanted -> Wording.words(wanted.name())).toList());
            case NextAction.CloseBin close -> close.bin() + " to be closed";
            case NextAction.Begin begin -> begin.step().title() + " to be begun";
            case NextAction.Read read -> read.reading().label() + " to be read" + (read.again() ? " again" : "");
            case NextAction.BeginHold begin -> "hold of " + begin.step().title() + " to be begun";
            case NextAction.Holding holding -> holding.step().title() + " is running";
            case NextAction.Sign sign -> sign.step().title() + " to be signed";
            case NextAction.AwaitStamp stamp -> "waits for a stamp";
            case NextAction.AwaitSession inside -> inside.step().title() + " in the chamber's session";
            case NextAction.AwaitDisposition stopped -> "waits for a disposition";
            case NextAction.Ended ended -> Wording.words(ended.phase().name());
        };
    }

    private static String bin(Placement where) {
        String lid = where.binClass().isClean() ? where.closed() ? ", closed" : ", open" : "";
        return "in " + Wording.words(where.binClass().name()) + " " + where.bin() + lid;
    }
}
