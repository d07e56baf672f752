/**
 * Invariant: the desk shows the record as the document tells it and asks the traveller's services for everything else;
 * nothing here decides what may be stamped.
 *
 * <p>The stamp desk: what waits for an inspector, the record to read, accept or reject, dispositions, prints.
 */
package brightseam.ui.stamp;
