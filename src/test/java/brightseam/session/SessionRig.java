package brightseam.session;

import static brightseam.kernel.Samples.origin;

import brightseam.kernel.Decision;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.SupplyId;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A session whose clock the tests turn: what happened in it, and what it answers next. */
final class SessionRig extends SessionSamples {

    private Optional<ChamberSession> session = Optional.empty();
    private ListFact list = list(NEEDS);
    private long now;

    interface Ask extends Function<SessionRig, SessionCommand> {}

    static SessionRig opened() {
        return new SessionRig().does(SessionRig::open);
    }

    static SessionRig checkedIn() {
        return opened().later(60).does(in(LEG)).does(in(LUG)).does(in(WIRE)).does(in(TRAY)).does(in(GLOVES_A))
                .does(in(GLOVES_B));
    }

    static SessionRig closed() {
        return checkedIn().later(60).does(SessionRig::close);
    }

    static SessionRig purging() {
        return closed().later(60).does(SessionRig::startPurge);
    }

    static SessionRig fit() {
        return purging().later(7_200).does(SessionRig::noteFit);
    }

    /** Fit, the wire left out and now in the purged lock. */
    static SessionRig wireInPurgedLock() {
        return fitWithoutWire().does(SessionRig::openOuter).does(late(WIRE)).does(rig -> rig.shutOuter(sweep()))
                .later(600);
    }

    static SessionRig fitWithoutWire() {
        return opened().later(60).does(in(LEG)).does(in(LUG)).does(in(TRAY)).does(in(GLOVES_A)).does(in(GLOVES_B))
                .does(leaveOut("T-1044")).does(SessionRig::close).does(SessionRig::startPurge).later(7_200)
                .does(SessionRig::noteFit);
    }

    SessionRig later(long seconds) {
        now += seconds;
        return this;
    }

    SessionRig needing(Need... needs) {
        list = list(List.of(needs));
        return this;
    }

    boolean known() {
        return session.isPresent();
    }

    ChamberSession session() {
        return session.orElseThrow();
    }

    Moment now() {
        return at().at();
    }

    Origin at() {
        return origin(now);
    }

    Decision<SessionEvent> decide(Ask ask) {
        return SessionDecider.decide(session, ask.apply(this));
    }

    SessionRig does(Ask ask) {
        events(ask).forEach(event -> session = Optional.of(ChamberSession.evolve(session, event)));
        return this;
    }

    /** The events that follow; fails where it is refused. */
    List<SessionEvent> events(Ask ask) {
        return switch (decide(ask)) {
            case Decision.Accepted<SessionEvent> accepted -> accepted.events();
            case Decision.Refused<SessionEvent> refused -> throw new AssertionError(refused.refusals());
        };
    }

    /** The refusals; empty where it is accepted. */
    List<Refusal> refusals(Ask ask) {
        return decide(ask) instanceof Decision.Refused<SessionEvent> refused ? refused.refusals() : List.of();
    }

    List<String> codes(Ask ask) {
        return refusals(ask).stream().map(Refusal::code).toList();
    }

    // What is asked, with facts that have nothing against it.

    SessionCommand open() {
        return open(FABRICATOR, Optional.empty(), Optional.empty());
    }

    SessionCommand open(Signer signer, Optional<SessionId> chamberBusy, Optional<SessionId> kitBusy) {
        return new SessionCommand.OpenSession(
                ID, KIT, CHAMBER, Optional.of(LOCK), list, chamberBusy, kitBusy, List.of(), at(), signer);
    }

    static Ask in(Item item) {
        return rig -> rig.checkIn(fact(item));
    }

    SessionCommand checkIn(ItemFact fact) {
        return new SessionCommand.CheckIn(ID, fact, list, at());
    }

    static Ask takeBack(String label) {
        return rig -> new SessionCommand.TakeBack(ID, label, rig.at());
    }

    static Ask leaveOut(String key) {
        return rig -> new SessionCommand.LeaveOut(ID, key, "comes with the noon batch", rig.list, rig.at(), LEAD);
    }

    SessionCommand close() {
        return close(Optional.of(meter(O2, "209000", "out-of-range")), true, FABRICATOR);
    }

    SessionCommand close(Optional<MeterFact> oxygen, boolean cautionsRead, Signer signer) {
        return new SessionCommand.CloseChamber(ID, list, oxygen, cautionsRead, at(), signer);
    }

    SessionCommand startPurge() {
        return startPurge(Optional.of(argon("16000", "5200", "2", "3.5")));
    }

    SessionCommand startPurge(Optional<ArgonFact> argon) {
        return new SessionCommand.StartPurge(
                ID, argon, LIMITS, Optional.of(Duration.ofMinutes(110)), List.of(), at());
    }

    SessionCommand stopPurge(Refusal... objections) {
        return new SessionCommand.StopPurge(ID, "night", List.of(objections), at());
    }

    SessionCommand noteFit() {
        return new SessionCommand.NoteGas(ID, new Fitness.Fit(
                at().at().plus(Duration.ofMinutes(-6)), new BigDecimal("8.4"), Optional.of(new BigDecimal("22.0"))),
                at());
    }

    SessionCommand noteUnfit() {
        return new SessionCommand.NoteGas(ID, new Fitness.NotFit(List.of(new SessionRefusal.OxygenAboveLimit(
                O2, new BigDecimal("24.0"), new BigDecimal("20")))), at());
    }

    SessionCommand openOuter() {
        return new SessionCommand.OpenOuter(ID, at());
    }

    static Ask late(Item item) {
        return rig -> new SessionCommand.PutInLock(ID, fact(item), rig.list, rig.at());
    }

    static Ask out(String label, Refusal... objections) {
        return rig -> new SessionCommand.PutOut(ID, label, List.of(objections), rig.at());
    }

    static Ask take(String label) {
        return rig -> new SessionCommand.TakeFromLock(ID, label, rig.at());
    }

    SessionCommand shutOuter(LockNeed need) {
        return new SessionCommand.ShutOuter(ID, need, at());
    }

    SessionCommand purgeLock(LockNeed need) {
        return new SessionCommand.PurgeLock(ID, need, at());
    }

    SessionCommand cycle() {
        return new SessionCommand.NoteCycle(ID, at());
    }

    SessionCommand openInner() {
        return openInner(Optional.empty(), true, FABRICATOR);
    }

    SessionCommand openInner(Optional<MeterFact> lockOxygen, boolean cautionsRead, Signer signer) {
        return new SessionCommand.OpenInner(
                ID, lockOxygen, Optional.of(meter(O2, "9.5")), cautionsRead, at(), signer);
    }

    SessionCommand shutInner() {
        return new SessionCommand.ShutInner(ID, at());
    }

    SessionCommand notePass(int pass) {
        return new SessionCommand.NotePass(
                ID, pass, new LockPass.Effect(new BigDecimal("14.2"), Duration.ofMinutes(5), true), at());
    }

    SessionCommand openChamber() {
        return openChamber(opening(Optional.of(meter(ROOM, "20.9")), true), LEAD);
    }

    SessionCommand openChamber(OpeningFact opening, Signer signer) {
        return new SessionCommand.OpenChamber(ID, opening,
                List.of(new ArgonUse(ARGON, "LOT 5", new BigDecimal("5010"))), Optional.of(new BigDecimal("5200")),
                at(), signer);
    }

    SessionCommand abandon(Signer signer) {
        return new SessionCommand.Abandon(ID, "drawing withdrawn",
                opening(Optional.of(meter(ROOM, "20.9")), true), List.of(), at(), signer);
    }

    MeterFact read(SupplyId meter, String value) {
        return new MeterFact(meter, Optional.of(new BigDecimal(value)), Optional.of(now()), List.of(), true);
    }
}
