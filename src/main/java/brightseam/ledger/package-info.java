/**
 * Invariant: entries are appended and read, never changed or removed; the ledger knows stream, version, type name
 * and bytes, and nothing of what they mean.
 */
package brightseam.ledger;
