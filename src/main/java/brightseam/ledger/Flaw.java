package brightseam.ledger;

/** What does not fit in a list of entries; each names the entry's position and carries the evidence. */
public sealed interface Flaw {

    /** The position that the entry states. */
    long position();

    /** The entry is not where the one before it says that it should be. */
    record PositionBroken(long position, long expected) implements Flaw {}

    /** The entry belongs to another stream than the one that is verified. */
    record StreamBroken(long position, StreamName expected, StreamName found) implements Flaw {}

    /** A version is missing, repeated or out of order. */
    record VersionBroken(long position, StreamName stream, long expected, long found) implements Flaw {}

    /** The type name has a form that no entry is ever stored with. */
    record TypeBroken(long position, StreamName stream, String found) implements Flaw {}

    /** The entry does not name the hash of the entry before it. */
    record PreviousBroken(long position, StreamName stream, long version, String expected, String found)
            implements Flaw {}

    /** The entry's hash does not follow from its content: content, type, stream, version or hash was changed. */
    record HashBroken(long position, StreamName stream, long version, String expected, String found) implements Flaw {}
}
