package brightseam.weld;

import brightseam.kernel.SupplyId;

/**
 * The argon that the chamber draws on.
 *
 * @param source the cylinder, bundle or dewar
 * @param lot the maker's lot
 */
public record ArgonFact(SupplyId source, String lot) {}
