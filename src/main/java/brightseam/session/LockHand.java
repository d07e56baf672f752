package brightseam.session;

import brightseam.kernel.Decision;
import brightseam.kernel.Rules;
import brightseam.people.Role;
import brightseam.session.Lock.Doors;
import brightseam.session.Placed.Where;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Decides what is done at the transfer lock. */
final class LockHand {

    private LockHand() {}

    static Decision<SessionEvent> openOuter(ChamberSession s, SessionCommand.OpenOuter c) {
        return new LockRules(s).mayOpenOuter().accept(new SessionEvent.OuterOpened(c.origin(), s.id()));
    }

    static Decision<SessionEvent> putInLock(ChamberSession s, SessionCommand.PutInLock c) {
        return new LockRules(s).outerOpen().refuseAll(new ItemRules(s, c.list()).against(c.item()))
                .accept(SessionDecider.withList(s, c.list(), c,
                        new SessionEvent.PutInLock(c.origin(), s.id(), c.item().item())));
    }

    static Decision<SessionEvent> putOut(ChamberSession s, SessionCommand.PutOut c) {
        return new LockRules(s).innerOpen()
                .refuseIf(!isAt(s, c.label(), Where.INSIDE), () -> new SessionRefusal.NotInside(c.label()))
                .refuseAll(c.objections())
                .acceptWith(() -> List.of(new SessionEvent.PutOut(c.origin(), s.id(), c.label(), passGoingOn(s))));
    }

    static Decision<SessionEvent> takeFromLock(ChamberSession s, SessionCommand.TakeFromLock c) {
        boolean inbound = isAt(s, c.label(), Where.LOCK_INBOUND);
        boolean outbound = isAt(s, c.label(), Where.LOCK_OUTBOUND);
        return new LockRules(s).usable()
                .refuseIf(!s.lock().hasDoorOpen(), () -> new SessionRefusal.LockShut(s.id()))
                .refuseIf(!inbound && !outbound, () -> new SessionRefusal.NotInLock(c.label()))
                .acceptWith(() -> List.of(taken(s, c, inbound)));
    }

    /** Through the inner door goes only what came from inside: what came from outside is inside once it opens. */
    private static SessionEvent taken(ChamberSession s, SessionCommand.TakeFromLock c, boolean inbound) {
        if (s.lock().doors() == Doors.INNER_OPEN) {
            return new SessionEvent.TakenBackInside(c.origin(), s.id(), c.label(), passGoingOn(s));
        }
        return inbound ? new SessionEvent.TakenFromLock(c.origin(), s.id(), c.label())
                : new SessionEvent.PassedOut(c.origin(), s.id(), c.label());
    }

    static Decision<SessionEvent> shutOuter(ChamberSession s, SessionCommand.ShutOuter c) {
        List<String> outbound = s.in(Where.LOCK_OUTBOUND).stream().map(Item::label).sorted().toList();
        return new LockRules(s).outerOpen()
                .refuseIf(!outbound.isEmpty(), () -> new SessionRefusal.OutboundInLock(outbound))
                .accept(new SessionEvent.OuterShut(c.origin(), s.id(), c.need()));
    }

    static Decision<SessionEvent> purge(ChamberSession s, SessionCommand.PurgeLock c) {
        return new LockRules(s).shut().accept(new SessionEvent.LockPurgeStarted(c.origin(), s.id(), c.need()));
    }

    static Decision<SessionEvent> noteCycle(ChamberSession s, SessionCommand.NoteCycle c) {
        boolean purging = s.lock().doors() == Doors.PURGING;
        boolean sweeps = s.lock().need().filter(need -> need.method() == LockNeed.Method.SWEEP).isPresent();
        return new LockRules(s).usable()
                .refuseIf(!purging, () -> new SessionRefusal.LockNotPurging(s.id()))
                .refuseIf(purging && sweeps, () -> new SessionRefusal.LockNotCycled(s.id()))
                .accept(new SessionEvent.LockCycled(c.origin(), s.id(), s.lock().cyclesDone() + 1));
    }

    static Decision<SessionEvent> openInner(ChamberSession s, SessionCommand.OpenInner c) {
        Rules rules = new LockRules(s).mayOpenInner(c.lockOxygen(), c.now())
                .refuseIf(!c.signer().has(Role.FABRICATOR) && !c.signer().has(Role.LEAD),
                        () -> new SessionRefusal.SessionRoleMissing(
                                c.signer().badge(), List.of(Role.FABRICATOR, Role.LEAD)))
                .refuseIf(!c.cautionsRead(), () -> new SessionRefusal.SessionCautionsNotRead(s.id()));
        return rules.accept(new SessionEvent.InnerOpened(c.origin(), s.id(), s.nextPass(),
                s.in(Where.LOCK_INBOUND).stream().map(Item::label).sorted().toList(),
                s.lock().purgedFor(c.now()), s.lock().cyclesDone(), reliable(c.lockOxygen()),
                reliable(c.chamberOxygen()), c.signer()));
    }

    static Decision<SessionEvent> shutInner(ChamberSession s, SessionCommand.ShutInner c) {
        return new LockRules(s).innerOpen().acceptWith(() -> List.of(
                new SessionEvent.InnerShut(c.origin(), s.id(), passGoingOn(s))));
    }

    static Decision<SessionEvent> notePass(ChamberSession s, SessionCommand.NotePass c) {
        Optional<LockPass> pass = s.passes().stream().filter(one -> one.number() == c.pass()).findFirst();
        return Rules.check()
                .refuseIf(pass.flatMap(LockPass::shutAt).isEmpty(), () -> new SessionRefusal.PassNotOver(c.pass()))
                .acceptWith(() -> pass.flatMap(LockPass::effect).isPresent() ? List.of()
                        : List.of(new SessionEvent.PassJudged(c.origin(), s.id(), c.pass(), c.effect())));
    }

    private static int passGoingOn(ChamberSession s) {
        return s.passGoingOn().orElseThrow().number();
    }

    private static boolean isAt(ChamberSession s, String label, Where where) {
        return s.placed(label).filter(one -> one.where() == where).isPresent();
    }

    private static Optional<BigDecimal> reliable(Optional<MeterFact> meter) {
        return meter.filter(MeterFact::canBeUsed).flatMap(MeterFact::value);
    }
}
