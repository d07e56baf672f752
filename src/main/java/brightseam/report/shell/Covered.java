package brightseam.report.shell;

import brightseam.report.Phrases;
import brightseam.traveller.TravellerEvent;

/** What the mark in an event covers, in words for a table. */
final class Covered {

    private Covered() {}

    /** Empty where the event carries no mark. */
    static String words(TravellerEvent event) {
        return switch (event) {
            case TravellerEvent.StepSigned e -> "step " + e.step();
            case TravellerEvent.StepEnteredLate e -> "the time at which step " + e.step() + " was done";
            case TravellerEvent.StepStamped e -> "step " + e.step();
            case TravellerEvent.ReadingCorrected e -> "reading " + e.reading() + " of step " + e.step();
            case TravellerEvent.NonconformanceOpened e ->
                "nonconformance " + e.number() + " at step " + e.step() + ", " + Phrases.pieces(e.pieces());
            case TravellerEvent.Dispositioned e -> "nonconformance " + e.number();
            case TravellerEvent.PiecesSetApart e -> Phrases.pieces(e.pieces()) + " to " + e.child();
            case TravellerEvent.SetApart e -> Phrases.pieces(e.pieces()) + " from " + e.parent();
            case TravellerEvent.JointJudged e -> "joint " + e.verdict().joint() + ", run " + e.verdict().run();
            case TravellerEvent other -> "";
        };
    }
}
