package brightseam.session;

import brightseam.kernel.BadgeId;
import brightseam.kernel.BinId;
import brightseam.kernel.KitId;
import brightseam.kernel.Moment;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.StepId;
import brightseam.kernel.SupplyId;
import brightseam.people.Role;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;

/**
 * The rules that stand against a {@link SessionCommand}, and why a chamber is not fit to weld. Oxygen and moisture in
 * ppm by volume, argon in standard litres at 15 degrees Celsius and 1 atm.
 */
public sealed interface SessionRefusal extends Refusal {

    /** No weld step of this session lacks its signature alone. */
    record NoWeldToSign(SessionId session) implements SessionRefusal {
        @Override public String code() { return "no-weld-to-sign"; }
    }

    /** No such session was ever opened. */
    record SessionUnknown(SessionId session) implements SessionRefusal {
        @Override public String code() { return "session-unknown"; }
    }

    /** The name is in use already. */
    record SessionAlreadyOpened(SessionId session) implements SessionRefusal {
        @Override public String code() { return "session-already-opened"; }
    }

    /** Another session is open in the chamber. */
    record ChamberBusy(StationId chamber, SessionId session) implements SessionRefusal {
        @Override public String code() { return "chamber-busy"; }
    }

    /** Another session is open for the kit. */
    record KitBusy(KitId kit, SessionId session) implements SessionRefusal {
        @Override public String code() { return "kit-in-another-session"; }
    }

    /** The kit is unknown, or closed. */
    record SessionKitNotOpen(KitId kit) implements SessionRefusal {
        @Override public String code() { return "session-kit-not-open"; }
    }

    /** Whoever signs holds none of {@code roles}. */
    record SessionRoleMissing(BadgeId badge, List<Role> roles) implements SessionRefusal {
        @Override public String code() { return "session-role-missing"; }
    }

    /** The session is over. */
    record SessionOver(SessionId session, Phase phase) implements SessionRefusal {
        @Override public String code() { return "session-over"; }
    }

    /** The chamber is shut: things go in through the lock. */
    record ChamberShut(SessionId session, Phase phase) implements SessionRefusal {
        @Override public String code() { return "chamber-shut"; }
    }

    /** The chamber is open: it has to be shut first. */
    record ChamberStillOpen(SessionId session) implements SessionRefusal {
        @Override public String code() { return "chamber-still-open"; }
    }

    /** The label belongs to nothing that could go into a chamber. */
    record LabelOfNothing(String label) implements SessionRefusal {
        @Override public String code() { return "session-label-of-nothing"; }
    }

    /** The bin that was scanned holds nothing. */
    record BinHoldsNothing(BinId bin) implements SessionRefusal {
        @Override public String code() { return "session-bin-holds-nothing"; }
    }

    /** Its traveller belongs to another kit. */
    record ItemOfAnotherKit(String label, KitId itsKit, KitId kit) implements SessionRefusal {
        @Override public String code() { return "item-of-another-kit"; }
    }

    /** The filler is none of the lots that the kit names. */
    record FillerNotOfKit(String label, KitId kit, List<String> lots) implements SessionRefusal {
        @Override public String code() { return "filler-not-of-kit"; }
    }

    /** The filler's grade matches none of the kit's parts. */
    record FillerOfWrongGrade(String label, String grade, List<String> grades) implements SessionRefusal {
        @Override public String code() { return "filler-of-wrong-grade"; }
    }

    /** An earlier step of its traveller is not signed. */
    record ItemStepNotSigned(String label, StepId step) implements SessionRefusal {
        @Override public String code() { return "item-step-not-signed"; }
    }

    /** An earlier inspection point of its traveller is not stamped. */
    record ItemNotStamped(String label, StepId step) implements SessionRefusal {
        @Override public String code() { return "item-not-stamped"; }
    }

    /** Nonconformances of its traveller are open. */
    record ItemInQuarantine(String label, List<Integer> open) implements SessionRefusal {
        @Override public String code() { return "item-in-quarantine"; }
    }

    /** No clean window is open. */
    record ItemNotClean(String label) implements SessionRefusal {
        @Override public String code() { return "item-not-clean"; }
    }

    /** Its clean window is too short for the purge and the work, or for its procedure's margin. */
    record ItemWindowTooShort(String label, Duration left, Duration needed) implements SessionRefusal {
        @Override public String code() { return "item-window-too-short"; }
    }

    /** It lies in no bin, or in one that is not of a clean class. */
    record ItemNotInCleanBin(String label) implements SessionRefusal {
        @Override public String code() { return "item-not-in-clean-bin"; }
    }

    /** Its bin stands open. */
    record ItemBinOpen(String label, BinId bin) implements SessionRefusal {
        @Override public String code() { return "item-bin-open"; }
    }

    /** Its traveller is past the lock, closed or scrapped. */
    record ItemPastLock(String label, String phase) implements SessionRefusal {
        @Override public String code() { return "item-past-lock"; }
    }

    /** It is on no line of the list and the chamber does not let it in without one. */
    record ItemNotOnList(String label, String type, KitId kit) implements SessionRefusal {
        @Override public String code() { return "item-not-on-list"; }
    }

    /** It is checked in already. */
    record ItemCheckedInAlready(String label, Moment since) implements SessionRefusal {
        @Override public String code() { return "item-checked-in-already"; }
    }

    /** It is checked in for another session that is open. */
    record ItemInAnotherSession(String label, SessionId session) implements SessionRefusal {
        @Override public String code() { return "item-in-another-session"; }
    }

    /** It is not checked in. */
    record ItemNotCheckedIn(String label) implements SessionRefusal {
        @Override public String code() { return "item-not-checked-in"; }
    }

    /** The list has no such line. */
    record NotOnTheList(String key, KitId kit) implements SessionRefusal {
        @Override public String code() { return "not-on-the-list"; }
    }

    /** Nothing of that line is missing. */
    record NothingMissing(String title) implements SessionRefusal {
        @Override public String code() { return "nothing-missing"; }
    }

    /** A line of the list is not met and nobody let it stay out. */
    record NeedNotMet(String title, String key, int missing) implements SessionRefusal {
        @Override public String code() { return "need-not-met"; }
    }

    /** Nothing is in the chamber. */
    record NothingInside(SessionId session) implements SessionRefusal {
        @Override public String code() { return "chamber-empty"; }
    }

    /** The cautions were not read. */
    record SessionCautionsNotRead(SessionId session) implements SessionRefusal {
        @Override public String code() { return "session-cautions-not-read"; }
    }

    /** No oxygen meter is registered for the chamber. */
    record NoOxygenMeter(StationId chamber) implements SessionRefusal {
        @Override public String code() { return "no-oxygen-meter"; }
    }

    /** No moisture meter is registered for the chamber, and a limit for moisture is set. */
    record NoMoistureMeter(StationId chamber) implements SessionRefusal {
        @Override public String code() { return "no-moisture-meter"; }
    }

    /** A meter cannot be relied on. */
    record MeterNotUsable(SupplyId meter, List<String> troubles) implements SessionRefusal {
        @Override public String code() { return "meter-not-usable"; }
    }

    /** A purge runs already. */
    record PurgeRunning(SessionId session, Moment since) implements SessionRefusal {
        @Override public String code() { return "purge-running"; }
    }

    /** No purge runs. */
    record NoPurgeRunning(SessionId session) implements SessionRefusal {
        @Override public String code() { return "no-purge-running"; }
    }

    /** No argon is connected. */
    record NoArgonConnected(StationId chamber) implements SessionRefusal {
        @Override public String code() { return "session-without-argon"; }
    }

    /** The argon does not last to the end. */
    record ArgonTooLittle(SupplyId supply, BigDecimal leftStandardLitres, BigDecimal neededStandardLitres)
            implements SessionRefusal {
        @Override public String code() { return "session-argon-too-little"; }
    }

    /** The argon itself has too much oxygen for the limit. */
    record ArgonTooImpure(SupplyId supply, BigDecimal oxygenPpm, BigDecimal oxygenPpmMax) implements SessionRefusal {
        @Override public String code() { return "session-argon-too-impure"; }
    }

    /** The argon itself is too wet for the limit. */
    record ArgonTooWet(SupplyId supply, BigDecimal moisturePpm, BigDecimal moisturePpmMax)
            implements SessionRefusal {
        @Override public String code() { return "session-argon-too-wet"; }
    }

    /** Oxygen is above its limit. */
    record OxygenAboveLimit(SupplyId meter, BigDecimal oxygenPpm, BigDecimal oxygenPpmMax)
            implements SessionRefusal {
        @Override public String code() { return "oxygen-above-limit"; }
    }

    /** Moisture is above its limit. */
    record MoistureAboveLimit(SupplyId meter, BigDecimal moisturePpm, BigDecimal moisturePpmMax)
            implements SessionRefusal {
        @Override public String code() { return "moisture-above-limit"; }
    }

    /** The readings lie inside, but not for long enough. */
    record DwellRunning(Moment since, Moment until) implements SessionRefusal {
        @Override public String code() { return "dwell-running"; }
    }

    /** Nothing is known of the gas: no purge was begun. */
    record NotPurged(SessionId session) implements SessionRefusal {
        @Override public String code() { return "chamber-not-purged"; }
    }

    /** The chamber has no lock. */
    record NoLock(StationId chamber) implements SessionRefusal {
        @Override public String code() { return "chamber-without-lock"; }
    }

    /** The inner door is open, so the outer one stays shut. */
    record InnerDoorOpen(Moment since) implements SessionRefusal {
        @Override public String code() { return "inner-door-open"; }
    }

    /** The outer door is open, so the inner one stays shut. */
    record OuterDoorOpen(Moment since) implements SessionRefusal {
        @Override public String code() { return "outer-door-open"; }
    }

    /** The outer door is shut. */
    record OuterDoorShut(SessionId session) implements SessionRefusal {
        @Override public String code() { return "outer-door-shut"; }
    }

    /** The inner door is shut. */
    record InnerDoorShut(SessionId session) implements SessionRefusal {
        @Override public String code() { return "inner-door-shut"; }
    }

    /** Both doors are shut. */
    record LockShut(SessionId session) implements SessionRefusal {
        @Override public String code() { return "lock-shut"; }
    }

    /** The lock is not being purged. */
    record LockNotPurging(SessionId session) implements SessionRefusal {
        @Override public String code() { return "lock-not-purging"; }
    }

    /** The lock is purged by flowing argon, not by cycles. */
    record LockNotCycled(SessionId session) implements SessionRefusal {
        @Override public String code() { return "lock-not-cycled"; }
    }

    /** Air is in the lock and no purge of it has begun. */
    record LockHoldsAir(SessionId session) implements SessionRefusal {
        @Override public String code() { return "lock-holds-air"; }
    }

    /** By its gas and volume the lock never comes below what its inner door may open at. */
    record LockNeverClean(StationId chamber) implements SessionRefusal {
        @Override public String code() { return "lock-never-clean"; }
    }

    /** The lock's purge has not lasted long enough. */
    record LockPurgeRunning(Duration purgedFor, Duration needed, Moment until) implements SessionRefusal {
        @Override public String code() { return "lock-purge-running"; }
    }

    /** The lock has not had enough cycles. */
    record LockCyclesLeft(int done, int needed) implements SessionRefusal {
        @Override public String code() { return "lock-cycles-left"; }
    }

    /** The lock's meter reads more than the inner door may open at. */
    record LockOxygenAboveLimit(SupplyId meter, BigDecimal oxygenPpm, BigDecimal oxygenPpmMax)
            implements SessionRefusal {
        @Override public String code() { return "lock-oxygen-above-limit"; }
    }

    /** The lock's meter has not been read since the lock was shut. */
    record LockNotReadYet(SupplyId meter, Moment shutAt) implements SessionRefusal {
        @Override public String code() { return "lock-not-read-yet"; }
    }

    /** It is not in the lock. */
    record NotInLock(String label) implements SessionRefusal {
        @Override public String code() { return "not-in-lock"; }
    }

    /** It is not in the chamber. */
    record NotInside(String label) implements SessionRefusal {
        @Override public String code() { return "not-inside"; }
    }

    /** What comes from the chamber still lies in the lock. */
    record OutboundInLock(List<String> labels) implements SessionRefusal {
        @Override public String code() { return "outbound-in-lock"; }
    }

    /** Things lie in the lock. */
    record ItemsInLock(List<String> labels) implements SessionRefusal {
        @Override public String code() { return "items-in-lock"; }
    }

    /** No such opening, or its door is open still. */
    record PassNotOver(int pass) implements SessionRefusal {
        @Override public String code() { return "lock-pass-not-over"; }
    }

    /** The room's oxygen is below what the rule calls hazardous. */
    record RoomOxygenLow(SupplyId meter, BigDecimal oxygenPercent, BigDecimal oxygenPercentMin)
            implements SessionRefusal {
        @Override public String code() { return "room-oxygen-low"; }
    }

    /** The room's oxygen monitor cannot be relied on. */
    record RoomMonitorNotUsable(SupplyId meter, List<String> troubles) implements SessionRefusal {
        @Override public String code() { return "room-monitor-not-usable"; }
    }
}
