/**
 * Invariant: what is planned is what the travellers' own records say is still to do on the cleaning line; nothing here
 * changes a traveller.
 */
package brightseam.lineplan;
