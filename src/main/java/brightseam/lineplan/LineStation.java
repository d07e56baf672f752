package brightseam.lineplan;

import brightseam.kernel.StationId;

/**
 * A station of the line as the shop's registers have it now.
 *
 * @param id its label
 * @param stationClass its class
 * @param baskets how many baskets it takes at once
 * @param locked whether nothing may go in: out of use, or its bath is locked
 */
public record LineStation(StationId id, String stationClass, int baskets, boolean locked) {}
