/**
 * Invariant: a procedure that exists as an object has passed every rule of sense; nothing in here reads a file.
 *
 * <p>The steps, holds, gaps, limits and texts that a traveller follows, one revision at a time.
 */
package brightseam.procedure;
