package brightseam.line;

import brightseam.kernel.BinId;
import brightseam.kernel.Moment;
import brightseam.kernel.Origin;
import brightseam.kernel.StationId;
import brightseam.kernel.Syntax;
import brightseam.kernel.TravellerId;
import brightseam.people.Signer;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;

/** What can be asked of the bath of one tank. Reasons are stripped and have at most 200 characters. */
public sealed interface BathCommand {

    /** Which tank. */
    StationId station();

    /** When, by whom and where. */
    Origin origin();

    /** Begins the record of a tank with its first fill; see {@link Bath} for the parts. */
    record RegisterBath(StationId station, Liquid liquid, BigDecimal volumeLitres, int basketsAtOnce, BathTerms terms,
            Origin origin, Signer signer) implements BathCommand {
        /** Refuses a tank without volume or room. */
        public RegisterBath {
            if (volumeLitres.signum() <= 0 || basketsAtOnce < 1) {
                throw new IllegalArgumentException("volume and baskets at once: above zero");
            }
        }
    }

    /** Puts other limits and intervals in the place of those that held. */
    record ChangeTerms(StationId station, BathTerms terms, String reason, Origin origin, Signer signer)
            implements BathCommand {
        /** Checks the reason. */
        public ChangeTerms {
            reason = Syntax.text("reason", reason, 200);
        }
    }

    /** Says that the tank was emptied and filled anew; {@code what} is what went in. */
    record MakeUp(StationId station, String what, List<String> workings, Origin origin, Signer signer)
            implements BathCommand {
        /** Checks the texts. */
        public MakeUp {
            what = Syntax.text("what went in", what, 200);
            workings = Workings.checked(workings);
        }
    }

    /**
     * Enters an analysis.
     *
     * @param sample the sample's number
     * @param method how it was analysed, at most 80 characters
     * @param takenAt when the sample was taken
     * @param values what was found, without the acid ratio
     * @param workings burette readings and how the values follow from them; empty where they were read off
     */
    record EnterAnalysis(StationId station, String sample, String method, Moment takenAt,
            SortedMap<BathQuantity, BigDecimal> values, List<String> workings, Origin origin, Signer signer)
            implements BathCommand {
        /** Refuses values that cannot be and a ratio that was not made from the acids. */
        public EnterAnalysis {
            sample = Syntax.text("sample number", sample, 24);
            method = Syntax.text("method", method, 80);
            workings = Workings.checked(workings);
            values.forEach((quantity, value) -> {
                if (!quantity.isEntered() || !quantity.canBe(value)) {
                    throw new IllegalArgumentException(quantity.name().toLowerCase(java.util.Locale.ROOT)
                            .replace('_', ' ') + ": cannot be " + value.toPlainString());
                }
            });
        }
    }

    /** Writes down what was added to the bath. */
    record RecordAddition(StationId station, Addition addition, Origin origin, Signer signer)
            implements BathCommand {}

    /**
     * Takes a basket in.
     *
     * @param travellers what hangs in it
     * @param areaSquareMetres its wetted area, where known
     * @param stillInside baskets whose pieces are still in the tank, by the travellers' own records
     * @param cannotWait whether the pieces come out of a bath that eats metal: then nothing is refused, but noted
     */
    record TakeIn(StationId station, BinId basket, SortedSet<TravellerId> travellers,
            Optional<BigDecimal> areaSquareMetres, Set<BinId> stillInside, boolean cannotWait, Origin origin)
            implements BathCommand {}

    /** Stops the use of the bath. */
    record LockBath(StationId station, String reason, Origin origin, Signer signer) implements BathCommand {
        /** Checks the reason. */
        public LockBath {
            reason = Syntax.text("reason", reason, 200);
        }
    }

    /** Lifts a lock. */
    record UnlockBath(StationId station, BathLock.Cause cause, String reason, Origin origin, Signer signer)
            implements BathCommand {
        /** Checks the reason. */
        public UnlockBath {
            reason = Syntax.text("reason", reason, 200);
        }
    }

    /** Says that the bath was bad: every load since its last good analysis is suspect. */
    record FindBad(StationId station, String reason, Origin origin, Signer signer) implements BathCommand {
        /** Checks the reason. */
        public FindBad {
            reason = Syntax.text("reason", reason, 200);
        }
    }
}
