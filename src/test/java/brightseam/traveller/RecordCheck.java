package brightseam.traveller;

import brightseam.kernel.Moment;
import brightseam.kernel.StepId;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.procedure.BinClass;
import brightseam.procedure.Hold;
import brightseam.procedure.Procedure;
import brightseam.procedure.SignedBy;
import brightseam.procedure.Step;
import brightseam.traveller.TravellerEvent.*;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads one traveller's record like an auditor who trusts nothing: knows the events and the procedure, and uses none
 * of the deciding or folding code. Finds every place where the record breaks a rule.
 */
final class RecordCheck {

    private final Procedure procedure;
    private final List<String> findings = new ArrayList<>();
    private final Set<Integer> pieces = new TreeSet<>();
    private final Set<StepId> begun = new HashSet<>();
    private final Set<StepId> signed = new LinkedHashSet<>();
    private final Map<StepId, Moment> holdBegun = new HashMap<>();
    private final Map<StepId, Moment> holdEnded = new HashMap<>();
    private final Set<StepId> cutShort = new HashSet<>();
    private final Map<StepId, Moment> signedAt = new HashMap<>();
    private final Set<StepId> excused = new HashSet<>();
    private final Map<Integer, Set<Integer>> open = new HashMap<>();
    private final Set<Integer> numbers = new HashSet<>();
    private final Map<Integer, StepId> overruns = new HashMap<>();
    private final Set<StepId> gapsMissed = new HashSet<>();
    private final CleanGauge clean = new CleanGauge();
    private final HandsCheck hands;
    private final ChamberCheck chamber;
    private final LimitsCheck limits;
    private final ComingOutCheck comingOut = new ComingOutCheck();
    private boolean closed;

    private RecordCheck(Procedure procedure) {
        this.procedure = procedure;
        this.hands = new HandsCheck(procedure);
        this.chamber = new ChamberCheck(procedure);
        this.limits = new LimitsCheck(procedure);
    }

    /** Every finding in {@code record}, empty where it is in order. */
    static List<String> findings(Procedure procedure, List<TravellerEvent> record) {
        RecordCheck check = new RecordCheck(procedure).readAll(record);
        check.rule(!check.comingOut.isStillIn(), "left behind in the bath for good", record.getLast());
        return check.findings;
    }

    /** The pieces that {@code record} leaves in the lot. */
    static Set<Integer> pieces(Procedure procedure, List<TravellerEvent> record) {
        return new RecordCheck(procedure).readAll(record).pieces;
    }

    private RecordCheck readAll(List<TravellerEvent> record) {
        for (TravellerEvent event : record) {
            clean.wear(event.at());
            hands.finding(event).or(() -> LateCheck.finding(procedure, event))
                    .ifPresent(found -> rule(false, found, event));
            chamber.finding(event, !open.isEmpty(), pieces).ifPresent(found -> rule(false, found, event));
            read(event);
        }
        return this;
    }

    private void read(TravellerEvent event) {
        boolean first = event instanceof Released || event instanceof SetApart;
        boolean ended = pieces.isEmpty() && !first || closed && open.isEmpty();
        rule(!comingOut.leavesBehind(event), "left behind in the bath", event);
        rule(!ended || event instanceof AttemptRefused || ChamberCheck.mayFollowTheEnd(event), "after the end", event);
        switch (event) {
            case Released e -> pieces.addAll(e.pieces());
            case SetApart e -> setApart(e);
            case PiecesSetApart e -> partWith(e);
            case PutInBin e -> put(e);
            case BinClosed e -> clean.close(true);
            case BinOpened e -> clean.close(false);
            case StepStarted e -> start(e);
            case StepEnteredLate e -> rule(begun.contains(e.step()), "late before its start", e);
            case HoldBegun e -> holdBegins(e);
            case HoldEnded e -> holdEnds(e);
            case ReadingTaken e -> rule(limits.isJudgedRightly(e), "limits judged wrongly", e);
            case ReadingCorrected e -> rule(limits.isJudgedRightly(e), "limits judged wrongly", e);
            case StepSigned e -> sign(e.step(), e.signature().signer(), false, e);
            case StepStamped e -> sign(e.step(), e.signature().signer(), true, e);
            case WindowOpened e -> openWindow(e);
            case WindowEnded e -> clean.end();
            case ContactMade e -> { }
            case GlovesSpent e -> { }
            case TouchReported e -> rule(clean.isOpen(), "touch without a window", e);
            case NonconformanceOpened e -> opens(e);
            case Dispositioned e -> disposition(e);
            case ReturnedToStep e -> goBack(e);
            case PiecesScrapped e -> scrap(e);
            case PassedIn e -> passIn(e);
            case EnteredChamber e -> clean.enter();
            case LockPassed e -> clean.pass(e.lock().inward());
            case ArcBegun e -> rule(begun.contains(e.step()), "an arc before its step", e);
            case JointWelded e -> { }
            case JointJudged e -> { }
            case Closed e -> closed = rule(signed.size() == procedure.steps().size(), "closed, steps unsigned", e);
            case AttemptRefused e -> rule(!e.rules().isEmpty(), "a refusal without a rule", e);
        }
    }

    private void setApart(SetApart e) {
        readAll(e.history());
        chamber.parted();
        rule(pieces.containsAll(e.pieces()), "child with strange pieces", e);
        pieces.retainAll(e.pieces());
        open.values().forEach(some -> some.retainAll(e.pieces()));
        open.values().removeIf(Set::isEmpty);
        if (!holding().isEmpty()) {
            comingOut.leave(e.at());
        }
    }

    private void put(PutInBin e) {
        rule(!clean.isOpen() || e.binClass().isClean(), "clean pieces in an unclean bin", e);
        rule(holding().isEmpty(), "moved into another bin while held", e);
        clean.put(e.binClass(), e.closed());
    }

    private void scrap(PiecesScrapped e) {
        rule(pieces.containsAll(e.pieces()) && !e.pieces().isEmpty(), "scrap of pieces not here", e);
        pieces.removeAll(e.pieces());
    }

    private void partWith(PiecesSetApart e) {
        rule(pieces.containsAll(e.pieces()) && pieces.size() > e.pieces().size(), "parting empties the lot", e);
        pieces.removeAll(e.pieces());
        chamber.parted();
        open.values().forEach(some -> some.retainAll(pieces));
        open.values().removeIf(Set::isEmpty);
    }

    private void start(StepStarted e) {
        rule(begun.add(e.step()), "begun twice in one passage", e);
        Step step = procedure.step(e.step());
        rule(open.isEmpty() || gapRunsTo(e.step()).isPresent(), "begun in quarantine", e);
        rule(fits(step), "begun in a wrong bin", e);
        if (step.hold().isEmpty()) {
            gapEnds(step, e);
        }
    }

    private void holdBegins(HoldBegun e) {
        Step step = procedure.step(e.step());
        rule(limits.mayHold(step), "hold begun with a bath out of limits", e);
        rule(open.isEmpty() || gapRunsTo(e.step()).isPresent(), "hold begun in quarantine", e);
        gapEnds(step, e);
        holdBegun.put(e.step(), e.at());
    }

    private void holdEnds(HoldEnded e) {
        Hold hold = procedure.step(e.step()).hold().orElseThrow();
        var lasted = e.at().since(holdBegun.get(e.step()));
        rule(lasted.compareTo(hold.minimum()) >= 0 || cutShort.contains(e.step()), "hold too short", e);
        boolean tooLong = hold.maximum().filter(longest -> lasted.compareTo(longest) > 0).isPresent();
        rule(!tooLong || overruns.containsValue(e.step()), "overrun without a nonconformance", e);
        rule(tooLong || !overruns.containsValue(e.step()), "overrun that was none", e);
        holdEnded.put(e.step(), e.at());
    }

    private Optional<Step> gapRunsTo(StepId step) {
        int place = procedure.position(step);
        if (place == 0) {
            return Optional.empty();
        }
        Step from = procedure.steps().get(place - 1);
        return Optional.of(from).filter(before -> before.gap().isPresent() && endOf(before) != null
                && !excused.contains(before.id()));
    }

    private void gapEnds(Step to, TravellerEvent event) {
        gapRunsTo(to.id()).ifPresent(from -> {
            boolean missed = event.at().since(endOf(from)).compareTo(from.gap().orElseThrow().maximum()) > 0;
            boolean known = gapsMissed.contains(from.id());
            rule(missed == known, missed ? "gap missed in silence" : "gap that was not missed", event);
            excused.add(from.id());
        });
    }

    private Moment endOf(Step step) {
        return step.hold().isPresent() ? holdEnded.get(step.id()) : signedAt.get(step.id());
    }

    private void sign(StepId id, Signer signer, boolean stamped, TravellerEvent event) {
        Step step = procedure.step(id);
        int place = procedure.position(id);
        rule(signed.size() == place && !signed.contains(id), "signed out of order", event);
        rule(open.isEmpty(), "signed in quarantine", event);
        rule(begun.contains(id), "signed without being begun", event);
        rule(step.hold().isEmpty() || holdEnded.containsKey(id) && !cutShort.contains(id), "signed without its hold",
                event);
        rule(limits.isRead(step), "signed without a reading", event);
        rule(!limits.isOutInSilence(step), "out of limits in silence", event);
        rule(stamped == (step.signedBy() == SignedBy.INSPECTOR), "stamp and signature mixed up", event);
        if (stamped) {
            rule(signer.has(Role.INSPECTOR) && signer.stamp().isPresent(), "stamp by somebody without one", event);
        } else {
            rule(signer.has(step.signedBy() == SignedBy.LEAD ? Role.LEAD : Role.FABRICATOR), "wrong role", event);
        }
        rule(fits(step), "signed in a wrong bin", event);
        rule(clean.isShut() || !clean.bin().equals(Optional.of(BinClass.SEALED_BAG)), "signed, open bag", event);
        rule(!clean.isOpen() || clean.leftMillis().signum() > 0, "signed over a window that ran out", event);
        signed.add(id);
        signedAt.put(id, event.at());
    }

    private void openWindow(WindowOpened e) {
        rule(clean.bin().filter(where -> !where.isClean()).isEmpty(), "window opened over an unclean bin", e);
        rule(!clean.isOpen(), "window opened twice", e);
        clean.open(e.limits());
    }

    private void passIn(PassedIn e) {
        rule(open.isEmpty(), "passed in in quarantine", e);
        rule(clean.isClosed() && clean.bin().filter(BinClass::isClean).isPresent(), "passed in unclean or open", e);
        rule(clean.isOpen(), "passed in without a window", e);
        BigDecimal margin = BigDecimal.valueOf(procedure.window().passInMargin().toMillis());
        rule(clean.isOpen() && clean.leftMillis().compareTo(margin) >= 0, "passed in with too little", e);
    }

    private boolean fits(Step step) {
        return step.bins().isEmpty() || clean.bin().filter(step.bins()::contains).isPresent();
    }

    private void opens(NonconformanceOpened e) {
        rule(numbers.add(e.number()), "a number given twice", e);
        rule(!e.pieces().isEmpty() && pieces.containsAll(e.pieces()), "about pieces that are not here", e);
        open.put(e.number(), new TreeSet<>(e.pieces()));
        switch (e.cause()) {
            case HOLD_OVERRUN -> rule(!overruns.containsValue(e.step())
                    & overruns.put(e.number(), e.step()) == null, "one overrun opened twice", e);
            case HOLD_CUT_SHORT -> cutShort.add(e.step());
            case GAP_EXCEEDED -> rule(gapsMissed.add(e.step()), "one gap opened twice", e);
            case READING_OUT_OF_LIMITS -> limits.tell(e.step());
            case TIME_NOT_OBSERVED, INSPECTION_REJECTED, REPORTED, SUSPECT, JOINT_EXCURSION, JOINT_UNPROVEN,
                    JOINT_REJECTED -> { }
        }
    }

    private void disposition(Dispositioned e) {
        rule(open.remove(e.number()) != null, "decided what was not open", e);
        rule(e.disposition().roles().stream().anyMatch(e.signature().signer()::has), "decided without the role", e);
        rule(holding().isEmpty(), "decided in the bath", e);
    }

    private void goBack(ReturnedToStep e) {
        int place = procedure.position(e.step());
        List<StepId> from = procedure.route().subList(place, procedure.route().size());
        Set<StepId> gone = new HashSet<>(begun);
        gone.retainAll(from);
        rule(gone.equals(new HashSet<>(e.superseded())), "superseded more or less than was begun", e);
        rule(!clean.isOpen() || place > procedure.position(procedure.window().openedBy()),
                "window open behind a return", e);
        closed = false;
        clean.leaveIf(gone.contains(new StepId("pass-in")));
        begun.removeAll(gone);
        signed.removeAll(gone);
        gone.forEach(step -> {
            holdBegun.remove(step);
            holdEnded.remove(step);
            cutShort.remove(step);
            signedAt.remove(step);
            overruns.values().removeIf(step::equals);
            excused.remove(step);
            gapsMissed.remove(step);
            limits.forget(step);
        });
    }

    private Set<StepId> holding() {
        Set<StepId> holding = new HashSet<>(holdBegun.keySet());
        holding.removeAll(holdEnded.keySet());
        return holding;
    }

    private boolean rule(boolean holds, String otherwise, TravellerEvent event) {
        findings.addAll(holds ? List.of() : List.of(otherwise + ": " + event));
        return true;
    }
}
