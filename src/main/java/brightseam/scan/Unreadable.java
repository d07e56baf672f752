package brightseam.scan;

/** A scan that nothing is made of. */
public record Unreadable(UnreadableReason reason) implements ScanReading {}
