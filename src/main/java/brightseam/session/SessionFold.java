package brightseam.session;

import brightseam.kernel.Moment;
import brightseam.session.Placed.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Makes the next state of a session out of an event: a draft of the state before, changed and closed again. */
final class SessionFold {

    private final ChamberSession before;
    private final Moment at;
    private Phase phase;
    private List<Need> needs;
    private final List<Placed> items;
    private final List<LeftOut> leftOut;
    private Lock lock;
    private Gas gas;
    private final List<LockPass> passes;
    private Optional<Moment> closedAt;
    private Optional<Moment> overAt;
    private List<ArgonUse> argonUsed;

    private SessionFold(ChamberSession before, Moment at) {
        this.before = before;
        this.at = at;
        this.phase = before.phase();
        this.needs = before.needs();
        this.items = new ArrayList<>(before.items());
        this.leftOut = new ArrayList<>(before.leftOut());
        this.lock = before.lock();
        this.gas = before.gas();
        this.passes = new ArrayList<>(before.passes());
        this.closedAt = before.closedAt();
        this.overAt = before.overAt();
        this.argonUsed = before.argonUsed();
    }

    static ChamberSession evolve(Optional<ChamberSession> before, SessionEvent event) {
        Moment at = event.origin().at();
        if (event instanceof SessionEvent.Opened first) {
            return new ChamberSession(first.session(), first.kit(), first.chamber(), first.lock(), at, Phase.CHECK_IN,
                    first.needs(), List.of(), List.of(), Lock.unused(at), Gas.air(), List.of(), Optional.empty(),
                    Optional.empty(), List.of());
        }
        ChamberSession known = before.orElseThrow(() -> new IllegalArgumentException("not open: " + event.session()));
        return new SessionFold(known, at).after(event);
    }

    private ChamberSession after(SessionEvent event) {
        switch (event) {
            case SessionEvent.Opened ignored -> { }
            case SessionEvent.ListChanged changed -> needs = changed.needs();
            case SessionEvent.CheckedIn in -> items.add(new Placed(in.item(), Where.CHECKED_IN, at, Optional.empty()));
            case SessionEvent.TakenBack back -> remove(back.label());
            case SessionEvent.LeftOutAllowed out -> leftOut(out);
            case SessionEvent.ChamberClosed closed -> {
                phase = Phase.CLOSED;
                closedAt = Optional.of(at);
                items.replaceAll(one -> one.where() == Where.CHECKED_IN ? one.at(Where.INSIDE, at) : one);
            }
            case SessionEvent.PurgeStarted started -> purgeStarted(started);
            case SessionEvent.PurgeStopped stopped -> {
                phase = Phase.CLOSED;
                gas = new Gas(gas.purge().map(purge -> purge.stopped(at)), Optional.empty(), List.of(),
                        Optional.empty());
            }
            case SessionEvent.FoundFit fit -> {
                phase = Phase.FIT;
                gas = new Gas(gas.purge(), Optional.of(new Gas.Fit(
                        fit.since(), at, fit.oxygenPpm(), fit.moisturePpm())), List.of(), Optional.empty());
            }
            case SessionEvent.FoundUnfit unfit -> {
                phase = Phase.UNFIT;
                gas = new Gas(gas.purge(), Optional.empty(), unfit.reasons(), Optional.of(at));
            }
            case SessionEvent.AtLock atLock -> atLock(atLock);
            case SessionEvent.Ended ended -> over(Phase.ENDED, ended.argonUsed());
            case SessionEvent.Abandoned abandoned -> over(Phase.ABANDONED, abandoned.argonUsed());
        }
        return closed();
    }

    private void atLock(SessionEvent.AtLock event) {
        switch (event) {
            case SessionEvent.OuterOpened ignored -> lock = lock.outerOpen(at);
            case SessionEvent.PutInLock in -> {
                remove(in.item().label());
                items.add(new Placed(in.item(), Where.LOCK_INBOUND, at, Optional.empty()));
            }
            case SessionEvent.PutOut out -> {
                move(out.label(), one -> one.at(Where.LOCK_OUTBOUND, at));
                pass(out.pass(), pass -> pass.with(out.label()));
            }
            case SessionEvent.TakenFromLock taken -> remove(taken.label());
            case SessionEvent.TakenBackInside back -> {
                move(back.label(), one -> one.at(Where.INSIDE, at));
                passes.replaceAll(pass -> pass.without(back.label()));
            }
            case SessionEvent.PassedOut out -> move(out.label(), one -> one.at(Where.PASSED_OUT, at));
            case SessionEvent.OuterShut shut -> lock = lock.purging(shut.need(), at);
            case SessionEvent.LockPurgeStarted started -> lock = lock.purging(started.need(), at);
            case SessionEvent.LockCycled ignored -> lock = lock.cycled();
            case SessionEvent.InnerOpened opened -> innerOpened(opened);
            case SessionEvent.InnerShut shut -> {
                lock = lock.innerShut(phase == Phase.FIT, at);
                pass(shut.pass(), pass -> pass.shut(at));
            }
            case SessionEvent.PassJudged judged -> pass(judged.pass(), pass -> pass.with(judged.effect()));
        }
    }

    private void leftOut(SessionEvent.LeftOutAllowed out) {
        leftOut.removeIf(earlier -> earlier.key().equals(out.key()));
        leftOut.add(new LeftOut(out.key(), out.reason(), out.signer().name(), at));
    }

    private void purgeStarted(SessionEvent.PurgeStarted started) {
        phase = Phase.PURGING;
        gas = new Gas(Optional.of(new Purge(at, started.argon(), started.limits(), started.forecast(),
                Optional.empty())), Optional.empty(), List.of(), Optional.empty());
    }

    private void innerOpened(SessionEvent.InnerOpened opened) {
        lock = lock.innerOpen(at);
        items.replaceAll(one -> one.where() == Where.LOCK_INBOUND ? one.through(opened.pass(), at) : one);
        passes.add(new LockPass(opened.pass(), at, opened.signer().name(), opened.in(), List.of(),
                opened.purgedFor(), opened.cycles(), opened.lockOxygenPpm(), opened.chamberOxygenPpm(),
                Optional.empty(), Optional.empty()));
    }

    private void over(Phase how, List<ArgonUse> used) {
        phase = how;
        overAt = Optional.of(at);
        argonUsed = used;
        gas = new Gas(gas.purge().map(purge -> purge.stoppedAt().isPresent() ? purge : purge.stopped(at)),
                Optional.empty(), List.of(), Optional.empty());
    }

    private void remove(String label) {
        items.removeIf(one -> one.item().label().equals(label));
    }

    private void move(String label, UnaryOperator<Placed> change) {
        items.replaceAll(one -> one.item().label().equals(label) ? change.apply(one) : one);
    }

    private void pass(int number, UnaryOperator<LockPass> change) {
        passes.replaceAll(pass -> pass.number() == number ? change.apply(pass) : pass);
    }

    private ChamberSession closed() {
        return new ChamberSession(before.id(), before.kit(), before.chamber(), before.lockStation(),
                before.openedAt(), phase, needs, items, leftOut, lock, gas, passes, closedAt, overAt, argonUsed);
    }
}
