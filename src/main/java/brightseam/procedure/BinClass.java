package brightseam.procedure;

/** What sort of container a bin is; its class says which parts may be in it. */
public enum BinClass {
    /** A tray or box on the shop floor, before cleaning. */
    SHOP_BIN(false),
    /** A basket that goes through the tanks. */
    PROCESS_BASKET(false),
    /** A lidded bin that only cleaned parts go into. */
    CLEAN_BIN(true),
    /** A heat-sealed bag for cleaned parts. */
    SEALED_BAG(true);

    private final boolean clean;

    BinClass(boolean clean) {
        this.clean = clean;
    }

    /** Whether parts whose clean window is open may be kept in it. */
    public boolean isClean() {
        return clean;
    }
}
