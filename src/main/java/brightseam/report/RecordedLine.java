package brightseam.report;

import brightseam.traveller.TravellerEvent;

/**
 * One event in its place in the traveller's chain.
 *
 * @param version its place, from 1
 * @param hash the entry's hash, 64 hexadecimal digits
 * @param event what happened
 */
public record RecordedLine(long version, String hash, TravellerEvent event) {}
