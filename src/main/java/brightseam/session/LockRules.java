package brightseam.session;

import brightseam.kernel.Moment;
import brightseam.kernel.Rules;
import brightseam.kernel.SupplyId;
import brightseam.session.Lock.Doors;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What has to hold of the doors of a transfer lock. */
final class LockRules {

    private final ChamberSession session;
    private final Lock lock;

    LockRules(ChamberSession session) {
        this.session = session;
        this.lock = session.lock();
    }

    /** The lock can be used at all: there is one, and the chamber is shut. */
    Rules usable() {
        return Rules.check()
                .refuseIf(session.phase().isOver(),
                        () -> new SessionRefusal.SessionOver(session.id(), session.phase()))
                .refuseIf(session.phase() == Phase.CHECK_IN,
                        () -> new SessionRefusal.ChamberStillOpen(session.id()))
                .refuseIf(session.lockStation().isEmpty(), () -> new SessionRefusal.NoLock(session.chamber()));
    }

    /** The outer door may open. */
    Rules mayOpenOuter() {
        return usable()
                .refuseIf(lock.doors() == Doors.INNER_OPEN, () -> new SessionRefusal.InnerDoorOpen(lock.since()))
                .refuseIf(lock.doors() == Doors.OUTER_OPEN, () -> new SessionRefusal.OuterDoorOpen(lock.since()));
    }

    /** The outer door stands open. */
    Rules outerOpen() {
        return usable().refuseIf(lock.doors() != Doors.OUTER_OPEN,
                () -> new SessionRefusal.OuterDoorShut(session.id()));
    }

    /** The inner door stands open. */
    Rules innerOpen() {
        return usable().refuseIf(lock.doors() != Doors.INNER_OPEN,
                () -> new SessionRefusal.InnerDoorShut(session.id()));
    }

    /** Both doors are shut. */
    Rules shut() {
        return usable()
                .refuseIf(lock.doors() == Doors.INNER_OPEN, () -> new SessionRefusal.InnerDoorOpen(lock.since()))
                .refuseIf(lock.doors() == Doors.OUTER_OPEN, () -> new SessionRefusal.OuterDoorOpen(lock.since()));
    }

    /** The inner door may open at {@code now}. */
    Rules mayOpenInner(Optional<MeterFact> lockOxygen, Moment now) {
        Rules rules = shut();
        return lock.hasDoorOpen() ? rules : rules.refuseAll(notClean(lockOxygen, now));
    }

    private List<SessionRefusal> notClean(Optional<MeterFact> lockOxygen, Moment now) {
        if (lock.need().isEmpty() || lock.doors() == Doors.BOTH_SHUT && !lock.clean()) {
            return List.of(new SessionRefusal.LockHoldsAir(session.id()));
        }
        LockNeed need = lock.need().get();
        if (need.meter().isPresent() || lockOxygen.isPresent()) {
            return byMeter(need, lockOxygen);
        }
        return lock.doors() == Doors.BOTH_SHUT ? List.of() : byArithmetic(need, now);
    }

    /** Where the lock has a meter, nothing but a reading since it was shut tells that it is clean. */
    private List<SessionRefusal> byMeter(LockNeed need, Optional<MeterFact> read) {
        SupplyId meter = read.map(MeterFact::meter).or(need::meter).orElseThrow();
        if (read.filter(MeterFact::canBeUsed).isEmpty()) {
            return List.of(new SessionRefusal.MeterNotUsable(
                    meter, read.map(MeterFact::troubles).filter(all -> !all.isEmpty()).orElse(MeterFact.UNHEARD)));
        }
        List<SessionRefusal> all = new ArrayList<>();
        if (read.flatMap(MeterFact::at).filter(at -> !at.isBefore(lock.since())).isEmpty()) {
            all.add(new SessionRefusal.LockNotReadYet(meter, lock.since()));
        }
        BigDecimal ppm = read.flatMap(MeterFact::value).orElseThrow();
        if (ppm.compareTo(need.oxygenPpmMax()) > 0) {
            all.add(new SessionRefusal.LockOxygenAboveLimit(meter, ppm, need.oxygenPpmMax()));
        }
        return all;
    }

    private List<SessionRefusal> byArithmetic(LockNeed need, Moment now) {
        Duration purged = lock.purgedFor(now);
        return switch (need.method()) {
            case SWEEP -> purged.compareTo(need.sweep()) >= 0 ? List.of()
                    : List.of(new SessionRefusal.LockPurgeRunning(
                            purged, need.sweep(), lock.since().plus(need.sweep())));
            case VACUUM_CYCLES -> lock.cyclesDone() >= need.cycles() ? List.of()
                    : List.of(new SessionRefusal.LockCyclesLeft(lock.cyclesDone(), need.cycles()));
        };
    }
}
