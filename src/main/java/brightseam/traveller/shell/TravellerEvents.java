package brightseam.traveller.shell;

import static java.util.Map.entry;

import brightseam.ledger.shell.EventCodec;
import brightseam.traveller.TravellerEvent;
import java.util.Map;

/**
 * The written names of a traveller's events. A name is never reused: when an event changes its form, the new form gets
 * the next number and the old one stays readable.
 */
final class TravellerEvents {

    private static final Map<String, Class<? extends TravellerEvent>> TYPES = Map.ofEntries(
            entry("released.1", TravellerEvent.Released.class),
            entry("set-apart.2", TravellerEvent.SetApart.class),
            entry("pieces-set-apart.2", TravellerEvent.PiecesSetApart.class),
            entry("put-in-bin.1", TravellerEvent.PutInBin.class),
            entry("bin-closed.1", TravellerEvent.BinClosed.class),
            entry("bin-opened.1", TravellerEvent.BinOpened.class),
            entry("step-started.1", TravellerEvent.StepStarted.class),
            entry("step-entered-late.1", TravellerEvent.StepEnteredLate.class),
            entry("contact-made.1", TravellerEvent.ContactMade.class),
            entry("hold-begun.1", TravellerEvent.HoldBegun.class),
            entry("hold-ended.1", TravellerEvent.HoldEnded.class),
            entry("reading-taken.1", TravellerEvent.ReadingTaken.class),
            entry("reading-corrected.2", TravellerEvent.ReadingCorrected.class),
            entry("step-signed.2", TravellerEvent.StepSigned.class),
            entry("step-stamped.2", TravellerEvent.StepStamped.class),
            entry("window-opened.1", TravellerEvent.WindowOpened.class),
            entry("window-ended.1", TravellerEvent.WindowEnded.class),
            entry("touch-reported.1", TravellerEvent.TouchReported.class),
            entry("gloves-spent.1", TravellerEvent.GlovesSpent.class),
            entry("nonconformance-opened.2", TravellerEvent.NonconformanceOpened.class),
            entry("dispositioned.2", TravellerEvent.Dispositioned.class),
            entry("returned-to-step.1", TravellerEvent.ReturnedToStep.class),
            entry("pieces-scrapped.1", TravellerEvent.PiecesScrapped.class),
            entry("passed-in.1", TravellerEvent.PassedIn.class),
            entry("entered-chamber.1", TravellerEvent.EnteredChamber.class),
            entry("lock-passed.1", TravellerEvent.LockPassed.class),
            entry("arc-begun.1", TravellerEvent.ArcBegun.class),
            entry("joint-welded.1", TravellerEvent.JointWelded.class),
            entry("joint-judged.2", TravellerEvent.JointJudged.class),
            entry("closed.1", TravellerEvent.Closed.class),
            entry("attempt-refused.1", TravellerEvent.AttemptRefused.class));

    /** Marks of the second forms are bound to what was signed; in the first forms they are bound to nothing. */
    private static final Map<String, Class<? extends TravellerEvent>> EARLIER = Map.ofEntries(
            entry("set-apart.1", TravellerEvent.SetApart.class),
            entry("pieces-set-apart.1", TravellerEvent.PiecesSetApart.class),
            entry("reading-corrected.1", TravellerEvent.ReadingCorrected.class),
            entry("step-signed.1", TravellerEvent.StepSigned.class),
            entry("step-stamped.1", TravellerEvent.StepStamped.class),
            entry("nonconformance-opened.1", TravellerEvent.NonconformanceOpened.class),
            entry("dispositioned.1", TravellerEvent.Dispositioned.class),
            entry("joint-judged.1", TravellerEvent.JointJudged.class));

    private static final EventCodec<TravellerEvent> CODEC =
            new EventCodec<>(TravellerEvent.class, TYPES, EARLIER);

    private TravellerEvents() {}

    /** Writes and reads every event of a traveller; a child's history nests the parent's events. */
    static EventCodec<TravellerEvent> codec() {
        return CODEC;
    }
}
