/**
 * Invariant: the tables of contacts hold what the travellers' events tell and nothing else; a rebuild makes them anew.
 *
 * <p>Questions from a thing to the pieces that it touched, and from a piece to everything that touched it.
 */
package brightseam.trace.shell;
