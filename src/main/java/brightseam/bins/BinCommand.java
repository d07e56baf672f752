package brightseam.bins;

import brightseam.kernel.BinId;
import brightseam.kernel.Origin;
import brightseam.kernel.Syntax;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import java.util.Map;
import java.util.Optional;

/** What can be asked of one bin. */
public sealed interface BinCommand {

    /** Which bin. */
    BinId bin();

    /** When, by whom and where. */
    Origin origin();

    /**
     * Brings a bin into use. A clean bin has to be declared cleaned before its first use.
     *
     * @param capacity the most travellers that may be inside at once; empty for no limit
     */
    record RegisterBin(BinId bin, BinClass binClass, Optional<Integer> capacity, Origin origin)
            implements BinCommand {
        /** Refuses a capacity below 1. */
        public RegisterBin {
            if (capacity.filter(count -> count < 1).isPresent()) {
                throw new IllegalArgumentException("capacity below 1");
            }
        }
    }

    /** Says how much the bin takes; it holds from the next lot on. */
    record SetCapacity(BinId bin, Capacity capacity, Origin origin) implements BinCommand {}

    /**
     * Puts all pieces of a traveller in.
     *
     * @param partsClean whether the traveller's clean window is open; if not, a clean bin is soiled by it
     * @param sizes of the traveller and of every one inside; needed where {@link Capacity#asksForSizes}
     */
    record PutIn(
            BinId bin, TravellerId traveller, boolean partsClean, Map<TravellerId, LotSize> sizes, Origin origin)
            implements BinCommand {
        /** Copies the map. */
        public PutIn {
            sizes = Map.copyOf(sizes);
        }

        /** Into a bin whose capacity asks for no sizes. */
        public PutIn(BinId bin, TravellerId traveller, boolean partsClean, Origin origin) {
            this(bin, traveller, partsClean, Map.of(), origin);
        }
    }

    /**
     * Gives pieces of {@code from} that are inside a traveller of their own: nothing is moved, no room is taken.
     *
     * @param partsClean as in {@link PutIn}
     */
    record SetApartInside(BinId bin, TravellerId from, TravellerId traveller, boolean partsClean, Origin origin)
            implements BinCommand {}

    /** Takes all pieces of a traveller out. */
    record TakeOut(BinId bin, TravellerId traveller, Origin origin) implements BinCommand {}

    /** Puts the lid on, or heat-seals the bag. */
    record CloseBin(BinId bin, Origin origin) implements BinCommand {}

    /**
     * Takes the lid off, or cuts the bag open.
     *
     * @param cleanPlace whether that is done in the clean area; if not, the bin is soiled by it
     */
    record OpenBin(BinId bin, boolean cleanPlace, Origin origin) implements BinCommand {}

    /** Says that the bin can no longer be trusted to be clean, and why in at most 200 characters. */
    record ReportSoiled(BinId bin, String note, Origin origin) implements BinCommand {
        /** Strips the note; refuses an empty or overlong one. */
        public ReportSoiled {
            note = Syntax.text("note", note, 200);
        }
    }

    /** Says that the empty, open bin has been cleaned. */
    record DeclareCleaned(BinId bin, Origin origin) implements BinCommand {}

    /** Takes an empty bin out of the shop for good. */
    record RetireBin(BinId bin, Origin origin) implements BinCommand {}
}
