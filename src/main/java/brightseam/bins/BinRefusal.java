package brightseam.bins;

import brightseam.kernel.BinId;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import java.math.BigDecimal;
import java.util.List;

/** The rules that stand against a {@link BinCommand}. */
public sealed interface BinRefusal extends Refusal {

    /** Which bin. */
    BinId bin();

    @Override
    default String code() {
        return switch (this) {
            case BinUnknown ignored -> "bin-unknown";
            case BinAlreadyRegistered ignored -> "bin-already-registered";
            case BinRetired ignored -> "bin-retired";
            case BinClosed ignored -> "bin-closed";
            case BinOpen ignored -> "bin-open";
            case NoLid ignored -> "bin-no-lid";
            case BagUsed ignored -> "bag-used";
            case BagNotCleanable ignored -> "bag-not-cleanable";
            case BinNotCleaned ignored -> "bin-not-cleaned";
            case AlreadyInside ignored -> "bin-already-inside";
            case NotInside ignored -> "bin-not-inside";
            case BinFull ignored -> "bin-full";
            case BinNotEmpty ignored -> "bin-not-empty";
            case BasketOverPieces ignored -> "basket-over-pieces";
            case BasketOverArea ignored -> "basket-over-area";
            case BasketOverMass ignored -> "basket-over-mass";
            case BasketSizeUnknown ignored -> "basket-size-unknown";
        };
    }

    /** No such bin was ever registered. */
    record BinUnknown(BinId bin) implements BinRefusal {}

    /** The label is in use already. */
    record BinAlreadyRegistered(BinId bin, BinClass binClass) implements BinRefusal {}

    /** It left the shop. */
    record BinRetired(BinId bin) implements BinRefusal {}

    /** It is closed: open it first. */
    record BinClosed(BinId bin, BinClass binClass) implements BinRefusal {}

    /** It is open already. */
    record BinOpen(BinId bin) implements BinRefusal {}

    /** Containers of this class cannot be closed. */
    record NoLid(BinId bin, BinClass binClass) implements BinRefusal {}

    /** The bag was opened or soiled before; take a new one. */
    record BagUsed(BinId bin) implements BinRefusal {}

    /** Bags are not cleaned; take a new one. */
    record BagNotCleanable(BinId bin) implements BinRefusal {}

    /** The clean bin has to be cleaned before anything goes in. */
    record BinNotCleaned(BinId bin) implements BinRefusal {}

    /** The traveller is in it already. */
    record AlreadyInside(BinId bin, TravellerId traveller) implements BinRefusal {}

    /** The traveller is not in it. */
    record NotInside(BinId bin, TravellerId traveller) implements BinRefusal {}

    /** As many travellers as it takes are in it. */
    record BinFull(BinId bin, int capacity) implements BinRefusal {}

    /** Something is still in it. */
    record BinNotEmpty(BinId bin, List<TravellerId> inside) implements BinRefusal {
        /** Copies the list. */
        public BinNotEmpty {
            inside = List.copyOf(inside);
        }
    }

    /** With all of {@code lots} there would be {@code pieces} in it, and it takes {@code capacity}. */
    record BasketOverPieces(BinId bin, int capacity, int pieces, List<TravellerId> lots) implements BinRefusal {
        /** Copies the list. */
        public BasketOverPieces {
            lots = List.copyOf(lots);
        }
    }

    /** With all of {@code lots} there would be {@code squareMetres} of surface in it, and it takes {@code capacity}. */
    record BasketOverArea(BinId bin, BigDecimal capacity, BigDecimal squareMetres, List<TravellerId> lots)
            implements BinRefusal {
        /** Copies the list. */
        public BasketOverArea {
            lots = List.copyOf(lots);
        }
    }

    /** With all of {@code lots} there would be {@code kilograms} in it, and it takes {@code capacity}. */
    record BasketOverMass(BinId bin, BigDecimal capacity, BigDecimal kilograms, List<TravellerId> lots)
            implements BinRefusal {
        /** Copies the list. */
        public BasketOverMass {
            lots = List.copyOf(lots);
        }
    }

    /** Its limit of {@code measure} cannot be kept: nothing says that of {@code lots}, which are {@code parts}. */
    record BasketSizeUnknown(BinId bin, Measure measure, List<TravellerId> lots, List<String> parts)
            implements BinRefusal {
        /** Copies the lists. */
        public BasketSizeUnknown {
            lots = List.copyOf(lots);
            parts = List.copyOf(parts);
        }
    }
}
