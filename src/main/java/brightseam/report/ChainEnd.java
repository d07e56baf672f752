package brightseam.report;

import java.util.Optional;

/**
 * What ties the document to the ledger.
 *
 * @param entries how many entries the traveller's chain has
 * @param lastHash the last one's hash, which rests on every entry before it
 * @param flaw what was wrong when every hash was derived anew; empty where all fit
 */
public record ChainEnd(long entries, String lastHash, Optional<String> flaw) {}
