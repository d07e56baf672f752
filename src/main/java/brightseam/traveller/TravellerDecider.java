package brightseam.traveller;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.kernel.Origin;
import brightseam.procedure.Procedure;
import brightseam.traveller.TravellerCommand.*;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Decides every command on a traveller. What time alone has brought about since the last event (an overrun hold, a
 * missed gap, a window that ran out) is noted first, so that no command slips past it.
 */
public final class TravellerDecider {

    private TravellerDecider() {}

    /**
     * Decides {@code command}.
     *
     * @param state the traveller, empty where nothing has been released under that label
     * @param procedure the revision that it follows, or will follow
     * @return the events that follow, or every rule that is broken
     * @throws IllegalArgumentException where {@code procedure} is not the revision that the traveller follows
     */
    public static Decision<TravellerEvent> decide(
            Optional<Traveller> state, Procedure procedure, TravellerCommand command) {
        if (command instanceof Release release) {
            return ReleaseRules.release(state, procedure, release);
        }
        Traveller before = state.orElseThrow(() -> new IllegalArgumentException("nothing has been released"));
        if (!before.procedure().equals(procedure.ref())) {
            throw new IllegalArgumentException(before.id() + " follows " + before.procedure().label());
        }
        List<TravellerEvent> due = due(before, procedure, command.origin());
        Traveller now = before.after(due);
        return switch (decideNow(now, procedure, command)) {
            case Decision.Refused<TravellerEvent> refused -> refused;
            case Decision.Accepted<TravellerEvent> accepted -> {
                List<TravellerEvent> events = new ArrayList<>(due);
                events.addAll(accepted.events());
                yield Decision.accepted(events);
            }
        };
    }

    private static List<TravellerEvent> due(Traveller before, Procedure procedure, Origin origin) {
        Origin byItself = new Origin(origin.at(), Origin.SHOP, "server", origin.demo());
        return new WatchRules(before, procedure, byItself).due();
    }

    private static Decision<TravellerEvent> decideNow(Traveller now, Procedure procedure, TravellerCommand command) {
        if (now.hasEnded() && !reachesTheEnded(command)) {
            return Rules.check()
                    .refuseFor(signedBefore(now, command))
                    .refuseIf(true, () -> new TravellerRefusal.TravellerEnded(now.id(), now.phase()))
                    .accept(List.of());
        }
        StepRules steps = new StepRules(now, procedure);
        ReadingRules readings = new ReadingRules(now, procedure);
        SignRules signing = new SignRules(now, procedure);
        BinRules bins = new BinRules(now, procedure);
        QuarantineRules quarantine = new QuarantineRules(now, procedure);
        return switch (command) {
            case Release c -> throw new IllegalStateException("decided before");
            case PutInBin c -> bins.putIn(c);
            case CloseBin c -> bins.close(c);
            case OpenBin c -> bins.open(c);
            case StartStep c -> steps.start(c);
            case EnterLate c -> new LateRules(now, procedure).enter(c);
            case BeginHold c -> steps.beginHold(c);
            case EndHold c -> steps.endHold(c);
            case CutHoldShort c -> steps.cutHoldShort(c);
            case TakeReading c -> readings.take(c);
            case CorrectReading c -> readings.correct(c);
            case SignStep c -> signing.sign(c);
            case StampStep c -> signing.stamp(c);
            case RejectStep c -> signing.reject(c);
            case ReportTouch c -> quarantine.touch(c);
            case ReportGlovesSpent c -> new GloveRules(now, procedure).spent(c);
            case ChangeGloves c -> new GloveRules(now, procedure).change(c);
            case ReportNonconformance c -> quarantine.report(c);
            case MarkSuspect c -> quarantine.markSuspect(c);
            case Decide c -> quarantine.decide(c);
            case SetApart c -> new LotRules(now, procedure).setApart(c);
            case TakeOut c -> new TakeOutRules(now, procedure).takeOut(c);
            case OfChamber c -> decideInChamber(now, procedure, c);
            case Watch c -> Decision.accepted(List.of());
            case NoteRefusal c -> Decision.accepted(List.of(note(c)));
        };
    }

    private static Decision<TravellerEvent> decideInChamber(Traveller now, Procedure procedure, OfChamber command) {
        ChamberRules chamber = new ChamberRules(now, procedure);
        JointRules joints = new JointRules(now, procedure);
        return switch (command) {
            case EnterChamber c -> chamber.enter(c);
            case NoteLockPass c -> chamber.lockPass(c);
            case SignWelding c -> chamber.signWelding(c);
            case BeginArc c -> joints.begin(c);
            case NoteJoint c -> joints.note(c);
            case JudgeJoint c -> joints.judge(c);
        };
    }

    private static boolean reachesTheEnded(TravellerCommand command) {
        return command instanceof Watch || command instanceof NoteRefusal || command instanceof MarkSuspect
                || command instanceof NoteJoint || command instanceof JudgeJoint || command instanceof NoteLockPass;
    }

    /** The second of two who sign the last step is told who was first. */
    private static Optional<TravellerRefusal> signedBefore(Traveller ended, TravellerCommand command) {
        if (command instanceof SignStep sign) {
            return SignRules.alreadySigned(ended, sign.step());
        }
        return command instanceof StampStep stamp ? SignRules.alreadySigned(ended, stamp.step()) : Optional.empty();
    }

    private static TravellerEvent note(NoteRefusal c) {
        return new TravellerEvent.AttemptRefused(c.origin(), c.attempt(), c.refusals().stream()
                .map(refusal -> new TravellerEvent.AttemptRefused.BrokenRule(refusal.code(), refusal.evidence()))
                .toList());
    }
}
