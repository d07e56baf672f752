package brightseam.traveller;

import brightseam.kernel.BinId;
import brightseam.procedure.BinClass;

/** The bin that the pieces are in. */
public record Placement(BinId bin, BinClass binClass, boolean closed) {

    /** How the pieces are kept there. */
    public Handling handling() {
        if (!closed) {
            return Handling.OPEN;
        }
        return switch (binClass) {
            case SHOP_BIN, PROCESS_BASKET -> Handling.OPEN;
            case CLEAN_BIN -> Handling.CLOSED_CLEAN_BIN;
            case SEALED_BAG -> Handling.SEALED_BAG;
        };
    }

    Placement withClosed(boolean nowClosed) {
        return new Placement(bin, binClass, nowClosed);
    }
}
