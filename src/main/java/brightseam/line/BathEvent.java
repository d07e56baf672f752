package brightseam.line;

import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** What happened to one bath. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface BathEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which tank. */
    StationId station();

    /** Its record began, with fill 1. */
    record Registered(Origin origin, StationId station, Liquid liquid, BigDecimal volumeLitres, int basketsAtOnce,
            BathTerms terms, Signer signer) implements BathEvent {}

    /** Other limits and intervals hold. */
    record TermsChanged(Origin origin, StationId station, BathTerms terms, String reason, Signer signer)
            implements BathEvent {}

    /**
     * It was filled anew.
     *
     * @param unproven travellers whose loads no good analysis of the old fill came after
     */
    record MadeUp(Origin origin, StationId station, int fill, String what, List<String> workings,
            List<TravellerId> unproven, Signer signer) implements BathEvent {}

    /** It was analysed; {@code outOfLimits} are the quantities that lay outside their limits then. */
    record Analysed(Origin origin, StationId station, int fill, String sample, String method, Moment takenAt,
            SortedMap<BathQuantity, BigDecimal> values, List<BathQuantity> outOfLimits, List<String> workings,
            Signer signer) implements BathEvent {

        /** Whether everything lay inside its limits. */
        public boolean allInLimits() {
            return outOfLimits.isEmpty();
        }
    }

    /** Something was added. */
    record Added(Origin origin, StationId station, int fill, Addition addition, Signer signer) implements BathEvent {}

    /**
     * A basket went in.
     *
     * @param joins whether the basket was in already
     * @param stayed other baskets that were still in the tank
     * @param despite codes of the rules that stood against it, where pieces out of an acid could not wait
     */
    record TakenIn(Origin origin, StationId station, int fill, BinId basket, List<TravellerId> travellers,
            Optional<BigDecimal> areaSquareMetres, boolean joins, List<BinId> stayed, List<String> despite)
            implements BathEvent {}

    /** Its use was stopped; a lock that an analysis set has neither reason nor signature of its own. */
    record Locked(Origin origin, StationId station, BathLock.Cause cause, Optional<String> reason,
            Optional<Signer> signer) implements BathEvent {}

    /** A lock was lifted; by the analysis itself where nobody signed. */
    record Unlocked(Origin origin, StationId station, BathLock.Cause cause, Optional<String> reason,
            Optional<Signer> signer) implements BathEvent {}

    /** These travellers went in since the last good analysis and are suspect now; none of them may be. */
    record SuspectsNamed(Origin origin, StationId station, BathLock.Cause cause, List<TravellerId> travellers)
            implements BathEvent {}
}
