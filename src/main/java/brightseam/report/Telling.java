package brightseam.report;

import brightseam.kernel.Moment;
import brightseam.procedure.Procedure;
import brightseam.report.TravellerDocument.FollowedProcedure;
import brightseam.report.TravellerDocument.Identity;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.TravellerEvent.*;
import java.util.List;
import java.util.Optional;

/** Goes through a record event by event, beside the state that each leads to, and hands each to whom it concerns. */
final class Telling {

    private final Procedure procedure;
    private final Lookups lookups;
    private final Marks marks = new Marks();
    private final StepTelling steps;
    private final TroubleTelling trouble;
    private final ChamberTelling chamber;
    private final WindowTelling window = new WindowTelling();
    private Optional<Traveller> state = Optional.empty();
    private List<Integer> piecesAtFirst = List.of();
    private Who releasedBy;
    private Optional<String> releasedThrough = Optional.empty();
    private Moment releasedAt;
    private boolean demo;

    Telling(Procedure procedure, Lookups lookups) {
        this.procedure = procedure;
        this.lookups = lookups;
        this.steps = new StepTelling(procedure, lookups, marks);
        this.trouble = new TroubleTelling(procedure, lookups, marks);
        this.chamber = new ChamberTelling(procedure, lookups, marks);
    }

    /** A traveller that was set apart begins with everything that its parent had lived through. */
    void tell(TravellerEvent event) {
        if (event instanceof SetApart parting) {
            parting.history().forEach(this::tell);
        }
        demo |= event.origin().demo();
        Optional<Traveller> before = state;
        Traveller after = event instanceof Released || event instanceof SetApart
                ? Traveller.fold(List.of(event)).orElseThrow() : before.orElseThrow().after(List.of(event));
        state = Optional.of(after);
        happened(event, before, after);
        before.ifPresent(was -> window.changed(was, after, event.at()));
    }

    private void happened(TravellerEvent event, Optional<Traveller> before, Traveller after) {
        switch (event) {
            case Released e -> released(e);
            case SetApart e -> parted(e);
            case PiecesSetApart e -> trouble.left(e);
            case PutInBin e -> after.placement().ifPresent(steps::moved);
            case BinClosed e -> { }
            case BinOpened e -> { }
            case StepStarted e -> steps.started(e, after.placement());
            case StepEnteredLate e -> steps.enteredLate(e, before.orElseThrow());
            case ContactMade e -> steps.touched(e);
            case HoldBegun e -> steps.holdBegun(e);
            case HoldEnded e -> steps.holdEnded(e);
            case ReadingTaken e -> steps.read(e);
            case ReadingCorrected e -> steps.corrected(e);
            case StepSigned e -> steps.signed(e, before.orElseThrow());
            case StepStamped e -> steps.stamped(e, before.orElseThrow());
            case WindowOpened e -> { }
            case WindowEnded e -> { }
            case TouchReported e -> trouble.touched(e);
            case GlovesSpent e -> trouble.glovesSpent(e);
            case NonconformanceOpened e -> trouble.opened(e);
            case Dispositioned e -> trouble.decided(e);
            case ReturnedToStep e -> {
                steps.returned(e);
                trouble.returned(e);
            }
            case PiecesScrapped e -> trouble.scrapped(e);
            case PassedIn e -> { }
            case EnteredChamber e -> chamber.entered(e);
            case LockPassed e -> chamber.passed(e);
            case ArcBegun e -> chamber.begun(e);
            case JointWelded e -> chamber.welded(e, before.orElseThrow());
            case JointJudged e -> chamber.judged(e);
            case Closed e -> { }
            case AttemptRefused e -> trouble.refused(e);
        }
    }

    private void released(Released e) {
        if (!e.procedure().equals(procedure.ref())) {
            throw new IllegalArgumentException(e.traveller() + " follows " + e.procedure().label());
        }
        piecesAtFirst = e.pieces();
        releasedBy = lookups.who(e.by());
        releasedThrough = e.origin().system();
        releasedAt = e.at();
    }

    private void parted(SetApart e) {
        piecesAtFirst = e.pieces();
        trouble.parted(e);
        chamber.parted(e.pieces());
    }

    TravellerDocument document(ChainEnd chain) {
        Traveller lot = state.orElseThrow();
        return new TravellerDocument(
                new Identity(lot.id(), lot.parent(), lot.kit(), lot.part(), piecesAtFirst, lot.pieces(), lot.heat(),
                        releasedAt, releasedBy, releasedThrough, lot.phase(), lot.isInQuarantine()),
                lookups.heat(), new FollowedProcedure(procedure.ref(), procedure.title(), lookups.approval()),
                steps.pages(), chamber.part(), trouble.findings(), trouble.incidents(), window.spans(),
                trouble.refused(),
                marks.authority(), chain, demo);
    }
}
