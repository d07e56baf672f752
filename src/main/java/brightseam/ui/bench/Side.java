package brightseam.ui.bench;

import brightseam.kernel.BinId;
import brightseam.kernel.StationId;
import brightseam.kernel.TravellerId;
import brightseam.procedure.ReadingSpec;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** What stands in front of the card's one thing to do while somebody says something else. */
sealed interface Side {

    /** What touched it? */
    record Touching() implements Side {}

    /** What did the gloves touch? */
    record GlovesTouched() implements Side {}

    /**
     * What is wrong with which pieces?
     *
     * @param traveller which lot, once that is said
     * @param pieces which pieces, none while that is not said
     * @param typing whether the words are typed instead of chosen
     */
    record Reporting(Optional<TravellerId> traveller, SortedSet<Integer> pieces, boolean typing) implements Side {}

    /** Which reading, what is right, why, and the PIN; each once it is said. */
    record Correcting(Optional<ReadingSpec> reading, Optional<BigDecimal> value, Optional<String> reason,
            boolean typing) implements Side {}

    /**
     * At which station, on which day, at what time, and why was it entered late; each once it is said.
     *
     * @param daysAgo 0 for today
     * @param typing whether the words are typed instead of chosen
     */
    record EnteringLate(Optional<StationId> station, Optional<Integer> daysAgo, Optional<LocalTime> time,
            Optional<String> reason, boolean typing) implements Side {

        static final EnteringLate NOTHING_SAID = new EnteringLate(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), false);

        EnteringLate at(StationId where) {
            return new EnteringLate(Optional.of(where), daysAgo, time, reason, typing);
        }

        EnteringLate on(int days) {
            return new EnteringLate(station, Optional.of(days), time, reason, typing);
        }

        EnteringLate at(LocalTime clock) {
            return new EnteringLate(station, daysAgo, Optional.of(clock), reason, typing);
        }

        EnteringLate because(String why) {
            return new EnteringLate(station, daysAgo, time, Optional.of(why), false);
        }

        EnteringLate inOwnWords() {
            return new EnteringLate(station, daysAgo, time, reason, true);
        }

        /** What was stated, on the calendar of {@code zone}; only once day and time are said. */
        Instant doneAt(LocalDate today, ZoneId zone) {
            return today.minusDays(daysAgo.orElseThrow()).atTime(time.orElseThrow()).atZone(zone).toInstant();
        }
    }

    /** Why do they come out before the minimum? */
    record CuttingShort() implements Side {}

    /**
     * Which pieces come out of the load, why, and into which bin; each once it is said.
     *
     * @param pieces which pieces; {@code chosen} once that is all of them
     * @param typing whether the words are typed instead of chosen
     */
    record TakingOut(Optional<TravellerId> traveller, SortedSet<Integer> pieces, boolean chosen,
            Optional<String> reason, boolean typing, Optional<BinId> bin) implements Side {

        static final TakingOut NOTHING_SAID = new TakingOut(
                Optional.empty(), Collections.emptySortedSet(), false, Optional.empty(), false, Optional.empty());

        TakingOut of(TravellerId lot) {
            return new TakingOut(Optional.of(lot), pieces, chosen, reason, typing, bin);
        }

        /** With {@code piece} chosen, or not chosen any more. */
        TakingOut touched(int piece) {
            SortedSet<Integer> next = new TreeSet<>(pieces);
            if (!next.remove(piece)) {
                next.add(piece);
            }
            return new TakingOut(traveller, next, chosen, reason, typing, bin);
        }

        TakingOut all(Collection<Integer> lot) {
            return new TakingOut(traveller, new TreeSet<>(lot), true, reason, typing, bin);
        }

        TakingOut because(String why) {
            return new TakingOut(traveller, pieces, chosen, Optional.of(why), false, bin);
        }

        TakingOut inOwnWords() {
            return new TakingOut(traveller, pieces, chosen, reason, true, bin);
        }

        TakingOut into(Optional<BinId> next) {
            return new TakingOut(traveller, pieces, chosen, reason, typing, next);
        }

        /** Whether a bin's label is what is asked for. */
        boolean asksForBin() {
            return reason.isPresent() && bin.isEmpty();
        }
    }

    /** Which traveller goes into another basket? Once that is said, or where there is only one, its label is due. */
    record Moving(Optional<TravellerId> traveller) implements Side {}

    /** Open the closed bin? */
    record OpeningBin() implements Side {}

    /** A value outside its limits is not written down yet. */
    record Doubting(ReadingSpec reading, BigDecimal value) implements Side {}
}
