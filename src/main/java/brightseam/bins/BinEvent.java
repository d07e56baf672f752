package brightseam.bins;

import brightseam.kernel.BinId;
import brightseam.kernel.Origin;
import brightseam.kernel.TravellerId;
import brightseam.procedure.BinClass;
import java.util.Optional;

/** What happened to one bin. Written forms are kept for ever: a changed event gets a new record and type name. */
public sealed interface BinEvent {

    /** When, by whom and where. */
    Origin origin();

    /** Which bin. */
    BinId bin();

    /** It came into use; {@code capacity} is the most travellers inside at once. */
    record Registered(Origin origin, BinId bin, BinClass binClass, Optional<Integer> capacity) implements BinEvent {}

    /** From now on it takes this much, in place of what it took before. */
    record CapacitySet(Origin origin, BinId bin, Capacity capacity) implements BinEvent {}

    /** All pieces of a traveller went in; {@code partsClean} is whether their clean window was open. */
    record PutIn(Origin origin, BinId bin, TravellerId traveller, boolean partsClean) implements BinEvent {}

    /** All pieces of a traveller came out. */
    record TakenOut(Origin origin, BinId bin, TravellerId traveller) implements BinEvent {}

    /** The lid went on, or the bag was sealed. */
    record Closed(Origin origin, BinId bin) implements BinEvent {}

    /** The lid came off, or the bag was cut open; {@code cleanPlace} is whether in the clean area. */
    record Opened(Origin origin, BinId bin, boolean cleanPlace) implements BinEvent {}

    /** It is no longer fit for cleaned parts; {@code note} is what the person who reported it said. */
    record Soiled(Origin origin, BinId bin, Soiling cause, Optional<String> note) implements BinEvent {}

    /** It was cleaned. */
    record Cleaned(Origin origin, BinId bin) implements BinEvent {}

    /** It left the shop for good. */
    record Retired(Origin origin, BinId bin) implements BinEvent {}
}
