package brightseam.bins;

import brightseam.kernel.BinId;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
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
}
