package brightseam.trace;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.StepId;
import brightseam.traveller.ArcFact;
import brightseam.traveller.Contact;
import brightseam.traveller.Joined;
import brightseam.traveller.JointFact;
import brightseam.traveller.LockPassFact;
import brightseam.traveller.Meaning;
import brightseam.traveller.Traveller;
import brightseam.traveller.TravellerEvent;
import brightseam.traveller.TravellerEvent.*;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads out of one event what it changes in the contacts of its traveller. A station counts from the beginning of the
 * step, not of the hold, so that a question about a time errs towards more pieces.
 */
public final class Touches {

    private static final String NO_TYPE = "";

    private final Traveller before;

    private Touches(Traveller before) {
        this.before = before;
    }

    /**
     * What {@code event} changes, in order.
     *
     * @param before the traveller before it; empty for a first event
     * @throws IllegalStateException where nothing came before an event that does not begin a record
     */
    public static List<TouchChange> of(Optional<Traveller> before, TravellerEvent event) {
        return switch (event) {
            case Released first -> released(first);
            case SetApart first -> inherited(first);
            default -> new Touches(before.orElseThrow(() ->
                    new IllegalStateException("a record begins with its release"))).changes(event);
        };
    }

    private static List<TouchChange> released(Released e) {
        return Stream.of(Thing.of(ThingKind.HEAT, e.heat()), Thing.of(ThingKind.KIT, e.kit()))
                .<TouchChange>map(thing -> new TouchChange.Began(new Touch(e.traveller(), e.traveller(), e.pieces(),
                        thing, NO_TYPE, Optional.empty(), 0, Optional.empty(), e.at().wall(), Optional.empty())))
                .toList();
    }

    /** The parent's contacts up to then, for the child's pieces. */
    private static List<TouchChange> inherited(SetApart e) {
        return TouchLog.of(e.history()).touches().stream().map(touch -> touch.under(e.traveller(), e.pieces()))
                .filter(touch -> !touch.pieces().isEmpty())
                .<TouchChange>map(TouchChange.Began::new).toList();
    }

    private List<TouchChange> changes(TravellerEvent event) {
        return switch (event) {
            case Released e -> throw new IllegalStateException("released twice: " + before.id());
            case SetApart e -> throw new IllegalStateException("set apart twice: " + before.id());
            case PiecesSetApart e -> List.of(new TouchChange.Parted(e.pieces()));
            case PutInBin e -> putInBin(e);
            case BinClosed e -> handled(e.origin());
            case BinOpened e -> handled(e.origin());
            case StepStarted e -> started(e);
            case ContactMade e -> e.contacts().stream().<TouchChange>map(contact -> new TouchChange.Began(
                    touch(Thing.of(contact), contact.type(), Optional.of(e.step()), e.at()))).toList();
            case HoldBegun e -> handled(e.origin(), e.step());
            case HoldEnded e -> with(new TouchChange.LiftedOut(e.step(), before.pass(e.step()), e.at().wall()),
                    handled(e.origin(), e.step()));
            case StepEnteredLate e -> handled(e.origin(), e.step());
            case ReadingTaken e -> handled(e.origin(), e.step());
            case StepSigned e -> over(e.step(), e.at(), e.signature().signer().badge());
            case StepStamped e -> over(e.step(), e.at(), e.signature().signer().badge());
            case TouchReported e -> handled(e.origin());
            case NonconformanceOpened e -> e.signature().filter(mark -> mark.meaning()
                    == Meaning.REJECTED).map(mark ->
                    List.<TouchChange>of(handled(mark.signer().badge(), Optional.of(e.step()), e.at())))
                    .orElse(List.of());
            case ReturnedToStep e -> returned(e);
            case PiecesScrapped e -> e.pieces().containsAll(before.pieces()) ? ended(e.at().wall()) : List.of();
            case Closed e -> List.of(new TouchChange.LeftBin(e.at().wall()));
            case GlovesSpent e -> List.of();
            case ReadingCorrected e -> List.of();
            case WindowOpened e -> List.of();
            case WindowEnded e -> List.of();
            case Dispositioned e -> List.of();
            case PassedIn e -> List.of();
            case EnteredChamber e -> with(new TouchChange.LeftBin(e.at().wall()), handled(e.origin()));
            case LockPassed e -> List.of(new TouchChange.Began(inTheLock(e.lock())));
            case ArcBegun e -> atJoint(e);
            case JointWelded e -> atJoint(e);
            case JointJudged e -> handled(e.origin(), e.step());
            case AttemptRefused e -> List.of();
        };
    }

    private List<TouchChange> returned(ReturnedToStep e) {
        return e.superseded().stream().<TouchChange>map(step ->
                new TouchChange.StepOver(step, before.pass(step), e.at().wall())).toList();
    }

    private List<TouchChange> putInBin(PutInBin e) {
        List<TouchChange> changes = new ArrayList<>();
        changes.add(new TouchChange.LeftBin(e.at().wall()));
        changes.add(new TouchChange.Began(
                touch(Thing.of(ThingKind.BIN, e.bin()), NO_TYPE, before.currentStep(), e.at())));
        changes.addAll(handled(e.origin()));
        return changes;
    }

    private List<TouchChange> started(StepStarted e) {
        List<TouchChange> changes = new ArrayList<>();
        e.station().ifPresent(station -> changes.add(new TouchChange.Began(
                touch(Thing.of(ThingKind.STATION, station), NO_TYPE, Optional.of(e.step()), e.at()))));
        changes.addAll(handled(e.origin(), e.step()));
        return changes;
    }

    private Touch inTheLock(LockPassFact pass) {
        return touch(Thing.of(ThingKind.STATION, pass.lock()), NO_TYPE, before.passedInBy().or(before::currentStep),
                pass.begunAt()).lasting(pass.endedAt().wall());
    }

    /** What touches a joint: the filler, the gas, the meters that watch it, and the welder. */
    private List<TouchChange> atJoint(ArcBegun e) {
        ArcFact arc = e.arc();
        List<Integer> pieces = Joined.pieces(before, arc.parts());
        return with(touching(arc.contacts(), pieces).<TouchChange>map(contact -> new TouchChange.Began(
                touch(contact, e.step(), e.at()).at(arc.joint(), pieces))).toList(),
                handled(arc.welder(), Optional.of(e.step()), e.at()));
    }

    /** It touches for as long as the joint is hot. */
    private List<TouchChange> atJoint(JointWelded e) {
        JointFact joint = e.joint();
        List<Integer> pieces = Joined.pieces(before, joint.parts());
        return with(touching(joint.contacts(), pieces).<TouchChange>map(contact -> new TouchChange.WasAtJoint(
                touch(contact, e.step(), joint.startedAt()).at(joint.joint(), pieces)
                        .lasting(joint.hotUntil().wall()))).toList(),
                handled(joint.welder(), Optional.of(e.step()), joint.stoppedAt()));
    }

    private static Stream<Contact> touching(List<Contact> contacts, List<Integer> pieces) {
        return pieces.isEmpty() ? Stream.of() : contacts.stream();
    }

    private Touch touch(Contact contact, StepId step, Moment at) {
        return touch(Thing.of(contact), contact.type(), Optional.of(step), at);
    }

    private static List<TouchChange> with(List<TouchChange> some, TouchChange last) {
        return Stream.concat(some.stream(), Stream.of(last)).toList();
    }

    private List<TouchChange> over(StepId step, Moment at, BadgeId signer) {
        return List.of(handled(signer, Optional.of(step), at),
                new TouchChange.StepOver(step, before.pass(step), at.wall()));
    }

    /** Nothing is left: whatever touched the pieces no longer does. */
    private List<TouchChange> ended(Instant at) {
        return Stream.<TouchChange>concat(Stream.of(new TouchChange.LeftBin(at)), before.runs().values().stream()
                .filter(run -> !run.isSigned())
                .map(run -> new TouchChange.StepOver(run.step(), run.pass(), at))).toList();
    }

    private List<TouchChange> handled(Origin origin) {
        return handled(origin, before.currentStep());
    }

    private List<TouchChange> handled(Origin origin, StepId step) {
        return handled(origin, Optional.of(step));
    }

    /** The server itself has no hands. */
    private List<TouchChange> handled(Origin origin, Optional<StepId> step) {
        return origin.by().equals(Origin.SHOP) ? List.of() : List.of(handled(origin.by(), step, origin.at()));
    }

    private TouchChange handled(BadgeId who, Optional<StepId> step, Moment at) {
        return new TouchChange.Handled(touch(Thing.of(ThingKind.PERSON, who), NO_TYPE, step, at).lasting(at.wall()));
    }

    private Touch touch(Thing thing, String type, Optional<StepId> step, Moment at) {
        return new Touch(before.id(), before.id(), before.pieces(), thing, type, step,
                step.map(before::pass).orElse(0), Optional.empty(), at.wall(), Optional.empty());
    }

    private static List<TouchChange> with(TouchChange first, List<TouchChange> rest) {
        return Stream.concat(Stream.of(first), rest.stream()).toList();
    }
}
