/**
 * Invariant: a print is made from the ledger at the moment of printing, loads nothing from anywhere, and what people
 * wrote is text in it, never markup.
 */
package brightseam.report.shell;
