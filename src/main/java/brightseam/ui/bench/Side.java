package brightseam.ui.bench;

import brightseam.kernel.TravellerId;
import brightseam.procedure.ReadingSpec;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.SortedSet;

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

    /** Why do they come out before the minimum? */
    record CuttingShort() implements Side {}

    /** Open the closed bin? */
    record OpeningBin() implements Side {}

    /** A value outside its limits is not written down yet. */
    record Doubting(ReadingSpec reading, BigDecimal value) implements Side {}
}
