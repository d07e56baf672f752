/**
 * Invariant: no system releases anything for which no lead answers by name.
 *
 * <p>The shop's other computer systems that ask this one: who they are, what they may, their tokens, and what they
 * released.
 */
package brightseam.remote;
