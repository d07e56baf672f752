package brightseam.scan;

/** What a field of a supplier's label says. */
public enum Meaning {
    /** The part number that the customer uses, or one agreed on. */
    PART_NUMBER,
    /** The part number that the supplier uses. */
    SUPPLIER_PART_NUMBER,
    /** The revision of the part. */
    REVISION,
    /** The lot, batch or heat. */
    LOT,
    /** The serial number. */
    SERIAL,
    /** How many pieces. */
    QUANTITY,
    /** Who supplied it. */
    SUPPLIER,
    /** The customer's order. */
    ORDER,
    /** The country of origin. */
    ORIGIN,
    /** The number of the trade item (GTIN). */
    TRADE_ITEM,
    /** The number of the package or logistic unit. */
    PACKAGE,
    /** The net weight, in kilograms. */
    NET_WEIGHT_KILOGRAMS,
    /** A length, in metres. */
    LENGTH_METRES,
    /** When it was made. */
    PRODUCTION_DATE,
    /** When it was packed. */
    PACKAGING_DATE,
    /** The day after which it is not to be used. */
    EXPIRY_DATE,
    /** The day until which it keeps its quality. */
    BEST_BEFORE_DATE,
    /** A date whose sense or form the label does not say. */
    OTHER_DATE,
    /** Anything else. */
    OTHER
}
