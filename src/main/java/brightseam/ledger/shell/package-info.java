/** Invariant: what {@code append} acknowledged is on disk. Storage, canonical form, rebuild of projections. */
package brightseam.ledger.shell;
