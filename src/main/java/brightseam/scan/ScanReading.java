package brightseam.scan;

/** What a scan turned out to be. */
public sealed interface ScanReading permits OwnLabel, SupplierLabel, PlainCode, Unreadable {}
