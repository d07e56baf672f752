package brightseam.chamber;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Refusal;
import brightseam.kernel.SessionId;
import brightseam.kernel.StationId;
import brightseam.kernel.SupplyId;
import brightseam.people.Role;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;

/** The rules that stand against a {@link ChamberCommand}, against what would go into a chamber, and against a purge. */
public sealed interface ChamberRefusal extends Refusal {

    @Override
    default String code() {
        return switch (this) {
            case ChamberUnknown ignored -> "chamber-unknown";
            case ChamberAlreadyRegistered ignored -> "chamber-already-registered";
            case ChamberRoleMissing ignored -> "chamber-role-missing";
            case LockIsChamber ignored -> "lock-is-chamber";
            case MaterialUnknown ignored -> "material-unknown";
            case MaterialNeverPermitted ignored -> "material-never-permitted";
            case MaterialNotStated ignored -> "material-not-stated";
            case MaterialNotPermitted ignored -> "material-not-permitted";
            case NothingToChange ignored -> "nothing-to-change-over";
            case SourceNotConnected ignored -> "argon-not-connected-here";
            case SourceAlreadyConnected ignored -> "argon-already-connected";
            case ManifoldFull ignored -> "manifold-full";
            case NoArgonConnected ignored -> "no-argon-connected";
            case ArgonTooLittle ignored -> "argon-too-little";
            case LimitOutOfReach ignored -> "limit-out-of-reach";
            case ArgonUseNotedAlready ignored -> "argon-use-noted-already";
        };
    }

    /** The station has no chamber registered. */
    record ChamberUnknown(StationId station) implements ChamberRefusal {}

    /** The station has a chamber already. */
    record ChamberAlreadyRegistered(StationId station) implements ChamberRefusal {}

    /** Whoever signs holds none of {@code roles}. */
    record ChamberRoleMissing(BadgeId badge, List<Role> roles) implements ChamberRefusal {}

    /** The lock would be the chamber itself. */
    record LockIsChamber(StationId station) implements ChamberRefusal {}

    /** The table of materials lacks it. */
    record MaterialUnknown(String material) implements ChamberRefusal {}

    /** It reacts with titanium or gives off much gas; no chamber's list may have it. */
    record MaterialNeverPermitted(String material, String because) implements ChamberRefusal {}

    /** Nobody says what it is made of. */
    record MaterialNotStated(SupplyId supply, String title) implements ChamberRefusal {}

    /** Its material is not on the chamber's list. */
    record MaterialNotPermitted(SupplyId supply, String title, String material, StationId station, String because)
            implements ChamberRefusal {}

    /** Neither a source to take off nor one to put on was named. */
    record NothingToChange(StationId station) implements ChamberRefusal {}

    /** What would come off does not feed this chamber. */
    record SourceNotConnected(SupplyId supply, StationId station) implements ChamberRefusal {}

    /** What would go on feeds this chamber already. */
    record SourceAlreadyConnected(SupplyId supply, StationId station) implements ChamberRefusal {}

    /** As many sources feed it as its manifold has places. */
    record ManifoldFull(StationId station, List<SupplyId> connected, int places) implements ChamberRefusal {}

    /** Nothing feeds the chamber. */
    record NoArgonConnected(StationId station) implements ChamberRefusal {}

    /**
     * A purge could not be finished: what is connected does not cover the purge, or all that is there not the session.
     *
     * @param neededStandardLitres for purge, time held fit and lock passes
     * @param purgeStandardLitres for the purge alone
     * @param connectedStandardLitres what can be drawn of the connected sources
     * @param standbyStandardLitres what can be drawn of those that stand by
     * @param missingStandardLitres what has to be connected or bought besides
     * @param lasts how long the connected ones last at the purge flow
     */
    record ArgonTooLittle(StationId station, BigDecimal neededStandardLitres, BigDecimal purgeStandardLitres,
            BigDecimal connectedStandardLitres, BigDecimal standbyStandardLitres, BigDecimal missingStandardLitres,
            Duration lasts) implements ChamberRefusal {}

    /** However long it is purged, it settles above its limit. */
    record LimitOutOfReach(StationId station, ArgonNeed.What what, BigDecimal limitPpm, BigDecimal settlesAtPpm)
            implements ChamberRefusal {}

    /** The session's argon was counted before. */
    record ArgonUseNotedAlready(SessionId session) implements ChamberRefusal {}
}
