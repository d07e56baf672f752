/**
 * Invariant: what a session does to travellers is stored with the session in one append, and rows follow from the
 * ledger alone.
 *
 * <p>Carries sessions out, gathers what they ask of other registers, and watches the gas.
 */
package brightseam.session.shell;
