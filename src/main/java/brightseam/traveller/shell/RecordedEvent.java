package brightseam.traveller.shell;

import brightseam.ledger.Entry;
import brightseam.traveller.TravellerEvent;

/** One event of a traveller beside its place in the ledger. */
public record RecordedEvent(Entry entry, TravellerEvent event) {}
